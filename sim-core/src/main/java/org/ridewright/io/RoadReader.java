package org.ridewright.io;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.road.Road;

/** Reads {@code roads}, or the only {@code road}. */
final class RoadReader {
    private static final String[] KEYS = {"name", "ground rate", "ground damping", "obstacles"};

    private RoadReader() {}

    static List<Road> read(Part scenario) {
        Optional<String> key = scenario.oneOf("roads", "road");
        if (key.isEmpty()) {
            return List.of();
        }
        if (key.get().equals("road")) {
            scenario.reading().alias(Node.itemPath(scenario.path("roads"), 0), scenario.path("road"));
            return List.of(road(scenario.partOrMissing("road", "a road", KEYS), true));
        }
        List<Part> roads = scenario.parts("roads", "a road", KEYS);
        return roads.stream().map(part -> road(part, roads.size() == 1)).toList();
    }

    private static Road road(Part road, boolean only) {
        return new Road(
                road.name(only, "road"),
                ObstacleReader.read(road),
                List.of(),
                Road.RUN_UP,
                road.measureIfAny("ground rate", QuantityKind.RATE),
                road.measureIfAny("ground damping", QuantityKind.DAMPING));
    }
}
