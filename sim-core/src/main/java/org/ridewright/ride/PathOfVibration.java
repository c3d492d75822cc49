package org.ridewright.ride;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ridewright.comfort.Window;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.PointMotion;
import org.ridewright.dynamics.SeatPlace;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.dynamics.WheelPlace;
import org.ridewright.ride.LinearReadOff.Source;
import org.ridewright.signal.Detrend;
import org.ridewright.signal.WelchAccumulator;
import org.ridewright.signal.WelchSpectra;
import org.ridewright.solver.Step;
import org.ridewright.solver.StepListener;
import org.ridewright.vehicle.Place;

/**
 * Spectra along the way of vibration from the road to a place aboard: wheel path, wheel, body below the place, and who sits there.
 *
 * <p>Speeds are sampled, whose spectra are nearly flat on a road, and made those of accelerations by (2πf)². The wheel is the one
 * nearest to the place, seen from above.
 */
final class PathOfVibration implements StepListener {
    private static final double RATE = 1000;
    private static final int SHORTEST_SEGMENT = 2048;
    private static final int LONGEST_SEGMENT = 16_384;
    /** Bands average over lines, and do with fewer segments: three at least, in the shortest window lines of 0.12 Hz. */
    private static final int LONGEST_SEGMENT_FOR_BANDS = 32_768;
    /** Shortest window whose spectrum says anything: an obstacle is an event, not a steady road (s). */
    private static final double SHORTEST_WINDOW = 20;

    private final VehicleModel model;
    private final String place;
    private final List<String> names = new ArrayList<>();
    private final List<ReadOff> readOffs = new ArrayList<>();
    private final Window window;
    private final WelchAccumulator welch;
    private final WelchAccumulator fine;
    private final WheelPlace wheel;
    private final int felt;
    private final EvenSampler sampler;
    private long next;

    private PathOfVibration(
            VehicleModel model, String place, Place at, Optional<SeatPlace> seat, Window window, double duration) {
        this.model = model;
        this.place = place;
        this.window = window;
        wheel = nearest(at);
        add(
                "road, as the wheel follows it",
                LinearReadOff.named("road", "m/s").plus(Source.HEIGHT_SPEED, wheel.input(), 1));
        add("wheel", LinearReadOff.named("wheel", "m/s").plusRow(Source.VELOCITY, rise(wheel)));
        PointMotion motion = model.motionAt(at);
        add("body", LinearReadOff.named("body", "m/s").plusRow(Source.VELOCITY, motion.rise()));
        seat.filter(s -> s.element() >= 0)
                .ifPresent(s -> add("seat", LinearReadOff.named("seat", "m/s").plusRow(Source.VELOCITY, s.rise())));
        seat.flatMap(SeatPlace::head)
                .ifPresent(row -> add("head", LinearReadOff.named("head", "m/s").plusRow(Source.VELOCITY, row)));
        felt = names.contains("seat") ? names.indexOf("seat") : names.indexOf("body");
        welch = new WelchAccumulator(RATE, segment(window, LONGEST_SEGMENT, 10), readOffs.size(), Detrend.MEAN);
        fine = new WelchAccumulator(RATE, segment(window, LONGEST_SEGMENT_FOR_BANDS, 4), 1, Detrend.MEAN);
        sampler = new EvenSampler(readOffs, RATE, duration, this::accept);
    }

    /** Of each occupied seat, or of each named point where nobody is aboard; of a window too short of none. */
    static List<PathOfVibration> of(VehicleModel model, List<Scenario.Point> points, Window window, double duration) {
        List<PathOfVibration> all = new ArrayList<>();
        if (window.length() < SHORTEST_WINDOW || model.wheels().isEmpty()) {
            return all;
        }
        for (SeatPlace seat : model.seats()) {
            all.add(new PathOfVibration(model, seat.name(), seat.seat().place(), Optional.of(seat), window, duration));
        }
        if (all.isEmpty()) {
            for (Scenario.Point point : points) {
                all.add(new PathOfVibration(model, point.name(), point.place(), Optional.empty(), window, duration));
            }
        }
        return all;
    }

    private void add(String name, LinearReadOff.Builder readOff) {
        names.add(name);
        readOffs.add(readOff.build());
    }

    private WheelPlace nearest(Place at) {
        WheelPlace best = model.wheels().get(0);
        for (WheelPlace wheel : model.wheels()) {
            if (distance(wheel, at) < distance(best, at)) {
                best = wheel;
            }
        }
        return best;
    }

    private static double distance(WheelPlace wheel, Place at) {
        return Math.hypot(wheel.x() - at.x(), wheel.y() - at.y());
    }

    /** A contact is compressed by the path less the wheel's rise. */
    private double[] rise(WheelPlace wheel) {
        Element contact = model.equations().elements().get(wheel.element());
        double[] row = contact.row().clone();
        for (int i = 0; i < row.length; i++) {
            row[i] = -row[i];
        }
        return row;
    }

    /** The longest segment that is shorter than the window by a factor, so that there are enough to average. */
    private static int segment(Window window, int longest, double least) {
        int segment = SHORTEST_SEGMENT;
        while (segment < longest && window.length() * RATE > least * segment) {
            segment *= 2;
        }
        return segment;
    }

    private void accept(double[] values) {
        double t = next / RATE;
        next++;
        if (t >= window.from() && t <= window.to()) {
            welch.accept(values);
            fine.accept(values[felt]);
        }
    }

    /** The wheel under whose road the way begins. */
    WheelPlace wheel() {
        return wheel;
    }

    @Override
    public void step(Step step) {
        sampler.step(step);
    }

    /** What was measured. */
    RideSpectra spectra() {
        WelchSpectra speeds = welch.result();
        return new RideSpectra(place, wheel.name(), names, speeds, fine.result().power(0));
    }
}
