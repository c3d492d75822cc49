package org.ridewright.figure;

import java.awt.BasicStroke;
import java.awt.Color;

/** Sizes (pt at printed size) and colours of the one print style. */
final class PrintStyle {
    static final double POINTS_PER_MM = 72 / 25.4;

    static final double FIGURE_TITLE = 9.5;
    static final double PANEL_TITLE = 8.5;
    static final double AXIS_TITLE = 8.5;
    static final double TICK_LABEL = 8;
    static final double LEGEND_TEXT = 8;
    static final double NOTE = 8;

    /** Line pitch as a multiple of the type size. */
    static final double LEADING = 1.22;

    static final double EDGE = 2;
    static final double TICK_LENGTH = 2.6;
    static final double GAP = 3;
    static final double COLUMN_GAP = 12;
    static final double ROW_GAP = 7;
    static final double LEGEND_SAMPLE = 21;
    static final double LEGEND_BETWEEN = 13;
    static final double MARK_SIZE = 3.6;

    /** Narrowest left margin, so that the axes of most figures stand one below the other on the page. */
    static final double LEFT_MARGIN = 40;

    static final double RIGHT_MARGIN = 9;

    static final Color TEXT = new Color(0x111111);
    static final Color FRAME = new Color(0x444444);
    static final Color GRID = new Color(0xDCDCDC);
    static final Color FINE_GRID = new Color(0xEDEDED);
    static final Color ZERO = new Color(0x9A9A9A);
    static final Color NOTE_LINE = new Color(0x666666);
    static final Color BAND = new Color(0xECECEC);

    private PrintStyle() {}

    /** Line of a curve; one that fills the plot is drawn finer. */
    static BasicStroke curve(LineStyle style, boolean fills) {
        return stroke(fills ? 0.5f : 1, style);
    }

    /** Line of the given width (pt) and style; ends and corners are made for curves. */
    static BasicStroke stroke(float width, LineStyle style) {
        float[] dashes = style.dashes();
        return dashes.length == 0
                ? new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND)
                : new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dashes, 0);
    }
}
