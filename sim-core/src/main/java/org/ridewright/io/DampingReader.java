package org.ridewright.io;

import java.util.Arrays;
import java.util.Optional;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Damping;

/** Reads viscous damping from one of its keys: a coefficient, a damping ratio or a restitution, in this order; later ones may lack. */
final class DampingReader {
    private final String[] keys;

    DampingReader(String... keys) {
        this.keys = keys.clone();
    }

    Damping read(Part part) {
        return read(part, QuantityKind.DAMPING);
    }

    /** As the other, with a coefficient of the given kind. */
    Damping read(Part part, QuantityKind coefficientKind) {
        Optional<String> given = part.atMostOneOf(keys);
        if (given.isEmpty()) {
            return new Damping.NotGiven();
        }
        String key = given.get();
        return switch (Arrays.asList(keys).indexOf(key)) {
            case 0 ->
                part.measureIfAny(key, coefficientKind)
                        .<Damping>map(Damping.Coefficient::new)
                        .orElse(new Damping.NotGiven());
            case 1 ->
                part.measureIfAny(key, QuantityKind.RATIO)
                        .<Damping>map(Damping.Ratio::new)
                        .orElse(new Damping.NotGiven());
            default ->
                part.measureIfAny(key, QuantityKind.RATIO)
                        .<Damping>map(Damping.Restitution::new)
                        .orElse(new Damping.NotGiven());
        };
    }
}
