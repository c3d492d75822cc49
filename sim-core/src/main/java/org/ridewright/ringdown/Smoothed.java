package org.ridewright.ringdown;

import java.util.Arrays;

/**
 * A stretch as releases are looked for in it: at even instants, less its moving mean over {@value #BASE} s, and smoothed by a triangle that
 * is zero a quarter of the shortest period away. Only for looking; nothing is measured of it.
 *
 * @param start of the first value (s)
 * @param interval (s)
 * @param values (m/s²)
 */
record Smoothed(double start, double interval, double[] values) {
    /** Long enough that a slow bounce is not taken for drift (s). */
    static final double BASE = 3;

    private static final double QUIET_SHARE = 0.2;

    static Smoothed of(Stretch stretch, double highest) {
        double interval = 1 / stretch.rate();
        int n = (int) Math.floor((stretch.end() - stretch.start()) / interval + 1e-6) + 1;
        double[] even = new double[n];
        int at = 0;
        double[] t = stretch.times();
        for (int i = 0; i < n; i++) {
            double time = stretch.start() + i * interval;
            while (at + 2 < t.length && t[at + 1] < time) {
                at++;
            }
            double share = Math.max(0, Math.min(1, (time - t[at]) / (t[at + 1] - t[at])));
            even[i] = stretch.values()[at] + share * (stretch.values()[at + 1] - stretch.values()[at]);
        }
        double[] base = moving(even, (int) Math.round(BASE / 2 / interval));
        for (int i = 0; i < n; i++) {
            even[i] -= base[i];
        }
        int half = (int) Math.round(1 / (8 * highest) / interval);
        return new Smoothed(stretch.start(), interval, moving(moving(even, half), half));
    }

    double time(int i) {
        return start + i * interval;
    }

    /** R.m.s. where it is quietest: a fifth of all windows of half a second lie below it (m/s²). */
    double quiet() {
        int window = Math.max(1, Math.min(values.length, (int) Math.round(0.5 / interval)));
        double[] rms = new double[values.length / window];
        for (int w = 0; w < rms.length; w++) {
            double sum = 0;
            for (int i = w * window; i < (w + 1) * window; i++) {
                sum += values[i] * values[i];
            }
            rms[w] = Math.sqrt(sum / window);
        }
        Arrays.sort(rms);
        return rms[(int) (QUIET_SHARE * (rms.length - 1))];
    }

    double greatest() {
        return Arrays.stream(values).map(Math::abs).max().orElse(0);
    }

    /** Mean over 2·half + 1 values, fewer at the ends. */
    private static double[] moving(double[] values, int half) {
        double[] sums = new double[values.length + 1];
        for (int i = 0; i < values.length; i++) {
            sums[i + 1] = sums[i] + values[i];
        }
        double[] means = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            int from = Math.max(0, i - half);
            int to = Math.min(values.length, i + half + 1);
            means[i] = (sums[to] - sums[from]) / (to - from);
        }
        return means;
    }
}
