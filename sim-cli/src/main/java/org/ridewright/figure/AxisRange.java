package org.ridewright.figure;

import java.util.function.Function;
import java.util.stream.DoubleStream;

/** Finds the ends of an axis from what it must hold. */
final class AxisRange {
    /** Room between the outermost value and the frame, as a part of the span. */
    private static final double ROOM = 0.06;

    /** A lowest value below this part of the highest is shown with the zero. */
    private static final double NEAR_ZERO = 0.3;

    private AxisRange() {}

    /**
     * Ends of the horizontal axis: those of the data if all series run forward and are drawn as lines, with some room
     * otherwise.
     */
    static Scale ofX(Panel panel) {
        boolean tight = panel.series().stream()
                .allMatch(s ->
                        s.trace().filled() || (s.runsForward() && !s.trace().marked()));
        boolean across = panel.series().stream().anyMatch(s -> s.trace() == Trace.BARS_ACROSS);
        DoubleStream foot = across && !panel.x().log() ? DoubleStream.of(0) : DoubleStream.empty();
        return of(panel.x(), DoubleStream.concat(values(panel, Series::x), foot), tight ? 0 : ROOM, across);
    }

    /** Ends of the vertical axis: with some room, with the levels, and with the zero where it is near. */
    static Scale ofY(Panel panel) {
        DoubleStream levels = panel.levels().stream().mapToDouble(Level::y);
        // a level at the zero is not to lie on the frame
        boolean zero = !panel.equalScale() && panel.levels().stream().noneMatch(l -> l.y() == 0);
        return of(panel.y(), DoubleStream.concat(values(panel, Series::y), levels), ROOM, zero);
    }

    private static DoubleStream values(Panel panel, Function<Series, double[]> which) {
        return panel.series().stream().map(which).flatMapToDouble(DoubleStream::of);
    }

    private static Scale of(AxisSpec axis, DoubleStream values, double room, boolean zero) {
        double[] ends = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        values.filter(v -> Double.isFinite(v) && (!axis.log() || v > 0)).forEach(v -> {
            ends[0] = Math.min(ends[0], v);
            ends[1] = Math.max(ends[1], v);
        });
        Scale data = ends[0] <= ends[1] ? new Scale(ends[0], ends[1], axis.log()) : emptyScale(axis);
        Scale wide = axis.log() ? widenedRatio(data, room) : widened(data, room, zero);
        double min = axis.min().orElse(wide.min());
        double max = axis.max().orElse(wide.max());
        if (!(min < max)) {
            // one end is given and all data lie beyond it
            double span = axis.log() ? 0 : Math.max(wide.span(), 1);
            return axis.min().isPresent()
                    ? new Scale(min, axis.log() ? 10 * min : min + span, axis.log())
                    : new Scale(axis.log() ? max / 10 : max - span, max, axis.log());
        }
        return new Scale(min, max, axis.log());
    }

    private static Scale emptyScale(AxisSpec axis) {
        return new Scale(axis.log() ? 0.1 : 0, 1, axis.log());
    }

    private static Scale widened(Scale data, double room, boolean zero) {
        if (data.span() <= 1e-9 * Math.max(Math.abs(data.min()), Math.abs(data.max()))) {
            double half = data.min() == 0 ? 1 : 0.1 * Math.abs(data.min());
            return new Scale(data.min() - half, data.max() + half, false);
        }
        double margin = room * data.span();
        double min = data.min() - margin;
        double max = data.max() + margin;
        if (zero && data.min() >= 0 && data.min() < NEAR_ZERO * data.max()) {
            min = 0;
        }
        if (zero && data.max() <= 0 && data.max() > NEAR_ZERO * data.min()) {
            max = 0;
        }
        return new Scale(min, max, false);
    }

    private static Scale widenedRatio(Scale data, double room) {
        double ratio = data.max() / data.min();
        double factor = ratio > 1 + 1e-9 ? Math.pow(ratio, room) : 2;
        return new Scale(data.min() / factor, data.max() * factor, true);
    }
}
