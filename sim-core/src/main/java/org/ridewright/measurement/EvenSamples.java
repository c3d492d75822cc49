package org.ridewright.measurement;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.ridewright.signal.BandLimitedFit;

/**
 * The stretches of a recording at even instants.
 *
 * @param starts first instant of each stretch (s)
 * @param values of each stretch and axis of the logger (m/s²)
 * @param fitted how many stretches had uneven instants, and were resampled by {@link BandLimitedFit}
 */
record EvenSamples(List<Double> starts, List<Map<LogAxis, double[]>> values, int fitted) {
    /** Instants off by less than this part of an interval count as even. */
    private static final double EVEN = 0.01;

    static EvenSamples of(Recording recording, Stretches stretches) {
        List<Double> starts = new ArrayList<>();
        List<Map<LogAxis, double[]>> values = new ArrayList<>();
        int fitted = 0;
        for (int s = 0; s < stretches.rows().size(); s++) {
            int[] rows = stretches.rows().get(s);
            double[] times = stretches.times().get(s);
            boolean even = isEven(times, stretches.rate());
            Map<LogAxis, double[]> byAxis = new EnumMap<>(LogAxis.class);
            for (LogAxis axis : recording.columns().keySet()) {
                byAxis.put(
                        axis, even ? picked(recording, axis, rows) : fitted(recording, axis, rows, times, stretches));
            }
            fitted += even ? 0 : 1;
            starts.add(times[0]);
            values.add(byAxis);
        }
        return new EvenSamples(List.copyOf(starts), List.copyOf(values), fitted);
    }

    private static boolean isEven(double[] times, double rate) {
        for (int i = 0; i < times.length; i++) {
            if (Math.abs((times[i] - times[0]) * rate - i) > EVEN) {
                return false;
            }
        }
        return true;
    }

    private static double[] picked(Recording recording, LogAxis axis, int[] rows) {
        double[] column = recording.values(axis);
        return Arrays.stream(rows).mapToDouble(row -> column[row]).toArray();
    }

    private static double[] fitted(Recording recording, LogAxis axis, int[] rows, double[] times, Stretches stretches) {
        double[] column = recording.values(axis);
        double[] t = new double[rows.length];
        double[] y = new double[rows.length];
        int n = 0;
        for (int i = 0; i < rows.length; ) {
            double sum = 0;
            int same = i;
            while (same < rows.length && times[same] == times[i]) {
                sum += column[rows[same++]];
            }
            t[n] = times[i];
            y[n++] = sum / (same - i);
            i = same;
        }
        if (n < 2) {
            return Arrays.copyOf(y, n);
        }
        return BandLimitedFit.uniform(Arrays.copyOf(t, n), Arrays.copyOf(y, n), stretches.rate());
    }
}
