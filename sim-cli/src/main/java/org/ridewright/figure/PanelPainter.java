package org.ridewright.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Draws a placed panel: what lies behind the curves, the curves, what stands around them. */
final class PanelPainter {
    private static final BasicStroke HAIR = PrintStyle.stroke(0.4f, LineStyle.SOLID);
    private static final BasicStroke FRAME_LINE = PrintStyle.stroke(0.6f, LineStyle.SOLID);
    private static final BasicStroke MARKER_LINE = PrintStyle.stroke(0.55f, LineStyle.DOT);
    private static final BasicStroke GUIDE_LINE = PrintStyle.stroke(0.6f, LineStyle.SOLID);
    private static final BasicStroke LEVEL_LINE = PrintStyle.stroke(0.6f, LineStyle.DASH);

    private static final Sheet.Type TITLE = new Sheet.Type(Face.BOLD, PrintStyle.PANEL_TITLE, PrintStyle.TEXT);
    private static final Sheet.Type NUMBER = new Sheet.Type(Face.REGULAR, PrintStyle.TICK_LABEL, PrintStyle.TEXT);
    private static final Sheet.Type AXIS = new Sheet.Type(Face.REGULAR, PrintStyle.AXIS_TITLE, PrintStyle.TEXT);
    private static final Sheet.Type NOTE = new Sheet.Type(Face.ITALIC, PrintStyle.NOTE, PrintStyle.TEXT);

    /** Height of a capital as a part of the type size. */
    private static final double CAPITAL = 0.72;

    private final Sheet sheet;
    private final PlacedPanel placed;
    private final Rectangle2D plot;

    private PanelPainter(Sheet sheet, PlacedPanel placed) {
        this.sheet = sheet;
        this.placed = placed;
        this.plot = placed.plot();
    }

    /**
     * Draws a panel.
     *
     * @param sheet where to
     * @param placed what
     */
    static void paint(Sheet sheet, PlacedPanel placed) {
        PanelPainter painter = new PanelPainter(sheet, placed);
        painter.bands();
        Areas.paint(sheet, placed);
        placed.panel().field().ifPresent(field -> FieldPainter.paint(sheet, placed, field));
        if (!placed.panel().isSketch()) {
            painter.grid();
        }
        painter.levelsAndMarkers();
        Bars.paint(sheet, placed);
        Bars.paintAcross(sheet, placed);
        CurvePainter.paint(sheet, placed.panel(), placed.plot(), placed.x(), placed.y());
        if (!placed.panel().isSketch()) {
            painter.frame();
            painter.xAxis();
            painter.yAxis();
        }
        painter.titles();
        painter.notesBeside();
        painter.legends();
        placed.panel().field().ifPresent(field -> FieldPainter.paintKey(sheet, placed, field));
    }

    private void bands() {
        for (Band band : placed.panel().bands()) {
            boolean upright = band.span() == Band.Span.OF_X;
            Scale scale = upright ? placed.x() : placed.y();
            double from = Math.max(band.from(), scale.min());
            double to = Math.min(band.to(), scale.max());
            if (from < to) {
                Rectangle2D strip = upright
                        ? new Rectangle2D.Double(
                                placed.sheetX(from),
                                plot.getY(),
                                placed.sheetX(to) - placed.sheetX(from),
                                plot.getHeight())
                        : new Rectangle2D.Double(
                                plot.getX(),
                                placed.sheetY(to),
                                plot.getWidth(),
                                placed.sheetY(from) - placed.sheetY(to));
                sheet.fill(strip, PrintStyle.BAND);
            }
        }
    }

    private void grid() {
        if (placed.panel().field().isPresent()) {
            return;
        }
        boolean namedX = !placed.panel().x().names().isEmpty();
        boolean namedY = !placed.panel().y().names().isEmpty();
        placed.xTicks().fine().forEach(x -> upright(x, HAIR, PrintStyle.FINE_GRID));
        placed.yTicks().fine().forEach(y -> level(y, HAIR, PrintStyle.FINE_GRID));
        if (!namedX) {
            placed.xTicks().marks().forEach(m -> upright(m.value(), HAIR, PrintStyle.GRID));
        }
        if (!namedY) {
            placed.yTicks().marks().forEach(m -> level(m.value(), HAIR, PrintStyle.GRID));
        }
        if (namedY && !namedX && placed.x().min() < 0 && placed.x().max() > 0) {
            upright(0, FRAME_LINE, PrintStyle.ZERO);
        }
        boolean marked = placed.panel().levels().stream().anyMatch(l -> l.y() == 0);
        if (!marked
                && !namedY
                && !placed.y().log()
                && placed.y().min() < 0
                && placed.y().max() > 0) {
            level(0, FRAME_LINE, PrintStyle.ZERO);
        }
    }

    private void levelsAndMarkers() {
        for (Level line : placed.panel().levels()) {
            if (placed.y().holds(line.y())) {
                level(line.y(), LEVEL_LINE, PrintStyle.NOTE_LINE);
            }
        }
        for (Guide guide : placed.panel().guides()) {
            slanted(guide);
        }
        for (Marker marker : placed.panel().markers()) {
            if (placed.x().holds(marker.x())) {
                upright(marker.x(), MARKER_LINE, PrintStyle.NOTE_LINE);
            }
        }
        for (NoteStrip.Note note : placed.notes().notes()) {
            double bottom = plot.getY() - 1 - note.row() * PlacedPanel.NOTE_PITCH;
            if (note.line()) {
                double top = bottom - PlacedPanel.NOTE_PITCH + 1;
                sheet.line(note.lineX(), plot.getY(), note.lineX(), top, MARKER_LINE, PrintStyle.NOTE_LINE);
            }
            sheet.text(note.text(), NOTE, note.left(), bottom - 2.2, Sheet.Anchor.START);
        }
    }

    private void frame() {
        sheet.stroke(plot, FRAME_LINE, PrintStyle.FRAME);
    }

    private void xAxis() {
        double bottom = plot.getMaxY();
        double baseline = bottom + PrintStyle.TICK_LENGTH + 1.5 + CAPITAL * PrintStyle.TICK_LABEL;
        for (Ticks.Mark mark : placed.xTicks().marks()) {
            double x = placed.sheetX(mark.value());
            sheet.line(x, bottom, x, bottom + PrintStyle.TICK_LENGTH, FRAME_LINE, PrintStyle.FRAME);
            if (placed.numbered()) {
                sheet.text(mark.label(), NUMBER, x, baseline, Sheet.Anchor.MIDDLE);
            }
        }
        if (placed.numbered()) {
            String title = PlacedPanel.axisTitle(placed.panel().x(), placed.xTicks());
            double y = baseline + PrintStyle.GAP + PrintStyle.AXIS_TITLE * 0.95;
            sheet.text(title, AXIS, plot.getCenterX(), y, Sheet.Anchor.MIDDLE);
        }
    }

    private void yAxis() {
        double numbersEnd = plot.getX() - PrintStyle.TICK_LENGTH - 2;
        for (Ticks.Mark mark : placed.yTicks().marks()) {
            double y = placed.sheetY(mark.value());
            sheet.line(plot.getX() - PrintStyle.TICK_LENGTH, y, plot.getX(), y, FRAME_LINE, PrintStyle.FRAME);
            double baseline = y + 0.5 * CAPITAL * PrintStyle.TICK_LABEL;
            sheet.text(mark.label(), NUMBER, numbersEnd, baseline, Sheet.Anchor.END);
        }
        List<String> lines = PlacedPanel.yTitleLines(placed.panel(), placed.yTicks(), plot.getHeight());
        double pitch = PrintStyle.AXIS_TITLE * PrintStyle.LEADING;
        double x = numbersEnd - PlacedPanel.numberWidth(placed.yTicks()) - PrintStyle.GAP - (lines.size() - 1) * pitch;
        double steady = plot.getX() - PrintStyle.LEFT_MARGIN + PrintStyle.AXIS_TITLE * 0.9;
        x = Math.min(x, steady);
        for (String line : lines) {
            sheet.uprightText(line, AXIS, x, plot.getCenterY());
            x += pitch;
        }
    }

    private void titles() {
        double baseline = plot.getY() - placed.above() + 0.85 * PrintStyle.PANEL_TITLE;
        for (String line : placed.titleLines()) {
            sheet.text(line, TITLE, plot.getX(), baseline, Sheet.Anchor.START);
            baseline += PlacedPanel.TITLE_PITCH;
        }
    }

    private void notesBeside() {
        record Beside(String text, double y) {}
        List<Beside> texts = new ArrayList<>();
        for (Level line : placed.panel().levels()) {
            if (!line.label().isBlank() && placed.y().holds(line.y())) {
                texts.add(new Beside(line.label(), placed.sheetY(line.y())));
            }
        }
        for (Guide guide : placed.panel().guides()) {
            double end = guide.share(placed.x(), placed.y(), 1);
            if (!guide.label().isBlank() && end >= 0 && end <= 1) {
                texts.add(new Beside(guide.label(), plot.getMaxY() - end * plot.getHeight()));
            }
        }
        for (Band band : placed.panel().bands()) {
            double from = Math.max(band.from(), placed.y().min());
            double to = Math.min(band.to(), placed.y().max());
            if (band.span() == Band.Span.OF_Y && from < to) {
                texts.add(new Beside(band.label(), 0.5 * (placed.sheetY(from) + placed.sheetY(to))));
            }
        }
        texts.sort(Comparator.comparingDouble(Beside::y));
        double free = Double.NEGATIVE_INFINITY;
        for (Beside text : texts) {
            double lowest = plot.getMaxY() - 0.5 * CAPITAL * PrintStyle.NOTE;
            double y = Math.max(Math.min(text.y(), lowest), free);
            sheet.text(
                    text.text(),
                    NOTE,
                    plot.getMaxX() + PrintStyle.GAP,
                    y + 0.5 * CAPITAL * PrintStyle.NOTE,
                    Sheet.Anchor.START);
            free = y + PlacedPanel.NOTE_PITCH;
        }
    }

    private void legends() {
        double axis = placed.numbered() ? PlacedPanel.X_AXIS_HEIGHT : PrintStyle.TICK_LENGTH;
        Legend legend = placed.legend();
        double left = Math.min(plot.getX(), plot.getMaxX() + PrintStyle.RIGHT_MARGIN - legend.width());
        legend.paint(sheet, left, plot.getMaxY() + axis);
        placed.beside().paintBeside(sheet, plot, rightNotesWidth(placed.panel()) + 2 * PrintStyle.GAP);
    }

    /** Width of the texts to the right of a panel's plot (pt). */
    static double rightNotesWidth(Panel panel) {
        double widest = 0;
        for (Level line : panel.levels()) {
            widest = Math.max(widest, noteWidth(line.label()));
        }
        for (Guide guide : panel.guides()) {
            widest = Math.max(widest, noteWidth(guide.label()));
        }
        for (Band band : panel.bands()) {
            if (band.span() == Band.Span.OF_Y) {
                widest = Math.max(widest, noteWidth(band.label()));
            }
        }
        return widest == 0 ? 0 : widest + PrintStyle.GAP;
    }

    private static double noteWidth(String text) {
        return RichText.of(text).width(Face.ITALIC, PrintStyle.NOTE);
    }

    /** The part of a guide that lies within the plot. */
    private void slanted(Guide guide) {
        double left = guide.share(placed.x(), placed.y(), 0);
        double rise = guide.share(placed.x(), placed.y(), 1) - left;
        double from = 0;
        double to = 1;
        if (rise != 0) {
            double atFoot = -left / rise;
            double atHead = (1 - left) / rise;
            from = Math.max(from, Math.min(atFoot, atHead));
            to = Math.min(to, Math.max(atFoot, atHead));
        } else if (left < 0 || left > 1) {
            return;
        }
        if (from < to) {
            sheet.line(
                    plot.getX() + from * plot.getWidth(),
                    plot.getMaxY() - (left + from * rise) * plot.getHeight(),
                    plot.getX() + to * plot.getWidth(),
                    plot.getMaxY() - (left + to * rise) * plot.getHeight(),
                    GUIDE_LINE,
                    PrintStyle.ZERO);
        }
    }

    private void upright(double x, BasicStroke stroke, Color colour) {
        double at = placed.sheetX(x);
        sheet.line(at, plot.getMaxY(), at, plot.getY(), stroke, colour);
    }

    private void level(double y, BasicStroke stroke, Color colour) {
        double at = placed.sheetY(y);
        sheet.line(plot.getX(), at, plot.getMaxX(), at, stroke, colour);
    }
}
