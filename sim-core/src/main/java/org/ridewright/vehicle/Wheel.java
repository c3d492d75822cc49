package org.ridewright.vehicle;

import java.util.Optional;
import org.ridewright.quantity.Measure;

/**
 * The wheels of an axle, all alike.
 *
 * @param diameter outer (m), > 0
 * @param footprintLength length of ground that the tyre touches (m); needed by paths with a footprint
 * @param contactRate radial rate of wheel and tyre (N/m); absent: the default of the tyre
 * @param contactDamping of wheel and tyre on the road
 * @param spinInertia of one wheel about its spindle (kg·m²), ≥ 0
 */
public record Wheel(
        Measure diameter,
        Tyre tyre,
        PathKind path,
        Optional<Measure> footprintLength,
        Optional<Measure> contactRate,
        Damping contactDamping,
        Measure spinInertia) {
    /** Half the diameter (m). */
    public double radius() {
        return diameter.value() / 2;
    }
}
