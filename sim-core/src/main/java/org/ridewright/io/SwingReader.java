package org.ridewright.io;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ridewright.fieldwork.SwingTest;
import org.ridewright.fieldwork.SwingTest.Axis;
import org.ridewright.fieldwork.SwingTest.Hung;
import org.ridewright.fieldwork.SwingTest.Part.Body;
import org.ridewright.fieldwork.SwingTest.Part.OneWheel;
import org.ridewright.fieldwork.SwingTest.Part.WholeAxle;
import org.ridewright.fieldwork.UsualTolerance;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;

/** Reads {@code swing}. */
final class SwingReader {
    static final List<String> KEYS = List.of(
            "of",
            "axle",
            "about",
            "mass",
            "hung",
            "arm",
            "wire",
            "apart",
            "apart below",
            "radius",
            "radius below",
            "swings",
            "in");
    private static final Words<Axis> AXES = Words.of("an axis", List.of(Axis.values()), Axis::word);
    private static final Words<String> PARTS = Words.of("a part", List.of("body", "axle", "wheel"), word -> word);
    private static final Words<String> WAYS =
            Words.of("a way to hang", List.of("pendulum", "two wires", "three wires"), word -> word);

    private SwingReader() {}

    static SwingTest read(Part part) {
        return new SwingTest(
                FactReader.heading(part),
                swung(part),
                part.word("about", AXES),
                UsualTolerance.ofScales(part.measure("mass", QuantityKind.MASS)),
                hung(part),
                swings(part),
                UsualTolerance.ofStopwatch(part.measure("in", QuantityKind.TIME)));
    }

    private static int swings(Part part) {
        if (!part.has("swings")) {
            part.missing("swings", "a whole number, there and back each");
        }
        return part.count("swings", 1, 1);
    }

    private static SwingTest.Part swung(Part part) {
        String of = part.word("of", PARTS);
        if (of.equals("body")) {
            part.node("axle").ifPresent(node -> part.conflict("axle", "stands beside 'of: body'", "remove 'axle'"));
            return new Body();
        }
        String axle = FactReader.axle(part, "axle");
        return of.equals("axle") ? new WholeAxle(axle) : new OneWheel(axle);
    }

    private static Hung hung(Part part) {
        String way = part.word("hung", WAYS);
        List<String> own =
                switch (way) {
                    case "two wires" -> List.of("wire", "apart", "apart below");
                    case "three wires" -> List.of("wire", "radius", "radius below");
                    default -> List.of("arm");
                };
        Stream.of("arm", "wire", "apart", "apart below", "radius", "radius below")
                .filter(key -> part.has(key) && !own.contains(key))
                .forEach(key -> part.conflict(
                        key, "is no length of a part hung on '" + way + "'", "remove '" + key + "', or change 'hung'"));
        return switch (way) {
            case "two wires" ->
                new Hung.OnTwoWires(length(part, "wire"), length(part, "apart"), below(part, "apart below"));
            case "three wires" ->
                new Hung.OnThreeWires(length(part, "wire"), length(part, "radius"), below(part, "radius below"));
            default -> new Hung.OnPivot(length(part, "arm"));
        };
    }

    private static Measure length(Part part, String key) {
        return UsualTolerance.ofTape(part.measure(key, QuantityKind.LENGTH));
    }

    private static Optional<Measure> below(Part part, String key) {
        return part.measureIfAny(key, QuantityKind.LENGTH).map(UsualTolerance::ofTape);
    }
}
