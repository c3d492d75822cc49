package org.ridewright.io;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.ridewright.ride.Scenario;
import org.ridewright.ride.ScenarioCheck;

/** Scenario files; their language is laid down in {@code docs/scenario-file.md}. */
public final class ScenarioFile {
    private ScenarioFile() {}

    /**
     * The scenario that a file describes, with its vehicles and measured roads from their own files.
     *
     * @param file YAML, or JSON if its name ends in {@code .json}
     * @throws InputException if it or a file that it names cannot be read, or describes what cannot be; with everything found wrong in all of
     *     them, the scenario first
     */
    public static Scenario read(Path file) {
        Reading reading = new Reading(file.toString());
        return described(
                tree(file, reading), reading, file, (index, vehicle) -> VehicleFile.read(vehicle), opened -> {});
    }

    /** @throws InputException if the file cannot be read, or is a vehicle file */
    static Node tree(Path file, Reading reading) {
        Node top = TreeFile.read(file, reading, FileKind.SCENARIO);
        if (FileKind.told(top).equals(Optional.of(FileKind.VEHICLE))) {
            reading.problem(
                    top,
                    "",
                    "this is a vehicle file",
                    "a scenario, which says over what the vehicle rides and how fast",
                    "name it in a scenario: vehicles: [{file: " + file.getFileName() + ", speeds: [8 km/h]}]");
            throw new InputException(reading.problems());
        }
        if (FileKind.told(top).equals(Optional.of(FileKind.MEASUREMENTS))) {
            reading.problem(
                    top,
                    "",
                    "this is a measurements file",
                    "a scenario, which says over what a vehicle rides and how fast",
                    "name a scenario file; 'check' reads this one");
            throw new InputException(reading.problems());
        }
        return top;
    }

    /**
     * @param opened is told every file of a measured road that is read
     * @throws InputException if the tree and the files that it names describe no scenario
     */
    static Scenario described(
            Node top, Reading reading, Path file, EntrantReader.Source vehicles, Consumer<Path> opened) {
        EntrantReader entrants = new EntrantReader(file.resolveSibling(""), vehicles);
        ProfileReader profiles = new ProfileReader(file.resolveSibling(""), opened);
        Scenario scenario = new ScenarioReader(entrants, profiles).read(top, reading);
        reading.faults(ScenarioCheck.faults(scenario));
        List<InputProblem> problems = new ArrayList<>(reading.problems());
        problems.addAll(entrants.problems());
        problems.addAll(profiles.problems());
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
        return scenario;
    }
}
