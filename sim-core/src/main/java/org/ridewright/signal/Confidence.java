package org.ridewright.signal;

import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/**
 * Within which factors of an estimated spectral density the true one lies, {@code lower·G ≤ true ≤ upper·G}.
 *
 * <p>An estimate with ν degrees of freedom is distributed like the true value times χ²(ν)/ν, so that with probability P
 *
 * <pre>
 *   lower = ν/χ²_{(1+P)/2}(ν)        upper = ν/χ²_{(1−P)/2}(ν)
 * </pre>
 *
 * <p>Holds for a stationary Gaussian signal, at one frequency chosen beforehand; of 100 lines looked at together some five
 * fall outside a band of 95 %.
 *
 * <p>Source: Bendat and Piersol, Random Data, chapter 8 (from memory).
 *
 * @param level probability P
 * @param degreesOfFreedom ν
 * @param lower factor, below 1
 * @param upper factor, above 1 unless ν is below 1
 */
public record Confidence(double level, double degreesOfFreedom, double lower, double upper) {
    /**
     * @param level P, between 0 and 1, both excluded
     * @param degreesOfFreedom ν, &gt; 0
     * @throws IllegalArgumentException if a bound above is broken
     */
    public static Confidence of(double level, double degreesOfFreedom) {
        if (!(level > 0 && level < 1)) {
            throw new IllegalArgumentException("probability must lie between 0 and 1, got " + level);
        }
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException("degrees of freedom must be > 0, got " + degreesOfFreedom);
        }
        ChiSquaredDistribution chiSquare = new ChiSquaredDistribution(degreesOfFreedom);
        return new Confidence(
                level,
                degreesOfFreedom,
                degreesOfFreedom / chiSquare.inverseCumulativeProbability((1 + level) / 2),
                degreesOfFreedom / chiSquare.inverseCumulativeProbability((1 - level) / 2));
    }
}
