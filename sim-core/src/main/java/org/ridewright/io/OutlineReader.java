package org.ridewright.io;

import java.util.Optional;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Outline;

/** Reads the outer dimensions of a body or of cargo. */
final class OutlineReader {
    private OutlineReader() {}

    static Optional<Outline> readIfAny(Part owner) {
        return owner.part("outline", "an outline", "length", "width", "height")
                .map(group -> new Outline(
                        group.measure("length", QuantityKind.LENGTH),
                        group.measure("width", QuantityKind.LENGTH),
                        group.measure("height", QuantityKind.LENGTH)));
    }
}
