package org.ridewright.ride;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.ridewright.dynamics.RideException;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.dynamics.WheelPlace;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.math.PolynomialBlocks;
import org.ridewright.road.Road;
import org.ridewright.road.RoadTracks;
import org.ridewright.road.Track;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.Hitch;
import org.ridewright.vehicle.PathKind;
import org.ridewright.wheel.PathWindows;
import org.ridewright.wheel.WheelPath;

/**
 * What wheels and hitches follow: paths against station, and heights against time. The whole path of a short road is worked out at
 * once, that of a long one in blocks as the wheel comes to them.
 */
final class Heights {
    /** Roads that are rough for no longer than this are one block (m). */
    private static final double SHORT = 200;
    /** Length of a block of a longer one (m). */
    private static final double BLOCK = 20;

    private final VehicleModel model;
    private final Road road;
    private final Travel travel;
    private final List<PathWindows> windows = new ArrayList<>();
    /** Of short roads only. */
    private final List<Optional<PiecewisePolynomial>> whole = new ArrayList<>();

    private final List<PolynomialBlocks> inTime = new ArrayList<>();

    /** @throws RideException if a wheel cannot follow the road */
    Heights(VehicleModel model, Road road, Travel travel) {
        this.model = model;
        this.road = road;
        this.travel = travel;
        List<Track> tracks = tracks();
        for (int w = 0; w < model.wheels().size(); w++) {
            windows.add(windows(model.wheels().get(w), tracks.get(w)));
            if (isLong(w)) {
                whole.add(Optional.empty());
                inTime.add(new Blocks(w));
            } else {
                PiecewisePolynomial path = checked(w, windows.get(w)::whole);
                whole.add(Optional.of(path));
                inTime.add(inTime(w, path));
            }
        }
    }

    private List<Track> tracks() {
        if (model.vehicle().layout().rolls()) {
            return RoadTracks.of(
                    road, model.wheels().stream().mapToDouble(WheelPlace::y).toArray());
        }
        return model.wheels().stream().map(wheel -> RoadTracks.everySide(road)).toList();
    }

    private PathWindows windows(WheelPlace wheel, Track track) {
        Axle axle = model.vehicle().axles().get(wheel.axle());
        double half = axle.wheel().footprintLength().map(l -> l.value() / 2).orElse(0.0);
        return new PathWindows(track, axle.wheel().path(), axle.wheel().radius(), half, WheelPath.TOLERANCE);
    }

    private boolean isRough(int w) {
        return windows.get(w).begin() < Double.POSITIVE_INFINITY;
    }

    private boolean isMet(int w) {
        return whole.get(w)
                .map(path -> WheelPath.firstDeparture(path).isPresent())
                .orElse(true);
    }

    private boolean isLong(int w) {
        return isRough(w) && windows.get(w).end() - windows.get(w).begin() > SHORT;
    }

    private PiecewisePolynomial inTime(int w, PiecewisePolynomial path) {
        return PathInTime.of(path, model.wheels().get(w).x(), travel, WheelPath.TOLERANCE);
    }

    private PiecewisePolynomial path(int w, double from, double to) {
        return checked(w, () -> windows.get(w).between(from, to));
    }

    private PiecewisePolynomial checked(int w, Supplier<PiecewisePolynomial> supplier) {
        WheelPlace wheel = model.wheels().get(w);
        PathKind kind = model.vehicle().axles().get(wheel.axle()).wheel().path();
        PiecewisePolynomial path;
        try {
            path = supplier.get();
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

    /** Blocks of equal length from the beginning of the rough road to its end, if it has one. */
    private final class Blocks implements PolynomialBlocks {
        private final int w;
        private final double begin;
        private final double end;

        Blocks(int w) {
            this.w = w;
            begin = windows.get(w).begin() - 1;
            end = windows.get(w).end() + 1;
        }

        @Override
        public PiecewisePolynomial block(int i) {
            return inTime(w, path(w, begin + i * BLOCK, begin + (i + 1) * BLOCK));
        }

        @Override
        public boolean isLast(int i) {
            return begin + (i + 1) * BLOCK >= end;
        }
    }

    /** Path of each wheel; of a long road over the stations that it passes from one time to another (s). */
    List<PiecewisePolynomial> paths(double from, double to) {
        List<PiecewisePolynomial> paths = new ArrayList<>();
        for (int w = 0; w < windows.size(); w++) {
            double x = model.wheels().get(w).x();
            paths.add(
                    whole.get(w).isPresent()
                            ? whole.get(w).get()
                            : path(w, travel.station(from) + x, travel.station(to) + x));
        }
        return paths;
    }

    /** When each axle meets the rough road and leaves it; it never leaves an endless one. */
    List<RideResult.AxleTimes> axleTimes() {
        List<RideResult.AxleTimes> times = new ArrayList<>();
        for (int a = 0; a < model.vehicle().axles().size(); a++) {
            double meets = Double.POSITIVE_INFINITY;
            double leaves = Double.NEGATIVE_INFINITY;
            for (int w = 0; w < windows.size(); w++) {
                WheelPlace wheel = model.wheels().get(w);
                if (wheel.axle() == a && isMet(w)) {
                    meets = Math.min(meets, travel.time(begins(w) - wheel.x()));
                    leaves = Math.max(
                            leaves,
                            ends(w) == Double.POSITIVE_INFINITY
                                    ? Double.POSITIVE_INFINITY
                                    : travel.time(ends(w) - wheel.x()));
                }
            }
            if (meets < Double.POSITIVE_INFINITY) {
                times.add(
                        new RideResult.AxleTimes(model.vehicle().axles().get(a).name(), meets, leaves));
            }
        }
        return times;
    }

    private double begins(int w) {
        return whole.get(w)
                .map(path ->
                        WheelPath.firstDeparture(path).orElse(windows.get(w).begin()))
                .orElse(windows.get(w).begin());
    }

    private double ends(int w) {
        return whole.get(w)
                .map(path -> WheelPath.lastReturn(path).orElse(windows.get(w).end()))
                .orElse(windows.get(w).end());
    }

    /** What every input follows against time: heights of wheels, then of hitches, then what drives the vehicle horizontally. */
    List<PolynomialBlocks> all(double duration) {
        List<PolynomialBlocks> all = new ArrayList<>(inTime);
        for (Hitch hitch : model.vehicle().hitches()) {
            all.add(HitchMotion.height(hitch.motion(), duration));
        }
        all.addAll(HorizontalDrive.of(model, travel, duration));
        return all;
    }

    /** Time of the first contact with what is rough (s). */
    static Optional<Double> firstContact(List<RideResult.AxleTimes> axles) {
        return axles.stream().map(RideResult.AxleTimes::meets).min(Double::compare);
    }

    /** Time at which the last wheel leaves it (s); +∞ on an endless road. */
    static Optional<Double> lastContact(List<RideResult.AxleTimes> axles) {
        return axles.stream().map(RideResult.AxleTimes::leaves).max(Double::compare);
    }
}
