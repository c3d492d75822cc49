package org.ridewright.comfort;

import org.ridewright.signal.Channel;

/**
 * {@code ∫ |a|^p dt} of samples that come one by one, between any two instants not longer ago than the history kept.
 *
 * <p>Trapezoid rule on the samples of |a|^p; ends between samples by straight lines of |a|^p. For a band-limited signal
 * this is the better choice than integrating the polygon through a exactly: over whole periods of a sine the trapezoid is
 * exact up to aliasing of |a|^p, while the polygon loses (2πf/fs)²/6 of a².
 *
 * <p>The running sums are kept as unevaluated pairs high + low (Knuth's two-sum), some 32 digits. A difference of two is
 * right to about 1e-31 of all that lies before it, so rounding does not build up to anything: no drift, however long the ride.
 */
final class PowerIntegral {
    private final Sampling sampling;
    private final int power;
    private final int history;
    private final double[] integrand;
    private final double[] high;
    private final double[] low;
    private long count;

    /**
     * @param power p, an even number ≥ 2
     * @param history number of latest samples between which integrals are given, ≥ 2
     */
    PowerIntegral(Sampling sampling, int power, int history) {
        this.sampling = sampling;
        this.power = power;
        this.history = history;
        integrand = new double[history];
        high = new double[history];
        low = new double[history];
    }

    /** Of a whole channel, all of it kept. */
    static PowerIntegral of(Channel channel, int power) {
        Sampling sampling = new Sampling(channel.start(), channel.sampleRate());
        PowerIntegral integral = new PowerIntegral(sampling, power, Math.max(2, channel.size()));
        for (int i = 0; i < channel.size(); i++) {
            integral.accept(channel.sample(i));
        }
        return integral;
    }

    /** Value of the integral from the first sample to a place, in sample intervals: {@code high + low + part}. */
    record Mark(double high, double low, double part) {}

    Sampling sampling() {
        return sampling;
    }

    /** Number of samples so far. */
    long count() {
        return count;
    }

    /** Takes the next sample. */
    void accept(double sample) {
        int here = (int) (count % history);
        integrand[here] = raised(sample);
        if (count == 0) {
            high[here] = 0;
            low[here] = 0;
        } else {
            int before = here == 0 ? history - 1 : here - 1;
            add(before, here, (integrand[before] + integrand[here]) / 2);
        }
        count++;
    }

    /** Sum here = sum before + x, kept as a pair. */
    private void add(int before, int here, double x) {
        double s = high[before] + x;
        double part = s - high[before];
        double error = (high[before] - (s - part)) + (x - part) + low[before];
        high[here] = s + error;
        low[here] = error - (high[here] - s);
    }

    /** The integral at a place within the history. */
    Mark mark(double place) {
        long i = (long) place;
        int here = (int) (i % history);
        return new Mark(high[here], low[here], part(i, place - i));
    }

    /** Integral from one mark to a later one. */
    double between(Mark from, Mark to) {
        double whole = (to.high - from.high) + (to.low - from.low);
        return Math.max(0, whole + to.part - from.part) / sampling.rate();
    }

    /** Integral from one place to a later one within the history; nothing before the first sample. */
    double between(double from, double to) {
        if (to <= 0) {
            return 0;
        }
        double first = Math.max(0, from);
        long i = (long) first;
        long j = (long) to;
        int a = (int) (i % history);
        int b = (int) (j % history);
        double whole = (high[b] - high[a]) + (low[b] - low[a]);
        return Math.max(0, whole + part(j, to - j) - part(i, first - i)) / sampling.rate();
    }

    private double part(long i, double fraction) {
        if (fraction == 0) {
            return 0;
        }
        double here = integrand[(int) (i % history)];
        return fraction * (here + fraction / 2 * (integrand[(int) ((i + 1) % history)] - here));
    }

    private double raised(double sample) {
        double square = sample * sample;
        double product = square;
        for (int p = 2; p < power; p += 2) {
            product *= square;
        }
        return product;
    }
}
