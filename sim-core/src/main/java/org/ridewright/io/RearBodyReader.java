package org.ridewright.io;

import java.util.Optional;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Layout;
import org.ridewright.vehicle.RearBody;

/** Reads {@code rear body}, the part behind a joint that twists. */
record RearBodyReader(Layout layout) {
    Optional<RearBody> readIfAny(Part body) {
        return body.part(
                        "rear body",
                        "a rear body",
                        "joint behind front axle",
                        "mass",
                        "centre of mass",
                        "roll inertia",
                        "pitch inertia",
                        "twist rate",
                        "twist damping")
                .map(rear -> new RearBody(
                        rear.measure("joint behind front axle", QuantityKind.LENGTH),
                        rear.measure("mass", QuantityKind.MASS),
                        new PlaceReader(layout).read(rear, "centre of mass"),
                        rear.measure("roll inertia", QuantityKind.INERTIA),
                        rear.measure("pitch inertia", QuantityKind.INERTIA),
                        rear.measure("twist rate", QuantityKind.ROLL_RATE),
                        rear.measureIfAny("twist damping", QuantityKind.ROLL_DAMPING)));
    }
}
