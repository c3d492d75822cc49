package org.ridewright.vehicle;

import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Provenance;
import org.ridewright.quantity.QuantityKind;

/** How a body is held sideways, after what was not measured has been estimated. */
public final class SwayFigures {
    /** Frequency of sway where nothing is known (Hz). */
    public static final double USUAL = 6;

    private SwayFigures() {}

    /** Frequency of sway (Hz): as given, or in the middle of the range from 4 to 8 Hz. */
    public static Measure frequency(Vehicle vehicle) {
        return vehicle.further()
                .swayFrequency()
                .orElseGet(() -> new Measure(
                        QuantityKind.FREQUENCY,
                        USUAL,
                        2,
                        Provenance.ESTIMATED,
                        "sway at 6 Hz, the middle of 4 to 8 Hz (common practice)"));
    }

    /** Damping ratio of sway: as given, or a tenth. */
    public static Measure dampingRatio(Vehicle vehicle) {
        return vehicle.further()
                .swayDampingRatio()
                .orElseGet(() ->
                        Measure.estimated(0.1, QuantityKind.RATIO, "sway damped at 0.1 of critical (common practice)"));
    }

    /** Whether the axles state their own rates. */
    public static boolean byAxles(Vehicle vehicle) {
        return vehicle.axles().stream().anyMatch(axle -> axle.swayRate().isPresent());
    }
}
