package org.ridewright.io;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.ridewright.road.Road;

/** Roads over which something was ridden, in a scenario, a road file or a measured profile. */
final class RideRoads {
    private RideRoads() {}

    /** @throws InputException if the file cannot be read, or has no roads */
    static List<Road> of(Path file) {
        if (RoadFile.isProfile(file)) {
            return RoadFile.read(file).roads();
        }
        return switch (FileKind.of(file)) {
            case ROAD -> RoadFile.read(file).roads();
            case SCENARIO, VEHICLE, MEASUREMENTS, STUDY ->
                ScenarioFile.read(file).roads();
        };
    }

    /** The road of that name, or the only one where the name is empty. */
    static Optional<Road> named(List<Road> roads, String name) {
        if (name.isEmpty()) {
            return roads.size() == 1 ? Optional.of(roads.get(0)) : Optional.empty();
        }
        return roads.stream().filter(road -> road.name().equals(name)).findFirst();
    }
}
