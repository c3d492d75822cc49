package org.ridewright.figure;

import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * A panel with everything decided that its drawing needs.
 *
 * @param panel what
 * @param plot the plot on the sheet (pt)
 * @param x horizontal scale
 * @param y vertical scale
 * @param xTicks numbers of the horizontal axis
 * @param yTicks numbers of the vertical axis
 * @param numbered whether the horizontal axis has its numbers and title, rather than the panel below
 * @param notes texts above the plot; empty where the panel above has them
 * @param titleLines title
 * @param legend names below the plot
 * @param beside names to the right of the plot
 */
record PlacedPanel(
        Panel panel,
        Rectangle2D plot,
        Scale x,
        Scale y,
        Ticks xTicks,
        Ticks yTicks,
        boolean numbered,
        NoteStrip notes,
        List<String> titleLines,
        Legend legend,
        Legend beside) {

    /** Base line pitch of the notes above a plot (pt). */
    static final double NOTE_PITCH = PrintStyle.NOTE * PrintStyle.LEADING;

    static final double TITLE_PITCH = PrintStyle.PANEL_TITLE * PrintStyle.LEADING;

    /** Height of the numbers and the title of a horizontal axis (pt). */
    static final double X_AXIS_HEIGHT =
            PrintStyle.TICK_LENGTH + 1.5 + PrintStyle.TICK_LABEL + PrintStyle.GAP + PrintStyle.AXIS_TITLE * 1.1;

    double sheetX(double value) {
        return plot.getX() + x.share(value) * plot.getWidth();
    }

    double sheetY(double value) {
        return plot.getMaxY() - y.share(value) * plot.getHeight();
    }

    /** Room above the plot (pt). */
    double above() {
        return above(titleLines.size(), notes.rows());
    }

    static double above(int titleLines, int noteRows) {
        double title = titleLines == 0 ? 0 : titleLines * TITLE_PITCH + 2;
        double notes = noteRows == 0 ? 0 : noteRows * NOTE_PITCH + 1;
        return Math.max(title + notes, 3);
    }

    /**
     * Quantity and unit as printed at an axis.
     *
     * @param axis which
     * @param ticks its numbers, for the power of ten taken out of them
     * @return the title
     */
    static String axisTitle(AxisSpec axis, Ticks ticks) {
        String power = ticks.exponent() == 0 ? "" : "10^{" + Ticks.signed(Integer.toString(ticks.exponent())) + "}";
        String unit = power.isEmpty() || axis.unit().isBlank() ? power + axis.unit() : power + " " + axis.unit();
        return unit.isBlank() ? axis.quantity() : axis.quantity() + ", " + unit;
    }

    /** Lines of the vertical axis title. */
    static List<String> yTitleLines(Panel panel, Ticks ticks, double plotHeight) {
        return RichText.wrap(axisTitle(panel.y(), ticks), Face.REGULAR, PrintStyle.AXIS_TITLE, plotHeight + 4);
    }

    /** Width of the widest number of the vertical axis (pt). */
    static double numberWidth(Ticks ticks) {
        return ticks.marks().stream()
                .mapToDouble(m -> RichText.of(m.label()).width(Face.REGULAR, PrintStyle.TICK_LABEL))
                .max()
                .orElse(0);
    }
}
