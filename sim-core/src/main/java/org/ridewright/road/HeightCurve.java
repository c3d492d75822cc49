package org.ridewright.road;

import java.util.Arrays;
import java.util.stream.DoubleStream;

/** A smooth curve through points at increasing stations: cubics whose slope at a point is that of the parabola through it and its neighbours. */
final class HeightCurve {
    /** A Gaussian mean line lets half of a wave of the cut-off length through with this α. Source: ISO 16610-21 (from memory). */
    private static final double ALPHA = Math.sqrt(StrictMath.log(2) / Math.PI);

    private static final int LINE_POINTS = 32;
    /** Half length of the anti-aliasing kernel, in new spacings. */
    private static final double KERNEL_REACH = 8;
    /** Where it cuts, in cycles a new spacing: waves shorter than four spacings go. */
    private static final double KERNEL_CUT = 0.25;

    private static final double[] GAUSS_PLACES = {-Math.sqrt(0.6), 0, Math.sqrt(0.6)};
    private static final double[] GAUSS_WEIGHTS = {5 / 18.0, 8 / 18.0, 5 / 18.0};

    private final double[] x;
    private final double[] z;
    private final double[] slope;

    /**
     * @param x increasing stations (m), at least 2; not copied
     * @param z heights (m); not copied
     */
    HeightCurve(double[] x, double[] z) {
        this.x = x;
        this.z = z;
        this.slope = slopes(x, z);
    }

    int size() {
        return x.length;
    }

    double station(int i) {
        return x[i];
    }

    double height(int i) {
        return z[i];
    }

    double slope(int i) {
        return slope[i];
    }

    /** Number of the last point at s or before, from 0 to {@code size() − 2}. */
    int pieceAt(double s) {
        int i = Arrays.binarySearch(x, s);
        return Math.max(0, Math.min(x.length - 2, i >= 0 ? i : -i - 2));
    }

    /** Height of the curve at s. */
    double heightAt(double s) {
        return heightAt(pieceAt(s), s);
    }

    /** Without the straight line that fits it best, each point counting for the distance to its neighbours. */
    HeightCurve detrended() {
        double[] line = fit((x[0] + x[x.length - 1]) / 2, Double.POSITIVE_INFINITY);
        double middle = (x[0] + x[x.length - 1]) / 2;
        double[] rest = new double[x.length];
        for (int i = 0; i < rest.length; i++) {
            rest[i] = z[i] - line[0] - line[1] * (x[i] - middle);
        }
        return new HeightCurve(x, rest);
    }

    /**
     * Without its Gaussian mean line, {@code w(s) = exp(−π (s/αλ)²)}: waves of length λ keep half of their height, longer ones less. Near
     * the ends the line is fitted with slope, so that it does not droop.
     *
     * @param cutOff λ (m), > 0
     */
    HeightCurve highPassed(double cutOff) {
        int nodes = 2 + (int) Math.ceil((x[x.length - 1] - x[0]) / cutOff * LINE_POINTS);
        double[] at = new double[nodes];
        double[] mean = new double[nodes];
        for (int i = 0; i < nodes; i++) {
            at[i] = x[0] + (x[x.length - 1] - x[0]) * i / (nodes - 1);
            mean[i] = fit(at[i], cutOff)[0];
        }
        HeightCurve line = new HeightCurve(at, mean);
        double[] rest = new double[x.length];
        for (int i = 0; i < rest.length; i++) {
            rest[i] = z[i] - line.heightAt(x[i]);
        }
        return new HeightCurve(x, rest);
    }

    /**
     * At even spacing. Waves shorter than four spacings are taken out first, by a windowed sine over its argument, so that they do not
     * come back as long ones.
     *
     * @param d new spacing (m), > 0
     */
    HeightCurve resampled(double d) {
        int n = Math.max(2, 1 + (int) Math.floor((x[x.length - 1] - x[0]) / d * (1 + 1e-12)));
        double[] at = new double[n];
        double[] mean = new double[n];
        for (int i = 0; i < n; i++) {
            at[i] = x[0] + i * d;
            mean[i] = smoothed(at[i], d);
        }
        return new HeightCurve(at, mean);
    }

    /** Half way between this curve and another, at the points of both as far as the two go together. */
    HeightCurve meanWith(HeightCurve other) {
        double from = Math.max(x[0], other.x[0]);
        double to = Math.min(x[x.length - 1], other.x[other.x.length - 1]);
        double[] at = DoubleStream.concat(Arrays.stream(x), Arrays.stream(other.x))
                .filter(s -> s >= from && s <= to)
                .sorted()
                .distinct()
                .toArray();
        double[] mean = Arrays.stream(at)
                .map(s -> (heightAt(s) + other.heightAt(s)) / 2)
                .toArray();
        return new HeightCurve(at, mean);
    }

    private double smoothed(double s, double d) {
        double reach = KERNEL_REACH * d;
        double sum = 0;
        double weight = 0;
        for (int i = pieceAt(s - reach); i + 1 < x.length && x[i] < s + reach; i++) {
            double half = (x[i + 1] - x[i]) / 2;
            for (int g = 0; g < GAUSS_PLACES.length; g++) {
                double at = x[i] + half * (1 + GAUSS_PLACES[g]);
                double w = GAUSS_WEIGHTS[g] * 2 * half * kernel((at - s) / d);
                sum += w * heightAt(i, at);
                weight += w;
            }
        }
        return sum / weight;
    }

    private static double kernel(double t) {
        if (Math.abs(t) >= KERNEL_REACH) {
            return 0;
        }
        double phase = 2 * Math.PI * KERNEL_CUT * t;
        double wave = t == 0 ? 1 : StrictMath.sin(phase) / phase;
        return wave * (1 + StrictMath.cos(Math.PI * t / KERNEL_REACH)) / 2;
    }

    private double heightAt(int i, double s) {
        double d = x[i + 1] - x[i];
        double t = (s - x[i]) / d;
        double rise = z[i + 1] - z[i];
        double s0 = slope[i] * d;
        double s1 = slope[i + 1] * d;
        return z[i] + t * (s0 + t * (3 * rise - 2 * s0 - s1 + t * (s0 + s1 - 2 * rise)));
    }

    /** Height and slope at s of the straight line fitted around it with Gaussian weights; of all points alike where λ is infinite. */
    private double[] fit(double s, double cutOff) {
        boolean all = cutOff == Double.POSITIVE_INFINITY;
        int first = all ? 0 : Math.max(0, pieceAt(s - cutOff));
        double w0 = 0;
        double w1 = 0;
        double w2 = 0;
        double m0 = 0;
        double m1 = 0;
        for (int i = first; i < x.length && (all || x[i] <= s + cutOff); i++) {
            double t = x[i] - s;
            double u = all ? 0 : t / (ALPHA * cutOff);
            double width = (x[Math.min(x.length - 1, i + 1)] - x[Math.max(0, i - 1)]) / 2;
            double w = width * StrictMath.exp(-Math.PI * u * u);
            w0 += w;
            w1 += w * t;
            w2 += w * t * t;
            m0 += w * z[i];
            m1 += w * t * z[i];
        }
        double det = w0 * w2 - w1 * w1;
        if (!(det > 1e-12 * w0 * w2)) {
            return new double[] {m0 / w0, 0};
        }
        return new double[] {(w2 * m0 - w1 * m1) / det, (w0 * m1 - w1 * m0) / det};
    }

    private static double[] slopes(double[] x, double[] z) {
        int n = x.length;
        double[] slope = new double[n];
        if (n == 2) {
            Arrays.fill(slope, (z[1] - z[0]) / (x[1] - x[0]));
            return slope;
        }
        for (int i = 1; i + 1 < n; i++) {
            double before = x[i] - x[i - 1];
            double after = x[i + 1] - x[i];
            slope[i] = ((z[i] - z[i - 1]) / before * after + (z[i + 1] - z[i]) / after * before) / (before + after);
        }
        slope[0] = 2 * (z[1] - z[0]) / (x[1] - x[0]) - slope[1];
        slope[n - 1] = 2 * (z[n - 1] - z[n - 2]) / (x[n - 1] - x[n - 2]) - slope[n - 2];
        return slope;
    }
}
