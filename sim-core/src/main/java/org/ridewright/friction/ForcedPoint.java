package org.ridewright.friction;

/**
 * Steady motion over a sinusoidal road, simulated.
 *
 * @param frequency (Hz)
 * @param harmonic first harmonic of the motion over the road's amplitude
 * @param amplitude half of greatest less least over the road's amplitude
 * @param locked share of the time during which every spring that rubs is locked
 * @param settled whether one stretch of cycles was like the one before
 * @param liftsOff whether for a moment something that only pushes was off, or a stop or helper touched that does not at rest, or the other way about
 * @param failed why there is no such motion, when all numbers are NaN; empty where there is
 */
public record ForcedPoint(
        double frequency,
        double harmonic,
        double amplitude,
        double locked,
        boolean settled,
        boolean liftsOff,
        String failed) {
    /** None: the simulation gave up. */
    static ForcedPoint none(double frequency, String reason) {
        return new ForcedPoint(frequency, Double.NaN, Double.NaN, Double.NaN, false, false, reason);
    }

    /** Whether the simulation gave up. */
    public boolean hasFailed() {
        return !failed.isEmpty();
    }
}
