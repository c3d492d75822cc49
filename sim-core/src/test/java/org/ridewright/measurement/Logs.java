package org.ridewright.measurement;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/** Recordings made up for tests. */
final class Logs {
    private Logs() {}

    /** Rows at the instants given; the functions are what stands in the columns (m/s²). */
    static Recording of(double[] times, DoubleUnaryOperator x, DoubleUnaryOperator y, DoubleUnaryOperator z) {
        Map<LogAxis, DoubleUnaryOperator> all = new EnumMap<>(LogAxis.class);
        all.put(LogAxis.X, x);
        all.put(LogAxis.Y, y);
        all.put(LogAxis.Z, z);
        return of(times, all);
    }

    static Recording vertical(double[] times, DoubleUnaryOperator z) {
        return of(times, Map.of(LogAxis.Z, z));
    }

    static Recording of(double[] times, Map<LogAxis, DoubleUnaryOperator> columns) {
        int[] lines = new int[times.length];
        for (int i = 0; i < lines.length; i++) {
            lines[i] = i + 2;
        }
        Map<LogAxis, Recording.Column> names = new EnumMap<>(LogAxis.class);
        Map<LogAxis, double[]> values = new EnumMap<>(LogAxis.class);
        columns.forEach((axis, function) -> {
            names.put(axis, new Recording.Column(axis.word(), "m/s²", "as the file says"));
            double[] column = new double[times.length];
            for (int i = 0; i < column.length; i++) {
                column[i] = function.applyAsDouble(times[i]);
            }
            values.put(axis, column);
        });
        return new Recording("made-up.csv", times, true, lines, names, values, List.of());
    }

    /** Even instants from 0. */
    static double[] even(double rate, double duration) {
        double[] times = new double[(int) Math.rint(rate * duration) + 1];
        for (int i = 0; i < times.length; i++) {
            times[i] = i / rate;
        }
        return times;
    }
}
