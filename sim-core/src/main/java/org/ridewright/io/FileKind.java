package org.ridewright.io;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.ridewright.vehicle.check.NearestWord;

/** What a file describes, told by the key at its top. */
public enum FileKind {
    /** Has the key {@code vehicle}, and not {@code measurements}. */
    VEHICLE("vehicle"),
    /** Has the key {@code scenario}. */
    SCENARIO("scenario"),
    /** Has the key {@code study}. */
    STUDY("study"),
    /** Has the key {@code measurements}, or {@code facts} and nothing that a vehicle has. */
    MEASUREMENTS("measurements"),
    /** Has the key {@code road} or {@code roads}, and neither of the others nor {@code vehicles}. */
    ROAD("road");

    private static final String ROADS = "roads";
    private static final String VEHICLES = "vehicles";
    private static final String FACTS = "facts";

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
        return told(top).orElseThrow(() -> {
            Set<String> keys = keys(top);
            boolean both = keys.contains(VEHICLE.key);
            reading.problem(
                    top,
                    "",
                    both
                            ? "the file describes both a vehicle and a scenario"
                            : keys.isEmpty()
                                    ? "the file is empty, or has no keys"
                                    : "the file describes neither a vehicle nor a scenario, nor a study or a road alone",
                    "'vehicle: <name>', 'scenario: <name>', 'study: <name>' or 'road:' at the top, one of them",
                    both ? "put the vehicle into a file of its own" : likeliest(keys));
            return new InputException(reading.problems());
        });
    }

    /** Whether a file is of a kind, or may be once it can be read. */
    static boolean mayBe(Path file, FileKind kind) {
        try {
            return told(TreeFile.read(file, new Reading(file.toString())))
                    .filter(told -> told == kind)
                    .isPresent();
        } catch (InputException unreadable) {
            return Files.isRegularFile(file)
                    && file.toString().toLowerCase(Locale.ROOT).matches(".*\\.(ya?ml|json)");
        }
    }

    /** What the keys at the top tell; empty if they tell nothing, or two things. */
    static Optional<FileKind> told(Node top) {
        if (keys(top).contains(STUDY.key)) {
            return Optional.of(STUDY);
        }
        if (keys(top).contains(MEASUREMENTS.key) || keys(top).contains(FACTS)) {
            return Optional.of(MEASUREMENTS);
        }
        boolean vehicle = keys(top).contains(VEHICLE.key);
        boolean scenario = keys(top).contains(SCENARIO.key);
        if (vehicle || scenario) {
            return vehicle && scenario ? Optional.empty() : Optional.of(vehicle ? VEHICLE : SCENARIO);
        }
        boolean road = keys(top).contains(ROAD.key) || keys(top).contains(ROADS);
        return road && !keys(top).contains(VEHICLES) ? Optional.of(ROAD) : Optional.empty();
    }

    private static Set<String> keys(Node top) {
        return top instanceof Node.Mapping mapping ? mapping.entries().keySet() : Set.of();
    }

    /** By a misspelt first key, or by keys that only one kind of file has. */
    private static String likeliest(Set<String> keys) {
        String first = keys.stream().findFirst().orElse("");
        Optional<String> near = first.isEmpty()
                ? Optional.empty()
                : NearestWord.to(first, List.of(VEHICLE.key, SCENARIO.key, STUDY.key, MEASUREMENTS.key));
        if (near.isPresent() && !keys.contains(VEHICLES)) {
            return "write " + near.get() + " for " + first;
        } else if (keys.contains("axles") || keys.contains("body")) {
            return "this looks like a vehicle: write 'vehicle: <name>' at its top";
        } else if (keys.contains(VEHICLES)) {
            return "this looks like a scenario: write 'scenario: <name>' at its top";
        }
        return "begin a vehicle file with 'vehicle: <name>', a scenario file with 'scenario: <name>', a study with 'study: <name>'";
    }
}
