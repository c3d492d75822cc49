package org.ridewright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ridewright.io.FileKind;
import org.ridewright.io.InputException;
import org.ridewright.io.InputProblem;
import org.ridewright.io.RoadFile;
import org.ridewright.io.ScenarioFile;
import org.ridewright.quantity.Measure;
import org.ridewright.ride.Scenario;
import org.ridewright.road.Road;
import org.ridewright.roughness.RoadSurvey;
import org.ridewright.roughness.SurveyedRoad;
import org.ridewright.vehicle.Axle;

/**
 * Roads to be surveyed, and how.
 *
 * @param file as named
 * @param name of the scenario or road
 * @param about in the author's words; may be empty
 * @param roads at least one
 * @param how they are to be surveyed
 */
record RoadSources(Path file, String name, String about, List<Road> roads, RoadSurvey how) {

    /** @throws InputException if the file cannot be read, or is none of a scenario, a road or a profile */
    static RoadSources read(Path file, Optional<Double> length, Optional<Double> spacing, Optional<Double> track) {
        if (RoadFile.isProfile(file) || FileKind.of(file) == FileKind.ROAD) {
            RoadFile found = RoadFile.read(file);
            String name = found.roads().size() == 1 ? found.roads().get(0).name() : ScenarioPath.stem(file);
            return new RoadSources(file, name, found.about(), found.roads(), survey(track, spacing, length));
        }
        if (FileKind.of(file) == FileKind.VEHICLE) {
            throw fault(file, "describes a vehicle, not a road", "a scenario, a road or a measured profile");
        }
        Scenario scenario = ScenarioFile.read(file);
        Optional<Double> width = track.or(() -> track(scenario));
        return new RoadSources(
                file, scenario.name(), scenario.about(), scenario.roads(), survey(width, spacing, length));
    }

    private static RoadSurvey survey(Optional<Double> track, Optional<Double> spacing, Optional<Double> length) {
        double halfTrack = track.map(t -> t / 2).orElse(RoadSurvey.USUAL_HALF_TRACK);
        return new RoadSurvey(halfTrack, spacing, length, RoadSurvey.USUAL_WHEELS);
    }

    /** Distance of the wheels of the first axle that has a left and a right one (m). */
    private static Optional<Double> track(Scenario scenario) {
        return scenario.entrants().stream()
                .flatMap(e -> e.vehicle().axles().stream())
                .map(Axle::track)
                .flatMap(Optional::stream)
                .map(Measure::value)
                .findFirst();
    }

    /**
     * Surveys each road that is not level.
     *
     * @throws InputException if all are level, or one is too long for its spacing
     */
    List<SurveyedRoad> survey() {
        List<SurveyedRoad> found = new ArrayList<>();
        for (Road road : roads) {
            try {
                how.of(road, "from " + file.getFileName()).ifPresent(found::add);
            } catch (IllegalArgumentException refused) {
                throw fault(file, "'" + road.name() + "' cannot be surveyed: " + refused.getMessage(), "");
            }
        }
        if (found.isEmpty()) {
            throw fault(file, "describes level ground alone: there is no roughness to tell", "");
        }
        return found;
    }

    private static InputException fault(Path file, String fault, String expected) {
        return new InputException(List.of(new InputProblem(file.toString(), 0, 0, "", "", fault, expected, "")));
    }
}
