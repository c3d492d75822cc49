package org.ridewright.dynamics;

/**
 * A wheel's contact with the ground under it.
 *
 * @param rate wheel and ground in series (N/m)
 * @param damping (N·s/m)
 * @param ratio share of critical damping with the mass that bounces on the contact
 */
public record ContactFigures(double rate, double damping, double ratio) {
    static ContactFigures of(
            org.ridewright.vehicle.Wheel wheel,
            java.util.Optional<org.ridewright.quantity.Measure> groundRate,
            double effectiveMass) {
        double k = wheel.contactRate().orElseThrow().value();
        double d = wheel.contactDamping() instanceof org.ridewright.vehicle.Damping.Ratio r
                ? 2 * r.value().value() * Math.sqrt(k * effectiveMass)
                : ((org.ridewright.vehicle.Damping.Coefficient) wheel.contactDamping())
                        .value()
                        .value();
        return new ContactFigures(k, d, 0);
    }
}
