package org.ridewright.vehicle;

import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;

/** Heights at which springs hold the body and about which it rolls. */
public final class MountHeights {
    private MountHeights() {}

    /** Height of the spring mounts at an axle: of its first spring that states one, else that of the wheel centres. */
    public static Measure at(Axle axle) {
        return axle.springs().stream()
                .flatMap(s -> s.mountHeight().stream())
                .findFirst()
                .orElseGet(() -> Measure.estimated(
                        axle.wheel().radius(),
                        QuantityKind.LENGTH,
                        "spring mounts at wheel centre height (common practice)"));
    }

    /** Height of the roll axis at an axle: as stated, else that of the spring mounts. */
    public static Measure rollAxisAt(Axle axle) {
        return axle.rollAxisHeight().orElseGet(() -> at(axle));
    }
}
