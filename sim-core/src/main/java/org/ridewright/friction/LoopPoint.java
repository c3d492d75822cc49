package org.ridewright.friction;

/**
 * One amplitude of a spring's travel: what its loop loses and how stiff it is, by simulation and by harmonic balance.
 *
 * @param amplitude X (m)
 * @param area of the simulated loop, lost each cycle (J)
 * @param secantRate simulated, greatest less least force over 2 X (N/m)
 * @param firstHarmonicRate simulated, the part of the force in step with the travel over X (N/m)
 * @param balancedArea {@code π X² h} by harmonic balance (J)
 * @param balancedRate elastic rate and k_eq by harmonic balance (N/m)
 */
public record LoopPoint(
        double amplitude,
        double area,
        double secantRate,
        double firstHarmonicRate,
        double balancedArea,
        double balancedRate) {
    /** Viscous damper that loses as much at a frequency, {@code A/(π ω X²)} (N·s/m), by simulation. */
    public double damper(double omega) {
        return area / (Math.PI * omega * amplitude * amplitude);
    }

    /** The same by harmonic balance (N·s/m). */
    public double balancedDamper(double omega) {
        return balancedArea / (Math.PI * omega * amplitude * amplitude);
    }
}
