package org.ridewright.figure;

import java.awt.geom.Rectangle2D;
import java.util.List;

/** Draws a whole figure: title, panels, shared legend. */
final class FigurePainter {
    private static final Sheet.Type TITLE = new Sheet.Type(Face.BOLD, PrintStyle.FIGURE_TITLE, PrintStyle.TEXT);

    private FigurePainter() {}

    /**
     * Draws a figure.
     *
     * @param figure what
     * @return the sheet, in its printed size
     * @throws IllegalArgumentException if the figure is too small for what it must hold
     */
    static Sheet paint(Figure figure) {
        double width = figure.widthMm() * PrintStyle.POINTS_PER_MM;
        double height = figure.heightMm() * PrintStyle.POINTS_PER_MM;
        Sheet sheet = new Sheet(width, height);
        double edge = PrintStyle.EDGE;
        double inner = width - 2 * edge;
        double top = title(sheet, figure.title(), edge, inner);
        Legend legend = Legend.flowing(Legend.shared(figure.panels()), inner - PrintStyle.LEFT_MARGIN);
        double bottom = height - edge - legend.height();
        Rectangle2D area = new Rectangle2D.Double(edge, top, inner, bottom - top);
        for (PlacedPanel placed : FigureLayout.place(figure, area)) {
            PanelPainter.paint(sheet, placed);
        }
        legend.paint(sheet, edge + PrintStyle.LEFT_MARGIN, bottom - 1);
        return sheet;
    }

    private static double title(Sheet sheet, String title, double edge, double width) {
        List<String> lines = RichText.wrap(title, Face.BOLD, PrintStyle.FIGURE_TITLE, width);
        double pitch = PrintStyle.FIGURE_TITLE * PrintStyle.LEADING;
        double baseline = edge + 0.85 * PrintStyle.FIGURE_TITLE;
        for (String line : lines) {
            sheet.text(line, TITLE, edge, baseline, Sheet.Anchor.START);
            baseline += pitch;
        }
        return edge + (lines.isEmpty() ? 0 : lines.size() * pitch + PrintStyle.GAP);
    }
}
