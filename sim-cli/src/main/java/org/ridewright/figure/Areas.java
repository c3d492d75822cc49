package org.ridewright.figure;

import java.awt.Color;
import java.awt.geom.Path2D;

/** Draws the tinted areas of a panel, the lighter ones first. */
final class Areas {
    private static final double LIGHT = 0.2;
    private static final double DEEP = 0.42;
    private static final double BAR = 0.55;

    private Areas() {}

    static void paint(Sheet sheet, PlacedPanel placed) {
        for (Trace trace : new Trace[] {Trace.AREA, Trace.DEEP_AREA}) {
            for (Series series : placed.panel().series()) {
                if (series.trace() == trace) {
                    sheet.add(new Ink.Filled(edge(placed, series), colour(series), placed.plot()));
                }
            }
        }
    }

    /** Ink of bars and areas. */
    static Color colour(Series series) {
        return switch (series.trace()) {
            case AREA -> series.tone().tint(LIGHT);
            case DEEP_AREA -> series.tone().tint(DEEP);
            case BARS_ACROSS -> series.tone().tint(BAR);
            default -> series.tone().colour();
        };
    }

    /** A gap closes an area; the next begins behind it. */
    private static Path2D edge(PlacedPanel placed, Series series) {
        Path2D path = new Path2D.Double();
        double[] x = series.x();
        double[] y = series.y();
        boolean open = false;
        for (int i = 0; i < x.length; i++) {
            if (Double.isNaN(y[i])) {
                if (open) {
                    path.closePath();
                }
                open = false;
                continue;
            }
            double at = placed.sheetX(within(placed.x(), x[i]));
            double up = placed.sheetY(within(placed.y(), y[i]));
            if (open) {
                path.lineTo(at, up);
            } else {
                path.moveTo(at, up);
            }
            open = true;
        }
        if (open) {
            path.closePath();
        }
        return path;
    }

    private static double within(Scale scale, double value) {
        return Math.max(scale.min(), Math.min(scale.max(), value));
    }
}
