package org.ridewright.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ridewright.comfort.Axis;
import org.ridewright.comfort.AxisVibration;
import org.ridewright.comfort.MotionBands;
import org.ridewright.comfort.Position;
import org.ridewright.fieldwork.Measurements;
import org.ridewright.fieldwork.RidersWords;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.ride.RideResult;
import org.ridewright.ride.RideRunner;
import org.ridewright.ride.Scenario;
import org.ridewright.ride.SpeedPlan;
import org.ridewright.road.Road;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.Vehicle;

/**
 * A rider's words beside the run of the calibrated vehicle that imitates the ride. Words are not fitted.
 *
 * @param said in the rider's words
 * @param ride seat, road, load and speed
 * @param seat vertical motion on the seat in bands; absent where no run imitates it
 * @param feet the same at the feet
 */
public record RiderSaid(String said, String ride, Optional<MotionBands> seat, Optional<MotionBands> feet) {
    private static final double SAMPLING_RATE = 500;

    static List<RiderSaid> of(Measurements measurements, Vehicle vehicle, Sources sources) {
        List<RiderSaid> list = new ArrayList<>();
        for (RidersWords words : measurements.all(RidersWords.class)) {
            Optional<RideResult.SeatResult> seat = words.run()
                    .flatMap(run -> ride(words, run, vehicle, sources.roads().apply(run.road())));
            list.add(new RiderSaid(
                    words.said(),
                    words.label()
                            + words.run()
                                    .map(run -> String.format(
                                            java.util.Locale.ROOT,
                                            ", %.3g km/h",
                                            3.6 * run.speed().value()))
                                    .orElse(""),
                    bands(seat, Position.SEAT),
                    bands(seat, Position.FEET)));
        }
        return List.copyOf(list);
    }

    private static Optional<RideResult.SeatResult> ride(
            RidersWords words, RidersWords.Run run, Vehicle vehicle, Road road) {
        LoadCase load = words.load().on(vehicle);
        List<LoadCase> cases = new ArrayList<>(vehicle.loadCases());
        if (vehicle.loadCase(load.name()).isEmpty()) {
            cases.add(load);
        }
        Vehicle loaded = new Vehicle(
                vehicle.name(),
                vehicle.about(),
                vehicle.layout(),
                vehicle.topSpeed(),
                vehicle.body(),
                vehicle.axles(),
                vehicle.connections(),
                vehicle.hitches(),
                vehicle.seats(),
                cases,
                vehicle.further());
        Scenario scenario = new Scenario(
                words.label(),
                "",
                List.of(new Scenario.Entrant(loaded, "", List.of(load.name()), List.of(SpeedPlan.steady(run.speed())))),
                List.of(road),
                Optional.empty(),
                Optional.empty(),
                Measure.of(SAMPLING_RATE, QuantityKind.FREQUENCY),
                Scenario.Start.UNSTRESSED,
                false,
                List.of(),
                Optional.empty());
        return RideRunner.run(scenario, result -> {}).get(0).seats().stream()
                .filter(s -> s.seat().equals(words.seat()))
                .findFirst();
    }

    private static Optional<MotionBands> bands(Optional<RideResult.SeatResult> seat, Position position) {
        return seat.flatMap(RideResult.SeatResult::felt)
                .flatMap(person -> person.axis(position, Axis.Z))
                .map(AxisVibration::bands);
    }
}
