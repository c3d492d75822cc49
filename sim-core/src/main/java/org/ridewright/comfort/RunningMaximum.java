package org.ridewright.comfort;

/** Largest running r.m.s. of all integration times τ that lie within a window, picked up as the samples pass. */
final class RunningMaximum {
    private final PowerIntegral squares;
    private final double tau;
    private final double first;
    private final double last;
    private double largest;
    private boolean firstDone;
    private boolean lastDone;

    /**
     * @param squares of power 2, whose history is at least {@link #history}
     * @param tau integration time τ (s)
     * @throws IllegalArgumentException if the window is shorter than τ
     */
    RunningMaximum(PowerIntegral squares, Window window, double tau) {
        Sampling sampling = squares.sampling();
        if (window.from() + tau > window.to() + Sampling.SLACK / sampling.rate()) {
            throw new IllegalArgumentException(
                    "window must be ≥ the integration time of " + tau + " s, got " + window.length() + " s");
        }
        this.squares = squares;
        this.tau = tau;
        first = sampling.place(window.from() + tau);
        last = sampling.place(window.to());
    }

    /** History that an integration time needs (samples). */
    static int history(double sampleRate, double tau) {
        return (int) Math.ceil(tau * sampleRate) + 3;
    }

    /** To be called after each sample that the integral takes. */
    void update() {
        long i = squares.count() - 1;
        if (i < first || lastDone) {
            return;
        }
        if (!firstDone) {
            take(first);
            firstDone = true;
        }
        if (i <= last) {
            take((double) i);
        }
        if (i >= last) {
            take(last);
            lastDone = true;
        }
    }

    double largest() {
        return largest;
    }

    private void take(double place) {
        largest = Math.max(largest, rms(squares, place, tau));
    }

    /** a_w(t0) with t0 at a place. */
    static double rms(PowerIntegral squares, double place, double tau) {
        double from = Sampling.snapped(place - tau * squares.sampling().rate());
        return Math.sqrt(squares.between(from, place) / tau);
    }
}
