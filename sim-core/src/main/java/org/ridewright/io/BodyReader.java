package org.ridewright.io;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.AxisHeight;
import org.ridewright.vehicle.Layout;
import org.ridewright.vehicle.SprungBody;
import org.ridewright.vehicle.Weighbridge;

/** Reads {@code body}. */
record BodyReader(Layout layout) {
    private static final String[] KEYS = {
        "mass",
        "weighbridge",
        "centre of mass",
        "roll inertia",
        "roll radius of gyration",
        "pitch inertia",
        "pitch radius of gyration",
        "product of inertia",
        "outline",
        "roll axis",
        "pitch axis",
        "spring mount height",
        "rear body"
    };
    private static final String AT_CENTRE = "centre of mass";

    SprungBody read(Part vehicle) {
        Part body = vehicle.partOrMissing("body", "a body", KEYS);
        body.oneOf("mass", "weighbridge");
        body.atMostOneOf("roll inertia", "roll radius of gyration");
        body.atMostOneOf("pitch inertia", "pitch radius of gyration");
        Optional<Part> centre =
                body.has(AT_CENTRE) ? Optional.of(PlaceReader.group(body, AT_CENTRE)) : Optional.empty();
        return new SprungBody(
                body.has("weighbridge") ? Optional.empty() : body.measureIfAny("mass", QuantityKind.MASS),
                centre.flatMap(PlaceReader::along),
                centre.map(PlaceReader::across).orElse(Measure.of(0, QuantityKind.LENGTH)),
                centre.flatMap(group -> group.measureIfAny("above ground", QuantityKind.LENGTH)),
                weighbridge(body),
                body.measureIfAny("roll inertia", QuantityKind.INERTIA),
                body.measureIfAny("pitch inertia", QuantityKind.INERTIA),
                body.measureIfAny("roll radius of gyration", QuantityKind.LENGTH),
                body.measureIfAny("pitch radius of gyration", QuantityKind.LENGTH),
                body.measureOrZero("product of inertia", QuantityKind.INERTIA),
                OutlineReader.readIfAny(body),
                axis(body, "roll axis"),
                pitchAxis(body),
                new RearBodyReader(layout).readIfAny(body));
    }

    private static Optional<Weighbridge> weighbridge(Part body) {
        return body.part("weighbridge", "a weighbridge", "with", "axle loads", "hitch load")
                .map(scales -> {
                    if (!scales.has("axle loads")) {
                        scales.missing("axle loads", "the mass under each axle, such as [212 kg, 240 kg]");
                    }
                    return new Weighbridge(
                            scales.textIfAny("with", "the name of a load case").orElse(""),
                            scales.measures("axle loads", QuantityKind.MASS),
                            scales.measureOrZero("hitch load", QuantityKind.MASS));
                });
    }

    private static AxisHeight pitchAxis(Part body) {
        Optional<String> key = body.atMostOneOf("pitch axis", "spring mount height");
        key.filter("spring mount height"::equals)
                .ifPresent(other -> body.reading().alias(body.path("pitch axis"), body.path(other)));
        return axis(body, key.orElse("pitch axis"));
    }

    private static AxisHeight axis(Part body, String key) {
        Optional<Node> node = body.node(key);
        if (node.isPresent() && node.get() instanceof Node.Scalar scalar && Hints.same(scalar.text(), AT_CENTRE)) {
            return new AxisHeight.AtCentreOfMass();
        }
        if (node.isPresent()
                && node.get() instanceof Node.Scalar scalar
                && scalar.text().chars().noneMatch(Character::isDigit)
                && !scalar.text().isEmpty()) {
            body.reading()
                    .problem(
                            scalar,
                            scalar.text(),
                            "is not a height",
                            "a height above the ground such as 0.7 m, or the words " + AT_CENTRE,
                            Hints.nearest(scalar.text(), List.of(AT_CENTRE)));
            return new AxisHeight.AtAxles();
        }
        return body.measureIfAny(key, QuantityKind.LENGTH)
                .<AxisHeight>map(AxisHeight.AtHeight::new)
                .orElse(new AxisHeight.AtAxles());
    }
}
