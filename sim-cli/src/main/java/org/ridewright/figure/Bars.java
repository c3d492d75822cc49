package org.ridewright.figure;

import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import java.util.List;

/** Draws the bars of a panel: those of all its series at one place stand side by side and fill most of the room between two places. */
final class Bars {
    /** Part of the room between two places that bars take. */
    private static final double FILLED = 0.76;

    private Bars() {}

    static void paint(Sheet sheet, PlacedPanel placed) {
        List<Series> bars = placed.panel().series().stream()
                .filter(s -> s.trace() == Trace.BARS)
                .toList();
        double width = FILLED * room(bars) / Math.max(1, bars.size());
        for (int s = 0; s < bars.size(); s++) {
            double offset = (s - bars.size() / 2.0) * width;
            double[] x = bars.get(s).x();
            double[] y = bars.get(s).y();
            for (int i = 0; i < x.length; i++) {
                if (!Double.isNaN(y[i])) {
                    paint(sheet, placed, x[i] + offset, width, y[i], bars.get(s).tone());
                }
            }
        }
    }

    /** Level bars: those of all series at one place stand one below the other. */
    static void paintAcross(Sheet sheet, PlacedPanel placed) {
        List<Series> bars = placed.panel().series().stream()
                .filter(s -> s.trace() == Trace.BARS_ACROSS)
                .toList();
        double width = FILLED / Math.max(1, bars.size());
        for (int s = 0; s < bars.size(); s++) {
            double offset = FILLED / 2 - (s + 1) * width;
            double[] x = bars.get(s).x();
            double[] y = bars.get(s).y();
            for (int i = 0; i < x.length; i++) {
                double foot = placed.sheetX(
                        clamped(placed.x(), placed.x().log() ? placed.x().min() : 0));
                double head = placed.sheetX(clamped(placed.x(), x[i]));
                double low = placed.sheetY(clamped(placed.y(), y[i] + offset));
                double high = placed.sheetY(clamped(placed.y(), y[i] + offset + width));
                if (foot != head && !Double.isNaN(y[i])) {
                    sheet.fill(
                            new Rectangle2D.Double(Math.min(foot, head), high, Math.abs(head - foot), low - high),
                            bars.get(s).tone().tint(0.55));
                }
            }
        }
    }

    /** Whether a panel shows bars alone, at whole numbers: it counts things. */
    static boolean count(Panel panel) {
        return !panel.x().log()
                && panel.series().stream()
                        .filter(s -> s.trace() != Trace.KEY)
                        .allMatch(s ->
                                s.trace() == Trace.BARS && Arrays.stream(s.x()).allMatch(x -> x == Math.rint(x)));
    }

    /** Least distance of two places; 1 where there is one place only. */
    private static double room(List<Series> bars) {
        double[] places = bars.stream()
                .flatMapToDouble(s -> Arrays.stream(s.x()))
                .sorted()
                .distinct()
                .toArray();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < places.length; i++) {
            least = Math.min(least, places[i] - places[i - 1]);
        }
        return Double.isInfinite(least) ? 1 : least;
    }

    private static void paint(Sheet sheet, PlacedPanel placed, double from, double width, double y, Tone tone) {
        Scale across = placed.x();
        double left = placed.sheetX(clamped(across, from));
        double right = placed.sheetX(clamped(across, from + width));
        double foot =
                placed.sheetY(clamped(placed.y(), placed.y().log() ? placed.y().min() : 0));
        double head = placed.sheetY(clamped(placed.y(), y));
        if (right > left && foot != head) {
            sheet.fill(
                    new Rectangle2D.Double(left, Math.min(foot, head), right - left, Math.abs(head - foot)),
                    tone.colour());
        }
    }

    private static double clamped(Scale scale, double value) {
        return Math.max(scale.min(), Math.min(scale.max(), value));
    }
}
