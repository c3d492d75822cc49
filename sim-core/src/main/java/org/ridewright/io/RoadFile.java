package org.ridewright.io;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.ride.ScenarioCheck;
import org.ridewright.road.MeasuredProfile;
import org.ridewright.road.Road;
import org.ridewright.road.Surface;

/**
 * Files that describe roads and nothing else: YAML or JSON with the roads of a scenario, or the heights of a measured
 * profile.
 *
 * @param about in the author's words; may be empty
 * @param roads at least one
 */
public record RoadFile(String about, List<Road> roads) {
    private static final String[] KEYS = {"about", "road", "roads"};
    private static final List<String> PROFILE_ENDINGS = List.of(".csv", ".tsv", ".txt");

    /** Run-up of a road that is nothing but a profile (m): its ends are as they were measured. */
    private static final double NO_RUN_UP = 1e-6;

    public RoadFile {
        roads = List.copyOf(roads);
    }

    /** Whether a file is taken for a measured profile, by its name. */
    public static boolean isProfile(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        return PROFILE_ENDINGS.stream().anyMatch(name::endsWith);
    }

    /**
     * The roads of a file.
     *
     * @throws InputException if it or a file that it names cannot be read, or describes what cannot be; with everything found wrong
     */
    public static RoadFile read(Path file) {
        if (isProfile(file)) {
            return new RoadFile("", List.of(profile(file)));
        }
        Reading reading = new Reading(file.toString());
        ProfileReader profiles = new ProfileReader(file.resolveSibling(""), opened -> {});
        Part top = Part.of(reading, TreeFile.read(file, reading), "a road file", KEYS);
        String about = top.textIfAny("about", "a text").orElse("");
        List<Road> roads = new RoadReader(new SurfaceReader(profiles)).read(top);
        reading.faults(ScenarioCheck.roadFaults(roads));
        List<InputProblem> problems = new ArrayList<>(reading.problems());
        problems.addAll(profiles.problems());
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
        return new RoadFile(about, roads);
    }

    /** A road of the profile alone, with columns by their usual names; a straight line is taken off its heights. */
    private static Road profile(Path file) {
        String name = file.getFileName().toString();
        MeasuredProfile profile = ProfileFile.read(file, name, ProfileFile.Choice.NONE);
        Surface measured = new Surface.Measured(
                new Surface.Stretch(Optional.of(Measure.of(profile.station(0), QuantityKind.LENGTH)), Optional.empty()),
                profile,
                new Surface.Measured.Detrended(),
                false,
                Optional.empty());
        return new Road(
                name.substring(0, name.lastIndexOf('.')),
                List.of(),
                List.of(measured),
                Measure.of(NO_RUN_UP, QuantityKind.LENGTH),
                Optional.empty());
    }
}
