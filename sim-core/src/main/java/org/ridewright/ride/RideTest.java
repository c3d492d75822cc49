package org.ridewright.ride;

import org.ridewright.dynamics.VehicleModel;
import org.ridewright.road.Road;

/** One vehicle, load case, road and speed. */
record RideTest(Scenario scenario, String file, VehicleModel model, Road road, double speed) {
    RideResult run() {
        throw new IllegalStateException();
    }
}
