package org.ridewright.report;

import java.nio.file.Path;
import java.util.List;
import org.ridewright.io.ScenarioFile;
import org.ridewright.ride.RideResult;
import org.ridewright.ride.RideRunner;
import org.ridewright.ride.Scenario;

/** A scenario that comes with the project, run once. */
record Rides(Scenario scenario, List<RideResult> results) {
    static final Rides GATE = of("gate.yaml");

    static Rides of(String file) {
        Scenario scenario = ScenarioFile.read(Path.of("..", "scenarios", file));
        return new Rides(scenario, RideRunner.run(scenario, r -> {}));
    }

    /** The same with other texts. */
    Scenario named(String name, String about) {
        return new Scenario(
                name,
                about,
                scenario.entrants(),
                scenario.roads(),
                scenario.duration(),
                scenario.distance(),
                scenario.samplingRate(),
                scenario.start(),
                scenario.braked(),
                scenario.points(),
                scenario.ridingADay());
    }

    /** The same result with other remarks. */
    static RideResult withRemarks(RideResult r, List<String> remarks) {
        return new RideResult(
                r.vehicleFile(),
                r.model(),
                r.road(),
                r.plan(),
                r.duration(),
                r.traces(),
                r.wheelPaths(),
                r.axles(),
                r.window(),
                r.seats(),
                r.points(),
                r.springs(),
                r.wheels(),
                r.draught(),
                r.speedGained(),
                r.missed(),
                r.energy(),
                r.statistics(),
                r.spectra(),
                remarks);
    }
}
