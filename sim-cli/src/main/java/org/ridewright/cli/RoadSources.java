package org.ridewright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ridewright.io.InputException;
import org.ridewright.io.InputProblem;
import org.ridewright.io.ScenarioFile;
import org.ridewright.quantity.Measure;
import org.ridewright.ride.Scenario;
import org.ridewright.road.Road;
import org.ridewright.roughness.RoadSurvey;
import org.ridewright.roughness.SurveyedRoad;
import org.ridewright.vehicle.Axle;

/**
 * Where the roads of a survey come from.
 *
 * @param file as named
 * @param name of the scenario or road
 * @param about in the author's words; may be empty
 * @param roads at least one
 */
record RoadSources(Path file, String name, String about, List<Road> roads, RoadSurvey survey0) {

    static RoadSources read(Path file, Optional<Double> length, Optional<Double> spacing, Optional<Double> track) {
        Scenario scenario = ScenarioFile.read(file);
        double halfTrack = track.or(() -> track(scenario)).map(t -> t / 2).orElse(RoadSurvey.USUAL_HALF_TRACK);
        RoadSurvey survey = new RoadSurvey(halfTrack, spacing, length, RoadSurvey.USUAL_WHEELS);
        return new RoadSources(file, scenario.name(), scenario.about(), scenario.roads(), survey);
    }

    /** Distance of the wheels of the first vehicle that has a left and a right one (m). */
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
     * @throws InputException if all are level
     */
    List<SurveyedRoad> survey() {
        List<SurveyedRoad> found = new ArrayList<>();
        for (Road road : roads) {
            survey0.of(road, "road of the file " + file.getFileName()).ifPresent(found::add);
        }
        if (found.isEmpty()) {
            throw new InputException(List.of(new InputProblem(
                    file.toString(),
                    0,
                    0,
                    "",
                    "",
                    "describes level ground alone: there is no roughness to tell",
                    "",
                    "")));
        }
        return found;
    }
}
