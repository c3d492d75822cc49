package org.ridewright.friction;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.ridewright.comfort.Axis;
import org.ridewright.comfort.Position;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.ride.Measured;
import org.ridewright.ride.RideBench;
import org.ridewright.ride.RideResult.ElementResult;
import org.ridewright.ride.Wanted;
import org.ridewright.road.Road;
import org.ridewright.road.RoughnessClass;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.wheel.Ground;

/**
 * What more or less friction makes of a ride: over a plank and on gravel at several speeds, and on random roads of several classes at the
 * middle one. Each draw has a vehicle within the tolerances and a gravel of its own, and rides with every friction, so that frictions are compared on
 * the same vehicle and road.
 *
 * @param load under which it rides
 * @param speeds rising (m/s)
 * @param factors of friction, rising from 0
 * @param draws how many
 * @param uncertain number of values that were drawn within tolerances
 * @param lines by criterion, road and speed, only those that exist in every draw
 */
public record TradeOff(
        LoadCase load, List<Double> speeds, List<Double> factors, int draws, int uncertain, List<TradeLine> lines) {
    /** From none to rusted. */
    public static final List<Double> FACTORS = List.of(0.0, 0.1, 0.2, Greasing.OILED, 0.7, 1.0, 1.6, Greasing.RUSTED);

    /** Draws unless another number is asked for. */
    public static final int USUAL_DRAWS = 10;

    /** Classes of roads at the middle speed. */
    public static final List<RoughnessClass> CLASSES = List.of(RoughnessClass.B, RoughnessClass.C, RoughnessClass.D);

    public TradeOff {
        speeds = List.copyOf(speeds);
        factors = List.copyOf(factors);
        lines = List.copyOf(lines);
    }

    /** Told of each ride that is done. */
    @FunctionalInterface
    public interface Progress {
        /** @param done of {@code of} rides */
        void at(long done, long of);
    }

    /** One road at one speed; its number of each draw depends on nothing else. */
    private record Test(String road, double speed, boolean plank, ToRoad of) {
        private interface ToRoad {
            Road road(long seed);
        }
    }

    /** What one ride showed, by criterion; NaN where there is none. */
    private record Seen(Map<Criterion, Double> values) {}

    /**
     * Rides them all, on every core; the numbers are the same whatever the number of cores.
     *
     * @param loadCase name
     * @throws org.ridewright.dynamics.RideException if a vehicle cannot stand or ride
     */
    public static TradeOff of(
            VehicleDraws vehicles, String loadCase, List<Double> speeds, int draws, Progress progress) {
        List<Test> tests = tests(speeds);
        int levels = FACTORS.size();
        Seen[][] seen = new Seen[tests.size()][draws * levels];
        long all = (long) tests.size() * draws * levels;
        AtomicLong done = new AtomicLong();
        List<Vehicle> drawn =
                IntStream.range(0, draws).mapToObj(vehicles::vehicle).toList();
        IntStream.range(0, draws * levels).parallel().forEach(i -> {
            Vehicle vehicle = drawn.get(i / levels);
            VehicleModel model = Leaves.greased(
                    VehicleModel.assemble(vehicle, vehicle.loadCase(loadCase).orElseThrow(), Ground.UNYIELDING, false),
                    FACTORS.get(i % levels));
            for (int t = 0; t < tests.size(); t++) {
                seen[t][i] = ride(model, tests.get(t), 1 + i / levels);
                progress.at(done.incrementAndGet(), all);
            }
        });
        List<TradeLine> lines = new ArrayList<>();
        for (int t = 0; t < tests.size(); t++) {
            for (Criterion criterion : Criterion.values()) {
                TradeLine line = line(criterion, tests.get(t), seen[t], draws);
                if (line.isWhole()) {
                    lines.add(line);
                }
            }
        }
        LoadCase load = drawn.get(0).loadCase(loadCase).orElseThrow();
        return new TradeOff(load, speeds, FACTORS, draws, vehicles.uncertain(), lines);
    }

    private static List<Test> tests(List<Double> speeds) {
        List<Test> tests = new ArrayList<>();
        for (double speed : speeds) {
            tests.add(new Test("plank", speed, true, seed -> TradeSetting.plank()));
        }
        for (double speed : speeds) {
            tests.add(new Test("gravel", speed, false, TradeSetting::gravel));
        }
        double middle = speeds.get(speeds.size() / 2);
        for (RoughnessClass each : CLASSES) {
            tests.add(new Test("class " + each.name(), middle, false, seed -> TradeSetting.ofClass(each, seed)));
        }
        return tests;
    }

    private static Seen ride(VehicleModel model, Test test, long seed) {
        Set<Wanted> wanted = test.plank() ? EnumSet.of(Wanted.PEAKS, Wanted.SWINGS) : EnumSet.of(Wanted.SEAT);
        Road road = test.of().road(seed);
        Measured measured = RideBench.measure(
                TradeSetting.run(road, test.speed()), model, road, TradeSetting.speed(test.speed()), wanted);
        Map<Criterion, Double> values = new EnumMap<>(Criterion.class);
        for (Criterion criterion : Criterion.values()) {
            values.put(criterion, value(model, measured, criterion, test.plank()));
        }
        return new Seen(values);
    }

    private static double value(VehicleModel model, Measured measured, Criterion criterion, boolean plank) {
        if (plank != (criterion != Criterion.WEIGHTED && criterion != Criterion.LOCKED)) {
            return Double.NaN;
        }
        return switch (criterion) {
            case PLANK_PEAK -> peak(measured);
            case WEIGHTED -> weighted(measured);
            case PITCH_AFTER -> swing(measured, "pitch", Measured.Swing::after);
            case CYCLES ->
                Math.max(
                        swing(measured, "heave", Measured.Swing::cycles),
                        model.vehicle().layout().pitches() ? swing(measured, "pitch", Measured.Swing::cycles) : 0);
            case LOCKED -> locked(model, measured);
        };
    }

    /** At the worst seat; at the centre of mass where nobody is aboard. */
    private static double peak(Measured measured) {
        if (measured.ride().seats().isEmpty()) {
            return measured.ride().points().stream()
                    .mapToDouble(p -> Math.max(p.greatest().value(), -p.least().value()))
                    .max()
                    .orElse(Double.NaN);
        }
        return measured.ride().seats().stream().mapToDouble(s -> s.peak()).max().orElse(Double.NaN);
    }

    private static double weighted(Measured measured) {
        return measured.ride().seats().stream()
                .mapToDouble(seat -> seat.felt()
                        .flatMap(person -> person.axis(Position.SEAT, Axis.Z))
                        .map(axis -> axis.metrics().rms())
                        .orElse(Double.NaN))
                .max()
                .orElse(Double.NaN);
    }

    private static double swing(Measured measured, String motion, ToDoubleFunction<Measured.Swing> what) {
        return measured.swings().stream()
                .filter(s -> s.motion().equals(motion))
                .mapToDouble(what)
                .findFirst()
                .orElse(Double.NaN);
    }

    /** A spring whose friction is taken away altogether is never locked. */
    private static double locked(VehicleModel model, Measured measured) {
        Set<String> rubbing = new HashSet<>();
        for (Element element : model.equations().elements()) {
            if (Leaves.rubs(element)) {
                rubbing.add(element.name());
            }
        }
        return measured.ride().springs().stream()
                .filter(s -> rubbing.contains(s.element()))
                .mapToDouble(ElementResult::lockedShare)
                .average()
                .orElse(0);
    }

    private static TradeLine line(Criterion criterion, Test test, Seen[] seen, int draws) {
        int levels = FACTORS.size();
        double[][] values = new double[draws][levels];
        for (int i = 0; i < seen.length; i++) {
            values[i / levels][i % levels] = seen[i].values().get(criterion);
        }
        double[] factors = FACTORS.stream().mapToDouble(Double::doubleValue).toArray();
        return new TradeLine(criterion, test.road(), test.speed(), factors, values);
    }

    /** Lines of a criterion on a road, in the order of speeds. */
    public List<TradeLine> lines(Criterion criterion, String road) {
        return lines.stream()
                .filter(l -> l.criterion() == criterion && l.road().equals(road))
                .toList();
    }
}
