package org.ridewright.friction;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongFunction;
import java.util.stream.IntStream;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.road.Road;
import org.ridewright.road.RoughnessClass;
import org.ridewright.vehicle.Friction;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.wheel.Ground;

/**
 * What more or less friction makes of a ride: over a plank and on gravel at several speeds, and on random roads of several classes at the
 * middle one. Each draw has a vehicle within the tolerances and a gravel of its own, and rides with every friction, so that frictions are compared on
 * the same vehicle and road.
 *
 * @param load under which it rides
 * @param place where the ride is felt, in words
 * @param speeds rising (m/s)
 * @param factors of friction, rising from 0
 * @param draws how many; a single one is the vehicle as written
 * @param uncertain number of values that were drawn within tolerances
 * @param lines by criterion, road and speed, only those that exist in every draw
 */
public record TradeOff(
        LoadCase load,
        String place,
        List<Double> speeds,
        List<Double> factors,
        int draws,
        int uncertain,
        List<TradeLine> lines) {
    /** From none to rusted. */
    public static final List<Double> FACTORS = List.of(0.0, 0.1, 0.2, Friction.OILED, 0.7, 1.0, 1.6, Greasing.RUSTED);

    /** Draws unless another number is asked for. */
    public static final int USUAL_DRAWS = 40;

    /** Riding time on a random road in which the ride is measured (s). */
    public static final double RIDE = 5;

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

    /** One road at one speed; a random road is each draw's own. */
    private record Test(String road, double speed, LongFunction<Road> of) {}

    /**
     * Rides them all, on every core; the numbers are the same whatever the number of cores.
     *
     * @param loadCase name
     * @throws org.ridewright.dynamics.RideException if a vehicle cannot stand or ride
     */
    public static TradeOff of(
            VehicleDraws vehicles, String loadCase, List<Double> speeds, int draws, Progress progress) {
        List<Test> tests = tests(speeds);
        long all = rides(speeds.size(), draws);
        AtomicLong done = new AtomicLong();
        List<Vehicle> drawn = IntStream.range(0, draws)
                .mapToObj(d -> vehicles.vehicle(draws == 1 ? 0 : 1 + d))
                .toList();
        // by draw and test, then by friction
        List<List<Map<Criterion, Double>>> seen = IntStream.range(0, draws * tests.size())
                .parallel()
                .mapToObj(i -> {
                    int draw = i / tests.size();
                    Test test = tests.get(i % tests.size());
                    return new TradeRides(test.of().apply(1 + draw), test.speed())
                            .of(greased(drawn.get(draw), loadCase), () -> progress.at(done.incrementAndGet(), all));
                })
                .toList();
        List<TradeLine> lines = new ArrayList<>();
        for (int t = 0; t < tests.size(); t++) {
            int of = t;
            List<List<Map<Criterion, Double>>> each = IntStream.range(0, draws)
                    .mapToObj(d -> seen.get(d * tests.size() + of))
                    .toList();
            for (Criterion criterion : Criterion.values()) {
                TradeLine line = line(criterion, tests.get(t), each);
                if (line.isWhole()) {
                    lines.add(line);
                }
            }
        }
        VehicleModel written = standing(vehicles.vehicle(0), loadCase);
        return new TradeOff(
                written.loadCase(), TradeSetting.place(written), speeds, FACTORS, draws, vehicles.uncertain(), lines);
    }

    /** How many rides it takes. */
    static long rides(int speeds, int draws) {
        return (2L * speeds + CLASSES.size()) * draws * FACTORS.size();
    }

    private static VehicleModel standing(Vehicle vehicle, String loadCase) {
        return VehicleModel.assemble(vehicle, vehicle.loadCase(loadCase).orElseThrow(), Ground.UNYIELDING, false);
    }

    private static List<VehicleModel> greased(Vehicle vehicle, String loadCase) {
        VehicleModel written = standing(vehicle, loadCase);
        return FACTORS.stream().map(factor -> Leaves.greased(written, factor)).toList();
    }

    private static List<Test> tests(List<Double> speeds) {
        List<Test> tests = new ArrayList<>();
        for (double speed : speeds) {
            tests.add(new Test("plank", speed, seed -> TradeSetting.plank()));
        }
        for (double speed : speeds) {
            tests.add(new Test("gravel", speed, TradeSetting::gravel));
        }
        double middle = speeds.get(speeds.size() / 2);
        for (RoughnessClass each : CLASSES) {
            tests.add(new Test("class " + each.name(), middle, seed -> TradeSetting.ofClass(each, seed)));
        }
        return tests;
    }

    private static TradeLine line(Criterion criterion, Test test, List<List<Map<Criterion, Double>>> seen) {
        double[][] values = seen.stream()
                .map(draw -> draw.stream()
                        .mapToDouble(by -> by.getOrDefault(criterion, Double.NaN))
                        .toArray())
                .toArray(double[][]::new);
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
