package org.ridewright.io;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.FurtherMotions;
import org.ridewright.vehicle.FurtherMotions.Hold;
import org.ridewright.vehicle.FurtherMotions.Motion;
import org.ridewright.vehicle.FurtherMotions.Pull;

/** Reads {@code coordinates} and what holds and drives them. */
final class FurtherMotionsReader {
    private static final Words<Motion> MOTIONS =
            Words.of("a horizontal motion", Arrays.asList(Motion.values()), Motion::word);

    private FurtherMotionsReader() {}

    static FurtherMotions read(Part vehicle) {
        return new FurtherMotions(
                motions(vehicle),
                holds(vehicle),
                pull(vehicle),
                vehicle.measureIfAny("sway frequency", QuantityKind.FREQUENCY),
                vehicle.measureIfAny("sway damping ratio", QuantityKind.RATIO));
    }

    private static List<Motion> motions(Part vehicle) {
        Values values = new Values(vehicle.reading());
        return vehicle.itemsOrOne("coordinates", MOTIONS.listed()).stream()
                .flatMap(item -> values.word(item, MOTIONS).stream())
                .toList();
    }

    private static List<Hold> holds(Part vehicle) {
        List<Part> holds =
                vehicle.parts("held fore and aft", "what holds it", "name", "above ground", "rate", "damping");
        return holds.stream()
                .map(hold -> new Hold(
                        hold.name(holds.size() == 1, "hold"),
                        hold.measureIfAny("above ground", QuantityKind.LENGTH),
                        hold.measure("rate", QuantityKind.RATE),
                        new DampingReader("damping").read(hold)))
                .toList();
    }

    private static Optional<Pull> pull(Part vehicle) {
        return vehicle.part("pull", "a pull", "frequency", "amplitude", "above ground")
                .map(pull -> new Pull(
                        pull.measure("frequency", QuantityKind.FREQUENCY),
                        pull.measure("amplitude", QuantityKind.FORCE),
                        pull.measureIfAny("above ground", QuantityKind.LENGTH)));
    }
}
