package org.ridewright.ride;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ridewright.comfort.Axis;
import org.ridewright.comfort.AxisMeter;
import org.ridewright.comfort.AxisVibration;
import org.ridewright.comfort.MotionSickness;
import org.ridewright.comfort.MotionSicknessMeter;
import org.ridewright.comfort.PersonVibration;
import org.ridewright.comfort.Position;
import org.ridewright.comfort.SeatEffectiveness;
import org.ridewright.comfort.StartUp;
import org.ridewright.comfort.Window;
import org.ridewright.dynamics.SeatPlace;
import org.ridewright.signal.ThirdOctaveMeter;
import org.ridewright.solver.Step;
import org.ridewright.solver.StepListener;

/** Measures what one rider feels while the run goes on, in memory that does not grow. */
final class FeltMeters implements StepListener {
    /** Whatever the rate of the traces (Hz). */
    private static final double RATE = 2000;
    /** Of longer rides (Hz): the weightings end far below 0.4 of it. */
    private static final double RATE_OF_LONG_RIDES = 1000;

    private static final double LONG = 120;

    /** Third octaves in which ISO 2631-1 weights what riders feel, from that of one frequency to that of another (Hz). */
    private static final double LOWEST_BAND = 0.5;

    private static final double HIGHEST_BAND = 80;

    /** By which a window ends before the ride only because filters look ahead (s). */
    private static final double LONGEST_TAIL_OF_STEADY_RIDES = 0.5;

    /** Rides shorter than this say nothing about motion sickness (s). */
    private static final double SHORTEST_SICKENING = 60;

    private final List<Felt> felt = new ArrayList<>();
    private final AxisMeter[] meters;
    /** By place in the list of what is felt; empty where not wanted. */
    private final Map<Integer, ThirdOctaveMeter> bands = new LinkedHashMap<>();

    private final Optional<AxisMeter> floor;
    private final Optional<MotionSicknessMeter> sickness;
    private final Window window;
    private final double rate;
    private final EvenSampler sampler;
    private int vertical;
    private long next;

    private record Felt(Position position, Axis axis, ReadOff readOff) {}

    FeltMeters(SeatPlace seat, ReadOffs readOffs, Window window, double duration) {
        this(seat, readOffs, window, duration, EnumSet.complementOf(EnumSet.of(Wanted.THIRD_OCTAVES)));
    }

    /** @param wanted the seat's vertical motion is always measured; other axes, feet, backrest, floor, sickness and kinds of motion where they are wanted */
    FeltMeters(SeatPlace seat, ReadOffs readOffs, Window window, double duration, Set<Wanted> wanted) {
        boolean whole = wanted.contains(Wanted.WHOLE_RIDER);
        boolean kinds = wanted.contains(Wanted.KINDS_OF_MOTION);
        this.window = window;
        rate = duration > LONG ? RATE_OF_LONG_RIDES : RATE;
        boolean sideways = whole || wanted.contains(Wanted.ALL_AXES);
        add(Position.SEAT, readOffs.seat(seat), sideways);
        vertical = felt.size() - 1;
        if (whole || wanted.contains(Wanted.FEET)) {
            add(Position.FEET, readOffs.feet(seat), sideways);
        }
        if (whole) {
            readOffs.backrest(seat).ifPresent(xyz -> add(Position.BACKREST, xyz, true));
            readOffs.rollAcceleration().ifPresent(r -> felt.add(new Felt(Position.SEAT, Axis.ROLL, r)));
            readOffs.pitchAcceleration().ifPresent(r -> felt.add(new Felt(Position.SEAT, Axis.PITCH, r)));
        }
        meters = felt.stream()
                .map(f ->
                        meter(f.position(), f.axis(), kinds && f.axis() == Axis.Z && f.position() != Position.BACKREST))
                .toArray(AxisMeter[]::new);
        if (wanted.contains(Wanted.THIRD_OCTAVES)) {
            addBands(duration);
        }
        List<ReadOff> sampled = new ArrayList<>(felt.stream().map(Felt::readOff).toList());
        if (whole && seat.element() >= 0) {
            floor = Optional.of(meter(Position.SEAT, Axis.Z, false));
            sampled.add(readOffs.floor(seat));
        } else {
            floor = Optional.empty();
        }
        sickness = !whole || window.length() < SHORTEST_SICKENING
                ? Optional.empty()
                : Optional.of(new MotionSicknessMeter(window, rate, 0, StartUp.AT_REST));
        sampler = new EvenSampler(sampled, rate, duration, this::accept);
    }

    private AxisMeter meter(Position position, Axis axis, boolean kinds) {
        return new AxisMeter(position, axis, window, rate, 0, StartUp.AT_REST, kinds);
    }

    private void addBands(double duration) {
        // a ride that goes on behind the obstacles tells how what they set going dies away
        double end = duration - window.to() > LONGEST_TAIL_OF_STEADY_RIDES ? duration : window.to();
        long samples = (long) Math.floor((end - window.from()) * rate);
        for (int i = 0; i < felt.size(); i++) {
            if (felt.get(i).axis() == Axis.Z && felt.get(i).position() != Position.BACKREST) {
                bands.put(i, new ThirdOctaveMeter(rate, samples, LOWEST_BAND, HIGHEST_BAND));
            }
        }
    }

    private void add(Position position, List<ReadOff> xyz, boolean sideways) {
        if (sideways) {
            felt.add(new Felt(position, Axis.X, xyz.get(0)));
            felt.add(new Felt(position, Axis.Y, xyz.get(1)));
        }
        felt.add(new Felt(position, Axis.Z, xyz.get(2)));
    }

    private void accept(double[] values) {
        for (int i = 0; i < meters.length; i++) {
            meters[i].accept(values[i]);
        }
        if (next >= window.from() * rate) {
            bands.forEach((i, meter) -> meter.accept(values[i]));
        }
        next++;
        floor.ifPresent(meter -> meter.accept(values[meters.length]));
        sickness.ifPresent(meter -> meter.accept(values[vertical]));
    }

    @Override
    public void step(Step step) {
        sampler.step(step);
    }

    /** Everything about the rider. */
    PersonVibration person() {
        Map<Position, Map<Axis, AxisVibration>> points = new EnumMap<>(Position.class);
        for (int i = 0; i < meters.length; i++) {
            Felt f = felt.get(i);
            points.computeIfAbsent(f.position(), p -> new EnumMap<>(Axis.class)).put(f.axis(), meters[i].result());
        }
        return new PersonVibration(points);
    }

    /** Vertical motion in third octaves; empty where not wanted. */
    List<Measured.InBands> inBands(String seat) {
        List<Measured.InBands> all = new ArrayList<>();
        bands.forEach((i, meter) -> all.add(
                new Measured.InBands(seat, felt.get(i).position(), meter.levels(Math.round(window.length() * rate)))));
        return all;
    }

    /** What the seat does, if it is sprung. */
    Optional<SeatEffectiveness> effectiveness() {
        return floor.map(meter -> new SeatEffectiveness(
                meter.result().metrics(), meters[vertical].result().metrics()));
    }

    /** Of the ride itself, if it is long enough. */
    Optional<MotionSickness> sickness() {
        return sickness.map(meter -> meter.result(window.length()));
    }
}
