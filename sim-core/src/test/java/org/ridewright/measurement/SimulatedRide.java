package org.ridewright.measurement;

import java.nio.file.Path;
import org.ridewright.io.ScenarioFile;
import org.ridewright.ride.RideResult;
import org.ridewright.ride.RideRunner;
import org.ridewright.signal.Channel;

/** A ride of the demonstration dray over a yard, short enough for its traces to be kept whole, at 2000 samples a second. */
final class SimulatedRide {
    private static final RideResult RESULT = run();

    private SimulatedRide() {}

    static RideResult result() {
        return RESULT;
    }

    /** Longitudinal, lateral or vertical acceleration of the first seat; nothing but zeros where the vehicle does not move that way. */
    static Channel seat(String direction) {
        String name = RESULT.seats().get(0).seat() + " seat ";
        Channel vertical = RESULT.trace(name + "vertical acceleration").orElseThrow();
        return RESULT.trace(name + direction + " acceleration")
                .orElse(vertical.with(direction, "m/s²", new double[vertical.size()]));
    }

    private static RideResult run() {
        Path file = Path.of("..", "scenarios", "logs", "dray-yard.yaml");
        RideResult result = RideRunner.run(ScenarioFile.read(file), ride -> {}).get(0);
        if (result.traces().get(0).end() < result.window().to()) {
            throw new IllegalStateException("the run of " + result.duration() + " s is too long for whole traces");
        }
        return result;
    }
}
