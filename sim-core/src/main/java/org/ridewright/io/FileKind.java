package org.ridewright.io;

import java.nio.file.Path;
import java.util.List;
import org.ridewright.vehicle.check.NearestWord;

/** What a file describes, told by the key at its top. */
public enum FileKind {
    /** Has the key {@code vehicle}. */
    VEHICLE("vehicle"),
    /** Has the key {@code scenario}. */
    SCENARIO("scenario"),
    /** Has the key {@code road} or {@code roads}, and neither of the others. */
    ROAD("road");

    private static final String ROADS = "roads";

    private final String key;

    FileKind(String key) {
        this.key = key;
    }

    /** The key at the top that tells it. */
    public String key() {
        return key;
    }

    /**
     * The kind of a file.
     *
     * @throws InputException if it cannot be read, or is none of them or two
     */
    public static FileKind of(Path file) {
        Reading reading = new Reading(file.toString());
        Node top = TreeFile.read(file, reading);
        if (top instanceof Node.Mapping mapping) {
            boolean vehicle = mapping.entries().containsKey(VEHICLE.key);
            boolean scenario = mapping.entries().containsKey(SCENARIO.key);
            if (vehicle != scenario) {
                return vehicle ? VEHICLE : SCENARIO;
            }
            boolean road =
                    mapping.entries().containsKey(ROAD.key) || mapping.entries().containsKey(ROADS);
            if (road && !vehicle) {
                return ROAD;
            }
        }
        String fix = "";
        if (top instanceof Node.Mapping mapping && !mapping.entries().isEmpty()) {
            String first = mapping.entries().keySet().iterator().next();
            fix = NearestWord.to(first, List.of(VEHICLE.key, SCENARIO.key))
                    .map(near -> "write " + near + " for " + first)
                    .orElse("");
        }
        reading.problem(
                top,
                "",
                "the file describes neither a vehicle nor a scenario, nor a road alone",
                "'vehicle: <name>', 'scenario: <name>' or 'road:' at the top, one of them",
                fix);
        throw new InputException(reading.problems());
    }
}
