package org.ridewright.fieldwork;

import java.util.List;
import org.ridewright.quantity.Measure;
import org.ridewright.vehicle.check.Faults;

/** Judges rides and what riders said of them. */
record RideFactCheck(Names names, Faults faults) {
    private static final double FASTEST = 70;
    /** A horse that walks slowly, and one that gallops (common practice). */
    private static final double SLOWEST_STEPS = 0.5;

    private static final double FASTEST_STEPS = 6;

    void ride(String path, MeasuredRide ride) {
        speed(path, ride.speed());
        new LogCheck(names, faults).run(path, ride.logs());
        if (ride.horse() instanceof MeasuredRide.Horse.Steps steps) {
            faults.within(
                    path + ".horse.step frequency",
                    steps.stepFrequency(),
                    SLOWEST_STEPS,
                    FASTEST_STEPS,
                    "count the steps of one foot pair in half a minute");
        }
    }

    void words(String path, RidersWords words) {
        names.seat(path + ".seat", words.seat());
        List<String> occupied = names.occupied(words.load());
        boolean known = names.vehicle().flatMap(v -> v.seat(words.seat())).isPresent();
        boolean loaded = names.vehicle()
                .flatMap(v -> v.loadCase(words.load().loadCase()))
                .isPresent();
        if (known && loaded && !occupied.contains(words.seat())) {
            faults.add(
                    path + ".seat",
                    words.seat(),
                    "is empty with '" + words.load().label() + "'",
                    occupied.isEmpty() ? "a load case with somebody aboard" : String.join(" or ", occupied),
                    "name the seat of the person who spoke, or another load case",
                    path + ".with");
        }
        words.run().ifPresent(run -> speed(path, run.speed()));
    }

    private void speed(String path, Measure speed) {
        faults.positive(path + ".speed", speed);
        if (speed.value() > FASTEST) {
            faults.within(path + ".speed", speed, 0, FASTEST, "check the unit");
        }
    }
}
