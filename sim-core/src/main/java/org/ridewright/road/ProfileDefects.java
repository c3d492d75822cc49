package org.ridewright.road;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Gaps and spikes of one track of a measured profile.
 *
 * <p>A gap is a distance between neighbouring points above five times the median one. A spike is a point that stands off the median of
 * the eleven around it by more than 10 mm and more than six times their median deviation (as a standard deviation, times 1.4826): a
 * narrow groove may pass for one, so they are reported, and left out only if the file says so. Source of the rule: common practice.
 *
 * @param gaps first and last station of each (m)
 * @param spikes numbers of the points
 */
record ProfileDefects(List<double[]> gaps, List<Integer> spikes) {
    private static final double WIDE = 5;
    private static final int AROUND = 5;
    private static final double LEAST_SPIKE = 0.01;
    private static final double FAR_OFF = 6 * 1.4826;

    static ProfileDefects of(double[] stations, double[] heights) {
        int n = stations.length;
        double[] steps = new double[n - 1];
        for (int i = 0; i + 1 < n; i++) {
            steps[i] = stations[i + 1] - stations[i];
        }
        double usual = median(steps, 0, n - 1);
        List<double[]> gaps = new ArrayList<>();
        for (int i = 0; i + 1 < n; i++) {
            if (steps[i] > WIDE * usual) {
                gaps.add(new double[] {stations[i], stations[i + 1]});
            }
        }
        List<Integer> spikes = new ArrayList<>();
        double[] off = new double[2 * AROUND + 1];
        for (int i = 0; i < n; i++) {
            int from = Math.max(0, i - AROUND);
            int to = Math.min(n, i + AROUND + 1);
            double middle = median(heights, from, to);
            for (int j = from; j < to; j++) {
                off[j - from] = Math.abs(heights[j] - middle);
            }
            double deviation = Math.abs(heights[i] - middle);
            if (deviation > LEAST_SPIKE && deviation > FAR_OFF * median(off, 0, to - from)) {
                spikes.add(i);
            }
        }
        return new ProfileDefects(gaps, spikes);
    }

    /** What is to be said of them. */
    List<String> remarks(String track, double[] stations, boolean removed) {
        List<String> remarks = new ArrayList<>();
        if (!gaps.isEmpty()) {
            double total = gaps.stream().mapToDouble(g -> g[1] - g[0]).sum();
            double[] widest = gaps.stream()
                    .max((a, b) -> Double.compare(a[1] - a[0], b[1] - b[0]))
                    .orElseThrow();
            remarks.add(String.format(
                    Locale.ROOT,
                    "%s has %s, %.2f m in all, bridged by smooth lines; the widest goes from %.2f m to %.2f m.",
                    track,
                    counted(gaps.size(), "gap"),
                    total,
                    widest[0],
                    widest[1]));
        }
        if (!spikes.isEmpty()) {
            remarks.add(String.format(
                    Locale.ROOT,
                    "%s has %s, %s, the first at %.2f m.",
                    track,
                    counted(spikes.size(), "spike"),
                    removed ? "left out" : "kept",
                    stations[spikes.get(0)]));
        }
        return remarks;
    }

    private static String counted(int n, String what) {
        return n + " " + what + (n == 1 ? "" : "s");
    }

    private static double median(double[] values, int from, int to) {
        double[] sorted = Arrays.copyOfRange(values, from, to);
        Arrays.sort(sorted);
        int n = sorted.length;
        return n % 2 == 1 ? sorted[n / 2] : (sorted[n / 2 - 1] + sorted[n / 2]) / 2;
    }
}
