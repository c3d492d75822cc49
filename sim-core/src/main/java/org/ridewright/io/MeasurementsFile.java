package org.ridewright.io;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.ridewright.fieldwork.LogReference;
import org.ridewright.fieldwork.Measurements;
import org.ridewright.fieldwork.MeasurementsCheck;
import org.ridewright.fieldwork.RoadReference;
import org.ridewright.measurement.Recording;
import org.ridewright.road.Road;

/** Measurements files; their language is laid down in {@code docs/measurements-file.md}. */
public final class MeasurementsFile {
    private MeasurementsFile() {}

    /**
     * What was measured, with the vehicle from its own file.
     *
     * @param file YAML, or JSON if its name ends in {@code .json}
     * @throws InputException if it or a file that it names cannot be read, or states what cannot be; with everything found wrong in all
     *     of them, the measurements first
     */
    public static Measurements read(Path file) {
        Reading reading = new Reading(file.toString());
        Node top = TreeFile.read(file, reading);
        MeasurementsReader reader = new MeasurementsReader(file.resolveSibling(""));
        Measurements measurements = reader.read(top, reading);
        reading.faults(MeasurementsCheck.faults(measurements));
        List<InputProblem> problems = new ArrayList<>(reading.problems());
        problems.addAll(reader.problems());
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
        return measurements;
    }

    /**
     * The log that a fact names.
     *
     * @throws InputException if it cannot be read; names what is wrong, each at its place
     */
    public static Recording recording(LogReference log) {
        return LogFile.read(log.file(), choice(log));
    }

    /**
     * The road that a fact names.
     *
     * @throws InputException if its file cannot be read
     * @throws IllegalArgumentException if there is no such road, which {@link #read} rules out
     */
    public static Road road(RoadReference reference) {
        List<Road> roads = RideRoads.of(reference.file());
        return RideRoads.named(roads, reference.road())
                .orElseThrow(() -> new IllegalArgumentException("no road '" + reference.road() + "'"));
    }

    static LogChoice choice(LogReference log) {
        LogReference.Columns columns = log.columns();
        return new LogChoice(
                columns.time(), columns.axes(), columns.unit(), columns.timeUnit(), columns.rate(), columns.word());
    }
}
