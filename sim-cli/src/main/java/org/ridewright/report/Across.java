package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.figure.LineStyle;
import org.ridewright.figure.Series;
import org.ridewright.figure.Tone;
import org.ridewright.figure.Trace;

/** Level intervals of things that stand one below the other: lines from end to end, boxes, with a gap after each. */
final class Across {
    private static final double WHISKER = 0.11;

    private final List<Double> x = new ArrayList<>();
    private final List<Double> y = new ArrayList<>();

    /** A line with a short stop at each end; what has no ends is left out. */
    Across whisker(double low, double high, double at) {
        if (Double.isFinite(low) && Double.isFinite(high)) {
            point(low, at - WHISKER).point(low, at + WHISKER).point(low, at);
            point(high, at).point(high, at - WHISKER).point(high, at + WHISKER);
            gap(high);
        }
        return this;
    }

    /** A single point; what is no number is left out. */
    Across mark(double value, double at) {
        return Double.isFinite(value) ? point(value, at) : this;
    }

    /** A box; what has no ends is left out. */
    Across box(double low, double high, double at, double half) {
        if (Double.isFinite(low) && Double.isFinite(high)) {
            point(low, at - half).point(high, at - half).point(high, at + half).point(low, at + half);
            gap(high);
        }
        return this;
    }

    private Across point(double across, double up) {
        x.add(across);
        y.add(up);
        return this;
    }

    private void gap(double across) {
        point(across, Double.NaN);
    }

    boolean isEmpty() {
        return x.isEmpty();
    }

    Series series(String name, Tone tone, Trace trace) {
        return new Series(
                name,
                x.stream().mapToDouble(Double::doubleValue).toArray(),
                y.stream().mapToDouble(Double::doubleValue).toArray(),
                LineStyle.SOLID,
                tone,
                trace);
    }
}
