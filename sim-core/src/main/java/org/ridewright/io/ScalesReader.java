package org.ridewright.io;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ridewright.fieldwork.LiftedAxle;
import org.ridewright.fieldwork.LiftedAxle.Springs;
import org.ridewright.fieldwork.Side;
import org.ridewright.fieldwork.UsualTolerance;
import org.ridewright.fieldwork.Weights;
import org.ridewright.fieldwork.Weights.Scale;
import org.ridewright.fieldwork.Weights.Under;
import org.ridewright.quantity.QuantityKind;

/** Reads what scales showed: {@code weights}, {@code lifted axle}. */
record ScalesReader(LoadingReader loadings) {
    static final List<String> WEIGHTS =
            Stream.concat(LoadingReader.KEYS.stream(), Stream.of("scales")).toList();
    static final List<String> LIFTED = Stream.concat(
                    LoadingReader.KEYS.stream(),
                    Stream.of("lifted", "by", "other axle level", "other axle then", "total", "springs"))
            .toList();
    private static final Words<Springs> SPRINGS =
            Words.of("a state of the springs", List.of(Springs.values()), Springs::word);

    Weights weights(Part part) {
        if (!part.has("scales")) {
            part.missing("scales", "a list such as [{axle: front, shows: 214 kg}]");
        }
        List<Scale> scales = part.parts("scales", "a scale", "axle", "side", "hitch", "shows").stream()
                .map(scale ->
                        new Scale(under(scale), UsualTolerance.ofScales(scale.measure("shows", QuantityKind.MASS))))
                .toList();
        return new Weights(FactReader.heading(part), loadings.read(part), scales);
    }

    private static Under under(Part scale) {
        if (scale.oneOf("axle", "hitch").orElse("axle").equals("hitch")) {
            scale.node("side")
                    .ifPresent(side ->
                            scale.conflict("side", "stands beside 'hitch', which has no sides", "remove 'side'"));
            return new Under.AtHitch(scale.text("hitch", "the name of a hitch"));
        }
        String axle = scale.has("axle") ? FactReader.axle(scale, "axle") : "";
        Optional<Side> side = scale.wordIfAny("side", FactReader.SIDES);
        return side.isPresent() ? new Under.OneWheel(axle, side.get()) : new Under.WholeAxle(axle);
    }

    LiftedAxle liftedAxle(Part part) {
        return new LiftedAxle(
                FactReader.heading(part),
                loadings.read(part),
                FactReader.axle(part, "lifted"),
                UsualTolerance.ofTape(part.measure("by", QuantityKind.LENGTH)),
                part.measureIfAny("other axle level", QuantityKind.MASS).map(UsualTolerance::ofScales),
                UsualTolerance.ofScales(part.measure("other axle then", QuantityKind.MASS)),
                part.measureIfAny("total", QuantityKind.MASS).map(UsualTolerance::ofScales),
                part.word("springs", SPRINGS));
    }
}
