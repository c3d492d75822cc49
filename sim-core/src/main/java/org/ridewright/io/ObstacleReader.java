package org.ridewright.io;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.road.Obstacle;
import org.ridewright.road.Obstacle.Lie;
import org.ridewright.road.Obstacle.Shape;
import org.ridewright.road.Obstacle.Side;

/** Reads {@code obstacles}: a list of groups with one key each, the kind of obstacle. */
final class ObstacleReader {
    private static final List<String> LIE_KEYS = List.of("at", "side", "skew", "count", "every");
    private static final Map<String, List<String>> OWN_KEYS = Map.of(
            "plank", List.of("height", "length", "shape"),
            "step", List.of("height", "ramp"),
            "pothole", List.of("depth", "length"),
            "hump", List.of("height", "length"),
            "rail", List.of("height", "width", "edge radius", "groove width", "groove depth"));
    private static final String[] KINDS = {"plank", "step", "pothole", "hump", "rail"};
    private static final Words<Side> SIDES = Words.of("a side", Arrays.asList(Side.values()), Side::word);
    private static final Words<Shape> SHAPES =
            Words.of("a shape", List.of(new Shape.Rectangular(), new Shape.HalfRound()), ObstacleReader::word);

    private ObstacleReader() {}

    static List<Obstacle> read(Part road) {
        List<Obstacle> obstacles = new ArrayList<>();
        for (Part item : road.parts("obstacles", "an obstacle", KINDS)) {
            Optional<String> kind = OnlyKey.of(item, KINDS);
            if (kind.isEmpty()) {
                item.reading().spoil(item.path());
                item.reading().spoil(item.path(KINDS[0]));
            }
            obstacles.add(obstacle(item, kind.orElse(KINDS[0])));
        }
        return obstacles;
    }

    private static Obstacle obstacle(Part item, String kind) {
        String[] keys =
                Stream.concat(LIE_KEYS.stream(), OWN_KEYS.get(kind).stream()).toArray(String[]::new);
        Part part = item.partOrMissing(kind, "a " + kind, keys);
        Lie lie = lie(part);
        return switch (kind) {
            case "step" ->
                new Obstacle.Step(lie, length(part, "height"), part.measureIfAny("ramp", QuantityKind.LENGTH));
            case "pothole" -> new Obstacle.Pothole(lie, length(part, "depth"), length(part, "length"));
            case "hump" -> new Obstacle.Hump(lie, length(part, "height"), length(part, "length"));
            case "rail" ->
                new Obstacle.Rail(
                        lie,
                        length(part, "height"),
                        length(part, "width"),
                        part.measureOrZero("edge radius", QuantityKind.LENGTH),
                        part.measureOrZero("groove width", QuantityKind.LENGTH),
                        part.measureOrZero("groove depth", QuantityKind.LENGTH));
            default -> new Obstacle.Plank(lie, length(part, "height"), length(part, "length"), shape(part));
        };
    }

    private static Lie lie(Part part) {
        return new Lie(
                length(part, "at"),
                part.wordIfAny("side", SIDES).orElse(Side.BOTH),
                part.measureOrZero("skew", QuantityKind.ANGLE),
                part.count("count", 1, 1),
                part.measureIfAny("every", QuantityKind.LENGTH));
    }

    private static Shape shape(Part plank) {
        Optional<Node> node = plank.node("shape");
        if (node.isPresent() && node.get() instanceof Node.Mapping) {
            Part shape = plank.partOrMissing("shape", "a shape", "bevelled");
            return new Shape.Bevelled(length(shape, "bevelled"));
        }
        return plank.wordIfAny("shape", SHAPES).orElse(new Shape.Rectangular());
    }

    private static String word(Shape shape) {
        return shape instanceof Shape.HalfRound ? "half-round" : "rectangular";
    }

    private static Measure length(Part part, String key) {
        return part.measure(key, QuantityKind.LENGTH);
    }
}
