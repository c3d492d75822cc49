package org.ridewright.io;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.AxleKind;
import org.ridewright.vehicle.Layout;

/** Reads {@code axles}. */
record AxleReader(Layout layout) {
    private static final String[] KEYS = {
        "name",
        "kind",
        "behind front axle",
        "track",
        "unsprung mass",
        "unsprung mass each side",
        "roll inertia",
        "roll axis height",
        "wheels",
        "wheel",
        "springs",
        "dampers",
        "anti-roll bar",
        "sway rate",
        "sway damping"
    };
    private static final Words<AxleKind> KINDS =
            Words.of("a kind of axle", Arrays.asList(AxleKind.values()), AxleKind::word);
    private static final String EACH_SIDE = "unsprung mass each side";

    List<Axle> read(Part vehicle) {
        if (!vehicle.has("axles")) {
            vehicle.missing("axles", "a list of axles, from front to rear");
        }
        List<Part> axles = vehicle.parts("axles", "an axle", KEYS);
        return IntStream.range(0, axles.size())
                .mapToObj(i -> axle(axles.get(i), i == 0, axles.size() == 1))
                .toList();
    }

    private Axle axle(Part axle, boolean first, boolean only) {
        AxleKind kind = layout.rolls()
                ? axle.word("kind", KINDS)
                : axle.wordIfAny("kind", KINDS).orElse(AxleKind.SINGLE);
        Measure front = Measure.of(0, QuantityKind.LENGTH);
        AttachmentReader attachments = new AttachmentReader(kind == AxleKind.SINGLE);
        return new Axle(
                axle.name(only, "axle"),
                kind,
                first
                        ? axle.measureOr("behind front axle", front)
                        : axle.measure("behind front axle", QuantityKind.LENGTH),
                axle.measureIfAny("track", QuantityKind.LENGTH),
                unsprungMass(axle),
                axle.measureIfAny("roll inertia", QuantityKind.INERTIA),
                axle.measureIfAny("roll axis height", QuantityKind.LENGTH),
                WheelReader.read(axle),
                new SpringReader(attachments).read(axle),
                new DamperReader(attachments).read(axle),
                axle.measureIfAny("anti-roll bar", QuantityKind.ROLL_RATE),
                axle.measureIfAny("sway rate", QuantityKind.RATE),
                axle.measureIfAny("sway damping", QuantityKind.DAMPING));
    }

    private static Measure unsprungMass(Part axle) {
        Optional<String> key = axle.oneOf("unsprung mass", EACH_SIDE);
        if (key.isPresent() && key.get().equals(EACH_SIDE)) {
            axle.reading().alias(axle.path("unsprung mass"), axle.path(EACH_SIDE));
            Measure side = axle.measure(EACH_SIDE, QuantityKind.MASS);
            return new Measure(
                    side.kind(), 2 * side.value(), 2 * side.tolerance(), side.provenance(), "2 × " + side.written());
        }
        return axle.measureIfAny("unsprung mass", QuantityKind.MASS).orElse(Values.standIn(QuantityKind.MASS));
    }
}
