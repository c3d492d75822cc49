package org.ridewright.suspension;

import java.util.Arrays;

/**
 * Dry friction beside an elastic law: limit {@code S(c) = F_0 + μ max(0, f_l(c))}, f_l the force in the leaves, shared by sliders in parallel, or the exponential
 * envelope {@code ṡ = |ċ| (sgn(ċ) S(c) − s)/β}.
 *
 * <p>Source: sliders in parallel Masing 1926, the envelope Fancher, Ervin, MacAdam and Winkler, SAE 800905 (1980), here on the friction part
 * alone, which makes it independent of the step (both from memory).
 *
 * @param share μ, ≥ 0
 * @param constant F_0 (N), ≥ 0
 * @param limitShares share of S of each slider, summing to one
 * @param lockedRates k_p of each slider (N/m), > 0
 * @param envelopeLength β (m); 0 for sliders
 */
public record FrictionLaw(
        double share, double constant, double[] limitShares, double[] lockedRates, double envelopeLength) {
    /** No friction. */
    public static final FrictionLaw NONE = new FrictionLaw(0, 0, new double[0], new double[0], 0);

    public FrictionLaw {
        limitShares = limitShares.clone();
        lockedRates = lockedRates.clone();
        if (limitShares.length != lockedRates.length) {
            throw new IllegalArgumentException("one locked rate per slider");
        }
        if (limitShares.length > 0 && Math.abs(Arrays.stream(limitShares).sum() - 1) > 1e-9) {
            throw new IllegalArgumentException("shares of the friction limit must sum to 1");
        }
    }

    /** One slider. */
    public static FrictionLaw single(double share, double constant, double lockedRate) {
        return share == 0 && constant == 0
                ? NONE
                : new FrictionLaw(share, constant, new double[] {1}, new double[] {lockedRate}, 0);
    }

    /** The exponential envelope. */
    public static FrictionLaw envelope(double share, double constant, double length) {
        return new FrictionLaw(share, constant, new double[] {1}, new double[] {Double.NaN}, length);
    }

    /**
     * The same with another limit at every load; the rates at which it gives before it slides stay.
     *
     * @param factor of S, ≥ 0; 0: no friction at all
     */
    public FrictionLaw times(double factor) {
        if (!(factor >= 0)) {
            throw new IllegalArgumentException("friction can be multiplied by 0 or more, got " + factor);
        }
        return factor == 0
                ? NONE
                : new FrictionLaw(factor * share, factor * constant, limitShares, lockedRates, envelopeLength);
    }

    @Override
    public double[] limitShares() {
        return limitShares.clone();
    }

    @Override
    public double[] lockedRates() {
        return lockedRates.clone();
    }

    /** Number of friction states. */
    public int states() {
        return limitShares.length;
    }

    /** Whether the exponential envelope holds instead of sliders. */
    public boolean isEnvelope() {
        return envelopeLength > 0;
    }

    /** Limit S at the force f_l in the leaves (N). */
    public double limit(double leafForce) {
        return constant + share * Math.max(0, leafForce);
    }

    /** Sum of the locked rates (N/m); zero for the envelope. */
    public double lockedRate() {
        return isEnvelope() ? 0 : Arrays.stream(lockedRates).sum();
    }

    /**
     * Locked rate, over its share of the limit, of the slider for which that is least (N/m): it must exceed {@code μ f_l'}, or that slider
     * could not let go when the load falls. Infinite for the envelope and without friction.
     */
    public double weakestLockedRate() {
        double least = Double.POSITIVE_INFINITY;
        for (int j = 0; j < limitShares.length && !isEnvelope(); j++) {
            least = Math.min(least, lockedRates[j] / limitShares[j]);
        }
        return least;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof FrictionLaw that
                && share == that.share
                && constant == that.constant
                && envelopeLength == that.envelopeLength
                && Arrays.equals(limitShares, that.limitShares)
                && Arrays.equals(lockedRates, that.lockedRates);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(limitShares) + 31 * Double.hashCode(share) + 17 * Double.hashCode(constant);
    }

    @Override
    public String toString() {
        return "FrictionLaw[μ=" + share + ", F0=" + constant + ", kp=" + Arrays.toString(lockedRates) + ", β="
                + envelopeLength + "]";
    }
}
