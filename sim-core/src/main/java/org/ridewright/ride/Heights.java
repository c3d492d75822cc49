package org.ridewright.ride;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ridewright.dynamics.RideException;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.dynamics.WheelPlace;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.road.Road;
import org.ridewright.road.RoadProfile;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.Hitch;
import org.ridewright.vehicle.PathKind;
import org.ridewright.wheel.WheelPath;

/** What wheels and hitches follow: paths against station, and heights against time at a steady speed. */
final class Heights {
    private final List<PiecewisePolynomial> paths = new ArrayList<>();
    private final List<PiecewisePolynomial> inTime = new ArrayList<>();
    private final List<RideResult.AxleTimes> axleTimes = new ArrayList<>();

    private final double speed;

    Heights(VehicleModel model, Road road, double speed) {
        this.speed = speed;
        for (WheelPlace wheel : model.wheels()) {
            PiecewisePolynomial path = path(model, wheel, road);
            paths.add(path);
            inTime.add(inTime(path, wheel.x(), speed));
        }
        for (int a = 0; a < model.vehicle().axles().size(); a++) {
            addAxleTimes(model, a, speed);
        }
    }

    private static PiecewisePolynomial path(VehicleModel model, WheelPlace wheel, Road road) {
        Axle axle = model.vehicle().axles().get(wheel.axle());
        RoadProfile profile = model.vehicle().layout().rolls()
                ? RoadProfile.along(road, wheel.y())
                : RoadProfile.alongEverySide(road);
        PathKind kind = axle.wheel().path();
        double half = axle.wheel().footprintLength().map(l -> l.value() / 2).orElse(0.0);
        PiecewisePolynomial path;
        try {
            path = WheelPath.of(profile, kind, axle.wheel().radius(), half, WheelPath.TOLERANCE);
        } catch (IllegalArgumentException e) {
            throw new RideException("'" + model.vehicle().name() + "', " + wheel.name() + " on road '" + road.name()
                    + "': " + e.getMessage());
        }
        if (kind == PathKind.POINT && wheel.contact().damping() > 0 && WheelPath.hasJump(path)) {
            throw new RideException("'" + model.vehicle().name() + "', " + wheel.name()
                    + ": a point follower cannot cross the jump of road '" + road.name()
                    + "' with contact damping, whose force would be infinite; choose the path 'disc' or 'footprint'");
        }
        return path;
    }

    /** Station {@code X = v t + x_i}, so powers of the station become powers of time times powers of v. */
    private static PiecewisePolynomial inTime(PiecewisePolynomial path, double x, double speed) {
        int pieces = path.pieces();
        double[] joints = new double[pieces + 1];
        double[][] coefficients = new double[pieces][];
        for (int i = 0; i <= pieces; i++) {
            joints[i] = (path.joint(i) - x) / speed;
        }
        for (int i = 0; i < pieces; i++) {
            coefficients[i] = path.coefficients(i);
            double power = 1;
            for (int k = 0; k < coefficients[i].length; k++) {
                coefficients[i][k] *= power;
                power *= speed;
            }
        }
        return new PiecewisePolynomial(joints, coefficients, path.valueAfter());
    }

    private void addAxleTimes(VehicleModel model, int axle, double speed) {
        double meets = Double.POSITIVE_INFINITY;
        double leaves = Double.NEGATIVE_INFINITY;
        for (int w = 0; w < model.wheels().size(); w++) {
            WheelPlace wheel = model.wheels().get(w);
            PiecewisePolynomial path = paths.get(w);
            if (wheel.axle() == axle && WheelPath.firstDeparture(path).isPresent()) {
                meets = Math.min(meets, (WheelPath.firstDeparture(path).getAsDouble() - wheel.x()) / speed);
                leaves = Math.max(leaves, (WheelPath.lastReturn(path).orElseThrow() - wheel.x()) / speed);
            }
        }
        if (Double.isFinite(meets)) {
            axleTimes.add(
                    new RideResult.AxleTimes(model.vehicle().axles().get(axle).name(), meets, leaves));
        }
    }

    /** Paths of the wheels against their station. */
    List<PiecewisePolynomial> paths() {
        return paths;
    }

    /** When each axle meets and leaves the obstacles. */
    List<RideResult.AxleTimes> axleTimes() {
        return axleTimes;
    }

    /** What every input follows against time: heights of wheels, then of hitches, then what drives the vehicle horizontally. */
    List<PiecewisePolynomial> all(VehicleModel model, double duration) {
        List<PiecewisePolynomial> all = new ArrayList<>(inTime);
        for (Hitch hitch : model.vehicle().hitches()) {
            all.add(HitchMotion.height(hitch.motion(), duration));
        }
        all.addAll(HorizontalDrive.of(model, speed, duration));
        return all;
    }

    /** Time of the first contact with an obstacle (s). */
    Optional<Double> firstContact() {
        return axleTimes.stream().map(RideResult.AxleTimes::meets).min(Double::compare);
    }

    /** Time at which the last wheel leaves the last obstacle (s). */
    Optional<Double> lastContact() {
        return axleTimes.stream().map(RideResult.AxleTimes::leaves).max(Double::compare);
    }
}
