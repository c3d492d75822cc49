package org.ridewright.comfort;

import org.ridewright.signal.Channel;

/**
 * Running r.m.s. with a linear window, {@code a_w(t0) = {1/τ ∫ from t0−τ to t0 of a_w²(t) dt}^½}.
 *
 * <p>Before the first sample the acceleration counts as zero. Trapezoid rule on a_w², for any τ, whole samples or not.
 * Cost: O(n) for all instants together, free of drift: a quiet second after a violent minute is as exact as before it.
 *
 * <p>Source: ISO 2631-1:1997, 6.3.1, equation 2; τ = 1 s for MTVV.
 */
public final class RunningRms {
    /** τ of the standard (s). */
    public static final double INTEGRATION_TIME = 1;

    private final Channel weighted;
    private final double tau;
    private final PowerIntegral squares;

    /** With τ = 1 s. */
    public RunningRms(Channel weighted) {
        this(weighted, INTEGRATION_TIME);
    }

    /**
     * @param weighted frequency-weighted acceleration
     * @param tau integration time τ (s), at least one sampling interval
     * @throws IllegalArgumentException if τ is shorter than that or not finite
     */
    public RunningRms(Channel weighted, double tau) {
        if (!(tau * weighted.sampleRate() >= 1) || Double.isInfinite(tau)) {
            throw new IllegalArgumentException("integration time must be ≥ the sampling interval, "
                    + 1 / weighted.sampleRate() + " s, got " + tau + " s (channel " + weighted.name() + ")");
        }
        this.weighted = weighted;
        this.tau = tau;
        this.squares = PowerIntegral.of(weighted, 2);
    }

    /** a_w(t0) with t0 at every sample; same unit. */
    public Channel channel() {
        double[] values = new double[weighted.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = RunningMaximum.rms(squares, i, tau);
        }
        return weighted.with(weighted.name() + " running r.m.s.", weighted.unit(), values);
    }

    /**
     * Largest a_w(t0) of all integration windows that lie within a window; with τ = 1 s, MTVV.
     *
     * <p>t0 runs from {@code from + τ} to {@code to}: both ends and every sample between.
     *
     * @throws IllegalArgumentException if the window is not covered by the channel or is shorter than τ
     */
    public double maximum(Window window) {
        window.requireWithin(weighted);
        Sampling sampling = squares.sampling();
        PowerIntegral passing = new PowerIntegral(sampling, 2, RunningMaximum.history(sampling.rate(), tau));
        RunningMaximum maximum = new RunningMaximum(passing, window, tau);
        for (int i = 0; i < weighted.size(); i++) {
            passing.accept(weighted.sample(i));
            maximum.update();
        }
        return maximum.largest();
    }
}
