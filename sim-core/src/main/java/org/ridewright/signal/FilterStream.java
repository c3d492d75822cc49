package org.ridewright.signal;

import java.util.Arrays;

/**
 * A {@link SampledFilter} at work on samples that come one by one, in fixed memory. The output is, bit for bit, what the filter gives for
 * the whole channel.
 *
 * <p>Output n needs the samples up to n + {@value #DELAY}; it comes with the last of them. After the last sample
 * {@link #drain} gives the outputs still owed, taking the signal as constant from there on.
 */
public final class FilterStream {
    /** Samples by which the output comes late. */
    public static final int DELAY = InterpolationKernel.HALF_WIDTH - 1;

    private static final int TAPS = InterpolationKernel.TAPS;

    private final SampledFilter filter;
    /** The last TAPS samples, written twice so that they can always be read in one piece. */
    private final double[] recent = new double[2 * TAPS];

    private double[] state;
    private double[] next;
    private int place;
    private long taken;
    private long pushed;
    private long given;
    private double last;
    private double output;
    private boolean draining;

    /**
     * @param before value that the signal had, always, before the first sample
     * @param state of the filter after that; becomes ours
     */
    FilterStream(SampledFilter filter, double before, double[] state) {
        this.filter = filter;
        this.state = state;
        next = new double[state.length];
        Arrays.fill(recent, before);
    }

    /**
     * Takes the next sample.
     *
     * @return whether an output has come; {@link #output} holds it until the next call
     * @throws IllegalStateException after {@link #drain}
     */
    public boolean accept(double sample) {
        if (draining) {
            throw new IllegalStateException("the last sample was taken before");
        }
        taken++;
        last = sample;
        return step(sample);
    }

    /**
     * After the last sample: gives the next output owed.
     *
     * @return whether there was one
     */
    public boolean drain() {
        draining = true;
        while (given < taken) {
            if (step(last)) {
                return true;
            }
        }
        return false;
    }

    /** The output that came last. */
    public double output() {
        return output;
    }

    /** Number of outputs that have come. */
    public long given() {
        return given;
    }

    private boolean step(double sample) {
        recent[place] = sample;
        recent[place + TAPS] = sample;
        place = (place + 1) % TAPS;
        pushed++;
        if (pushed <= DELAY) {
            return false;
        }
        // recent[place …] are now the samples n − M, …, n + M − 1 of the output n that is due
        if (given > 0) {
            filter.advance(recent, place, state, next);
            double[] swap = state;
            state = next;
            next = swap;
        }
        output = filter.read(recent[place + InterpolationKernel.HALF_WIDTH], state);
        given++;
        return true;
    }
}
