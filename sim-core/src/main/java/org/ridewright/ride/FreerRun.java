package org.ridewright.ride;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ridewright.dynamics.RideException;
import org.ridewright.dynamics.SeatPlace;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.road.Road;
import org.ridewright.solver.Problem;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.vehicle.FurtherMotions;
import org.ridewright.vehicle.FurtherMotions.Motion;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.wheel.Ground;

/**
 * The first seconds of a ride test with surge and sway, for a vehicle without: what does it miss?
 *
 * <p>Surge is free unless the file says what holds it, sway as far as it is not measured at {@link org.ridewright.vehicle.SwayFigures}.
 */
final class FreerRun {
    /** Longest stretch that is compared (s). */
    private static final double LONGEST = 12;

    private static final int AXES = 3;

    private final VehicleModel model;
    private final List<Scenario.Point> points;
    private final double from;
    private final double to;
    private final LevelMeter own;

    /**
     * @param points where motion is read off besides the seats
     * @param window of the metrics
     * @param duration of the ride test (s)
     */
    FreerRun(VehicleModel model, List<Scenario.Point> points, RideResult.Span window, double duration) {
        this.model = model;
        this.points = points;
        from = window.from();
        to = Math.min(Math.min(window.to(), from + LONGEST), duration);
        own = new LevelMeter(readOffs(model), from, to);
    }

    /** The motions that a vehicle could have and has not. */
    static List<Motion> lacking(VehicleModel model, boolean braked) {
        Vehicle vehicle = model.vehicle();
        List<Motion> lacking = new ArrayList<>();
        if (vehicle.layout().pitches() && !braked && !vehicle.further().has(Motion.SURGE)) {
            lacking.add(Motion.SURGE);
        }
        if (vehicle.layout().rolls() && !vehicle.further().has(Motion.SWAY)) {
            lacking.add(Motion.SWAY);
        }
        return lacking;
    }

    /** Listens to the ride test itself. */
    LevelMeter own() {
        return own;
    }

    private List<ReadOff> readOffs(VehicleModel of) {
        ReadOffs all = new ReadOffs(of);
        List<ReadOff> list = new ArrayList<>();
        for (SeatPlace seat : of.seats()) {
            list.addAll(all.seat(seat));
        }
        if (of.seats().isEmpty()) {
            points.forEach(
                    point -> list.addAll(all.point(point.name(), point.place()).subList(0, AXES)));
        }
        return list;
    }

    /**
     * Runs the comparison, after the ride test itself.
     *
     * @param settled as {@link VehicleModel#settled}
     * @return one for each place; none if the vehicle cannot ride so
     */
    List<Missed> run(Road road, Travel travel, boolean braked, int settled) {
        Optional<LevelMeter> freer = ride(road, travel, braked, settled);
        List<Missed> missed = new ArrayList<>();
        List<String> places = model.seats().isEmpty()
                ? points.stream().map(Scenario.Point::name).toList()
                : model.seats().stream().map(SeatPlace::name).toList();
        for (int i = 0; i < places.size() && freer.isPresent(); i++) {
            missed.add(new Missed(places.get(i), levels(own, i), levels(freer.get(), i)));
        }
        return missed;
    }

    private static List<Missed.Level> levels(LevelMeter meter, int place) {
        List<Missed.Level> levels = new ArrayList<>();
        for (int axis = 0; axis < AXES; axis++) {
            levels.add(new Missed.Level(meter.rms(AXES * place + axis), meter.peak(AXES * place + axis)));
        }
        return levels;
    }

    private Optional<LevelMeter> ride(Road road, Travel travel, boolean braked, int settled) {
        Vehicle vehicle = model.vehicle();
        FurtherMotions both = vehicle.layout().rolls()
                ? vehicle.further().with(Motion.SURGE, Motion.SWAY)
                : vehicle.further().with(Motion.SURGE);
        try {
            VehicleModel freer = VehicleModel.assemble(
                            vehicle.with(both),
                            model.loadCase(),
                            new Ground(road.groundRate(), road.groundDamping()),
                            braked)
                    .settled(settled);
            LevelMeter meter = new LevelMeter(readOffs(freer), from, to);
            TiltWatch tilt = new TiltWatch(freer);
            Problem problem = new Problem(
                    freer.equations(),
                    new Heights(freer, road, travel).all(to),
                    freer.rest().q(),
                    new double[freer.equations().size()],
                    freer.rest().friction(),
                    to);
            RegimeSolver.solve(problem, step -> {
                tilt.step(step);
                meter.step(step);
            });
            return Optional.of(meter);
        } catch (RideException cannotRideSo) {
            return Optional.empty();
        }
    }
}
