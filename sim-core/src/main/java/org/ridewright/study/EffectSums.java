package org.ridewright.study;

import java.util.function.ToDoubleFunction;

/**
 * Elementary effects of one function of k values: its change over the whole range of a value, as told by a jump over half of it.
 *
 * <pre>
 *   μ* = ⟨|Δf|⟩/½,   μ = ⟨Δf⟩/½,   σ = √(Σ(Δf/½ − μ)²/(r − 1))
 * </pre>
 *
 * over r jumps. Jumps to or from a run that failed are left out; where they are more than a tenth, nothing is told.
 *
 * <p>σ large beside μ* says that the value acts otherwise where others are otherwise, or not in proportion. Source: Morris (1991); μ* after Campolongo,
 * Cariboni, Saltelli (2007).
 */
public final class EffectSums {
    private final int k;
    private final MorrisDesign design;
    private final Resampled[] sums;
    private long used;
    private long left;

    public EffectSums(int k, MorrisDesign design, long seed) {
        this.k = k;
        this.design = design;
        sums = new Resampled[k];
        for (int d = 0; d < k; d++) {
            sums[d] = new Resampled(4, Mix.bits(seed, d));
        }
    }

    /** @param f values along a trajectory, k + 1; NaN where a run failed, whose neighbours' jumps are left out */
    public void add(long trajectory, double[] f) {
        for (int step = 0; step < k; step++) {
            int d = design.jumping(trajectory, step);
            double change = f[step + 1] - f[step];
            if (!Double.isFinite(change)) {
                left++;
                continue;
            }
            used++;
            double effect = (design.up(trajectory, d) ? change : -change) / design.jump();
            sums[d].add(trajectory, new double[] {1, effect, Math.abs(effect), effect * effect});
        }
    }

    /** μ* of value {@code d}. */
    public Estimate size(int d) {
        return told(d, s -> s[2] / s[0]);
    }

    /** μ of value {@code d}. */
    public Estimate mean(int d) {
        return told(d, s -> s[1] / s[0]);
    }

    /** σ of value {@code d}. */
    public Estimate deviation(int d) {
        return told(d, s -> Math.sqrt(Math.max(0, (s[3] - s[1] * s[1] / s[0]) / (s[0] - 1))));
    }

    private Estimate told(int d, ToDoubleFunction<double[]> of) {
        return isTold() ? sums[d].estimate(of) : new Estimate(Double.NaN, Double.NaN, Double.NaN);
    }

    /** Whether no more than a tenth of the jumps had to be left out. */
    public boolean isTold() {
        return left <= IndexSums.MOST_LEFT * (used + left);
    }

    /** Jumps that were taken. */
    public long used() {
        return used;
    }

    /** Jumps that were left out because a run failed. */
    public long left() {
        return left;
    }
}
