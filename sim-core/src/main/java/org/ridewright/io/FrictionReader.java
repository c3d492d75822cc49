package org.ridewright.io;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Provenance;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Friction;
import org.ridewright.vehicle.Friction.LockedRate;
import org.ridewright.vehicle.Friction.SliderShare;

/**
 * Reads {@code friction}.
 *
 * @param forceKind force, or torque in a joint that twists
 * @param rateKind rate, or rotational rate
 * @param keys that may be given
 */
record FrictionReader(QuantityKind forceKind, QuantityKind rateKind, List<String> keys) {
    private static final Pattern MULTIPLE = Pattern.compile("(.+?)\\s*(?:times|×)(?:\\s+the\\s+rate)?");
    private static final String HALF_LOOP = "half loop height";

    static FrictionReader ofSpring() {
        return new FrictionReader(
                QuantityKind.FORCE,
                QuantityKind.RATE,
                List.of(
                        "share of load",
                        "constant",
                        HALF_LOOP,
                        "at load",
                        "locked rate",
                        "sliders",
                        "envelope length"));
    }

    /** In a joint that twists and carries no load. */
    static FrictionReader ofJoint() {
        return new FrictionReader(
                QuantityKind.TORQUE, QuantityKind.ROLL_RATE, List.of("constant", "locked rate", "sliders"));
    }

    /** The friction of a part; none where the part has no such key. */
    Friction read(Part owner) {
        Optional<Part> given = owner.part("friction", "a friction", keys.toArray(String[]::new));
        if (given.isEmpty()) {
            return none();
        }
        Part part = given.get();
        part.atMostOneOf("sliders", "envelope length");
        Measure constant = part.measureOrZero("constant", forceKind);
        return new Friction(
                shareOfLoad(part, constant),
                constant,
                lockedRate(part),
                sliders(part),
                part.measureIfAny("envelope length", QuantityKind.LENGTH));
    }

    Friction none() {
        return new Friction(
                zero(QuantityKind.RATIO), zero(forceKind), new LockedRate.NotGiven(), List.of(), Optional.empty());
    }

    private Measure shareOfLoad(Part part, Measure constant) {
        part.atMostOneOf("share of load", HALF_LOOP);
        if (!part.has(HALF_LOOP)) {
            if (part.has("at load")) {
                part.missing(HALF_LOOP, "half the height of the load–deflection loop at that load, a force");
            }
            return part.measureOrZero("share of load", QuantityKind.RATIO);
        }
        part.reading().alias(part.path("share of load"), part.path(HALF_LOOP));
        Measure half = part.measure(HALF_LOOP, forceKind);
        Measure load = part.measure("at load", forceKind);
        if (load.value() <= 0) {
            return zero(QuantityKind.RATIO);
        }
        if (half.value() < constant.value() && !part.reading().isSpoilt(part.path("constant"))) {
            part.node(HALF_LOOP)
                    .ifPresent(node -> part.reading()
                            .problem(
                                    node,
                                    half.written(),
                                    "is less than the constant part of the friction, " + constant.written(),
                                    "half the height of the loop, the constant part included",
                                    "remove 'constant', or write a smaller one"));
        }
        double share = (half.value() - constant.value()) / load.value();
        double tolerance =
                (half.tolerance() + constant.tolerance() + Math.abs(share) * load.tolerance()) / load.value();
        return new Measure(
                QuantityKind.RATIO,
                share,
                tolerance,
                Provenance.COMPUTED,
                "(" + half.written() + " − " + constant.written() + ") / " + load.written());
    }

    private LockedRate lockedRate(Part part) {
        Optional<Node> node = part.node("locked rate");
        if (node.isEmpty()) {
            return new LockedRate.NotGiven();
        }
        if (node.get() instanceof Node.Scalar scalar) {
            if (Hints.same(scalar.text(), "rigid")) {
                return new LockedRate.Rigid();
            }
            Matcher multiple = MULTIPLE.matcher(scalar.text());
            if (multiple.matches()) {
                Node.Scalar number = new Node.Scalar(scalar.spot(), scalar.end(), scalar.path(), multiple.group(1));
                return new Values(part.reading())
                        .measure(number, QuantityKind.RATIO)
                        .<LockedRate>map(LockedRate.MultipleOfRate::new)
                        .orElse(new LockedRate.NotGiven());
            }
            if (scalar.text().chars().noneMatch(Character::isDigit)) {
                part.reading()
                        .problem(
                                scalar,
                                scalar.text(),
                                "is not a locked rate",
                                "a " + rateKind.label() + ", a multiple such as 2 times, or rigid",
                                "leave it out if it was not measured");
                return new LockedRate.NotGiven();
            }
        }
        return part.measureIfAny("locked rate", rateKind)
                .<LockedRate>map(LockedRate.Given::new)
                .orElse(new LockedRate.NotGiven());
    }

    private static List<SliderShare> sliders(Part part) {
        return part.parts("sliders", "a slider", "of limit", "of locked rate").stream()
                .map(slider -> new SliderShare(slider.number("of limit"), slider.number("of locked rate")))
                .toList();
    }

    private static Measure zero(QuantityKind kind) {
        return new Measure(kind, 0, 0, Provenance.NOT_STATED, "none given");
    }
}
