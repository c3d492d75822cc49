package org.ridewright.io;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Hitch;
import org.ridewright.vehicle.Hitch.Motion;
import org.ridewright.vehicle.Layout;

/** Reads {@code hitches}. */
record HitchReader(Layout layout) {
    List<Hitch> read(Part vehicle) {
        List<Part> hitches =
                vehicle.parts("hitches", "a hitch", "name", "at", "rate", "damping", "motion", "level with");
        return hitches.stream().map(part -> hitch(part, hitches.size() == 1)).toList();
    }

    private Hitch hitch(Part hitch, boolean only) {
        return new Hitch(
                hitch.name(only, "hitch"),
                new PlaceReader(layout).read(hitch, "at"),
                hitch.measure("rate", QuantityKind.RATE),
                new DampingReader("damping").read(hitch),
                motion(hitch),
                hitch.textIfAny("level with", "the name of a load case"));
    }

    private static Motion motion(Part hitch) {
        Optional<Part> given = hitch.part("motion", "a motion", "amplitude", "frequency", "record");
        if (given.isEmpty()) {
            return new Motion.Still();
        }
        Part motion = given.get();
        motion.atMostOneOf("record", "amplitude");
        motion.atMostOneOf("record", "frequency");
        if (motion.has("record")) {
            return new Motion.Recorded(motion.rows("record", QuantityKind.TIME, QuantityKind.LENGTH).stream()
                    .map(row -> new Motion.Point(row.get(0), row.get(1)))
                    .toList());
        }
        return new Motion.Sinusoid(
                motion.measure("amplitude", QuantityKind.LENGTH), motion.measure("frequency", QuantityKind.FREQUENCY));
    }
}
