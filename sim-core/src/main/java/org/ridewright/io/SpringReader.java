package org.ridewright.io;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Spring;
import org.ridewright.vehicle.SpringKind;

/** Reads {@code springs}. */
record SpringReader(AttachmentReader attachments) {
    private static final Words<SpringKind> KINDS =
            Words.of("a kind of spring", Arrays.asList(SpringKind.values()), SpringKind::word);
    private static final String[] KEYS = {
        "name",
        "kind",
        "side",
        "apart",
        "rate",
        "table",
        "leaves",
        "wire",
        "bar",
        "gas",
        "damping",
        "friction",
        "helper",
        "bump stop",
        "droop stop",
        "mount height",
        "motion ratio"
    };

    List<Spring> read(Part axle) {
        List<Part> springs = axle.parts("springs", "a spring", KEYS);
        return springs.stream().map(part -> spring(part, springs.size() == 1)).toList();
    }

    private Spring spring(Part spring, boolean only) {
        return new Spring(
                spring.name(only, "springs"),
                kind(spring),
                attachments.read(spring),
                ElasticityReader.read(spring),
                new DampingReader("damping").read(spring),
                FrictionReader.ofSpring().read(spring),
                StageReader.read(spring),
                spring.measureIfAny("mount height", QuantityKind.LENGTH),
                spring.measureIfAny("motion ratio", QuantityKind.RATIO));
    }

    /** What the spring is; one with a wire, bar or gas says so by that. */
    static SpringKind kind(Part spring) {
        Optional<SpringKind> implied = spring.has("wire")
                ? Optional.of(SpringKind.COIL)
                : spring.has("bar")
                        ? Optional.of(SpringKind.TORSION_BAR)
                        : spring.has("gas") ? Optional.of(SpringKind.AIR) : Optional.empty();
        return implied.isPresent() ? spring.wordIfAny("kind", KINDS).orElse(implied.get()) : spring.word("kind", KINDS);
    }
}
