package org.ridewright.io;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.road.Road;

/** Reads {@code roads}, or the only {@code road}. */
record RoadReader(SurfaceReader surfaces) {
    private static final String[] KEYS = {"name", "ground rate", "ground damping", "run-up", "obstacles", "surfaces"};

    List<Road> read(Part scenario) {
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

    private Road road(Part road, boolean only) {
        return new Road(
                road.name(only, "road"),
                ObstacleReader.read(road),
                surfaces.read(road),
                road.measureOr("run-up", Road.RUN_UP),
                road.measureIfAny("ground rate", QuantityKind.RATE),
                road.measureIfAny("ground damping", QuantityKind.DAMPING));
    }
}
