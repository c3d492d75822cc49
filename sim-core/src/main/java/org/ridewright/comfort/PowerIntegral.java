package org.ridewright.comfort;

import org.ridewright.signal.Channel;

/**
 * {@code ∫ |a|^p dt} between any two instants of a channel, in constant time each.
 *
 * <p>Trapezoid rule on the samples of |a|^p; ends between samples by straight lines of |a|^p. For a band-limited signal
 * this is the better choice than integrating the polygon through a exactly: over whole periods of a sine the trapezoid is
 * exact up to aliasing of |a|^p, while the polygon loses (2πf/fs)²/6 of a².
 *
 * <p>The running sums are kept as unevaluated pairs high + low (Knuth's two-sum), some 32 digits. A difference of two is
 * right to about 1e-31 of all that lies before it, so rounding does not build up to anything: no drift.
 */
final class PowerIntegral {
    private final Channel channel;
    private final int power;
    private final double[] high;
    private final double[] low;

    /** @param power p, an even number ≥ 2 */
    PowerIntegral(Channel channel, int power) {
        this.channel = channel;
        this.power = power;
        int n = channel.size();
        high = new double[n];
        low = new double[n];
        double before = integrand(0);
        for (int i = 1; i < n; i++) {
            double here = integrand(i);
            add(i, (before + here) / 2);
            before = here;
        }
    }

    /** Sum i = sum i−1 + x, kept as a pair. */
    private void add(int i, double x) {
        double s = high[i - 1] + x;
        double part = s - high[i - 1];
        double error = (high[i - 1] - (s - part)) + (x - part) + low[i - 1];
        high[i] = s + error;
        low[i] = error - (high[i] - s);
    }

    /** Place of an instant of the channel, counted in samples from the first; see {@link #snapped}. */
    double place(double time) {
        double place = snapped((time - channel.start()) * channel.sampleRate());
        return Math.max(0, Math.min(channel.size() - 1.0, place));
    }

    /** A place within 1e-6 of a sample is that sample: times carry rounding. */
    static double snapped(double place) {
        double nearest = Math.rint(place);
        return Math.abs(place - nearest) < 1e-6 ? nearest : place;
    }

    /** Integral from one place to a later one; nothing before the first sample, no places after the last. */
    double between(double from, double to) {
        if (to <= 0) {
            return 0;
        }
        double first = Math.max(0, from);
        int i = (int) first;
        int j = (int) to;
        double whole = (high[j] - high[i]) + (low[j] - low[i]);
        return Math.max(0, whole + part(j, to - j) - part(i, first - i)) / channel.sampleRate();
    }

    /** Integral over a window, which must lie within the channel. */
    double over(Window window) {
        return between(place(window.from()), place(window.to()));
    }

    private double part(int i, double fraction) {
        if (fraction == 0) {
            return 0;
        }
        double here = integrand(i);
        return fraction * (here + fraction / 2 * (integrand(i + 1) - here));
    }

    private double integrand(int i) {
        double square = channel.sample(i) * channel.sample(i);
        double product = square;
        for (int p = 2; p < power; p += 2) {
            product *= square;
        }
        return product;
    }
}
