package org.ridewright.uncertainty;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.ridewright.dynamics.RideException;
import org.ridewright.quantity.UnfitValueException;
import org.ridewright.ride.RideResult;
import org.ridewright.ride.RideRunner;
import org.ridewright.ride.Scenario;

/**
 * Every ride test of a scenario with the interval of each of its numbers and the band of each of its traces.
 *
 * <p>The same draws serve all ride tests, so that vehicles of one file, and loads and speeds of one vehicle, are compared draw by draw. A draw
 * of which no vehicle can be is replaced by another; one that cannot ride a test to its end (it tips, say) is left out of that test, and counted.
 */
public final class UncertainRides {
    private static final long SEED = 1;
    /** How many draws may have to be replaced for each that serves: one vehicle in five must be possible. */
    private static final double MOST_REPLACED = 4;
    /** Share of the drawn rides that must come to their end. */
    private static final double LEAST_RIDDEN = 0.5;
    /** Share of the memory that traces may fill. */
    private static final double MEMORY_SHARE = 0.2;

    private final DrawnScenarios source;
    private final int count;
    private final Function<RideResult, Map<String, Double>> numbers;
    private final List<Scenario> scenarios = new ArrayList<>();
    private int replaced;

    private UncertainRides(DrawnScenarios source, int count, Function<RideResult, Map<String, Double>> numbers) {
        this.source = source;
        this.count = count;
        this.numbers = numbers;
    }

    /**
     * @param rides what was found, in the order of the scenario
     * @param uncertainValues number of values that were drawn
     * @param replaced draws that had to be replaced, since no such vehicle can be
     */
    public record Outcome(List<UncertainRide> rides, int uncertainValues, int replaced) {
        public Outcome {
            rides = List.copyOf(rides);
        }
    }

    /**
     * @param draws N, ≥ 2
     * @param numbers of a ride, by names of the caller's choosing
     * @param progress is told each ride test's result as it is done
     * @throws UnfitValueException if too many draws describe no vehicle
     * @throws RideException if the scenario cannot be ridden as written
     */
    public static Outcome run(
            DrawnScenarios source,
            int draws,
            Function<RideResult, Map<String, Double>> numbers,
            Consumer<UncertainRide> progress) {
        UncertainRides run = new UncertainRides(source, draws, numbers);
        Scenario written = source.drawn(new double[source.uncertainValues()]);
        run.draw();
        List<UncertainRide> rides = new ArrayList<>();
        for (OneTest test : OneTest.of(written)) {
            UncertainRide ride = run.ride(test, written);
            progress.accept(ride);
            rides.add(ride);
        }
        return new Outcome(rides, source.uncertainValues(), run.replaced);
    }

    private void draw() {
        NormalDraws normal = new NormalDraws(count, source.uncertainValues(), SEED);
        for (int i = 0; i < count; i++) {
            double[] w = normal.draw(i);
            while (!drawn(w)) {
                w = normal.another();
            }
        }
    }

    private boolean drawn(double[] w) {
        try {
            scenarios.add(source.drawn(w));
            return true;
        } catch (UnfitValueException | RideException unfit) {
            replaced++;
            if (replaced > Math.max(10, MOST_REPLACED * count)) {
                UnfitValueException refusal = new UnfitValueException("of " + (replaced + scenarios.size())
                        + " vehicles drawn within the tolerances, " + replaced
                        + " cannot be; make the tolerances narrower. The last was refused so: " + unfit.getMessage());
                refusal.initCause(unfit);
                throw refusal;
            }
            return false;
        }
    }

    private UncertainRide ride(OneTest test, Scenario written) {
        RideResult central = ridden(test.in(written));
        TraceStore traces = new TraceStore(
                central.traces(), count, MEMORY_SHARE * Runtime.getRuntime().maxMemory());
        Map<String, double[]> values = new HashMap<>();
        numbers.apply(central).keySet().forEach(name -> values.put(name, new double[count]));
        RideException[] stopped = new RideException[count];
        IntStream.range(0, count).parallel().forEach(i -> {
            try {
                RideResult result = ridden(test.in(scenarios.get(i)));
                traces.put(i, result.traces());
                Map<String, Double> own = numbers.apply(result);
                values.forEach((name, column) -> column[i] = own.getOrDefault(name, Double.NaN));
            } catch (RideException gaveUp) {
                stopped[i] = gaveUp;
            }
        });
        int[] ridden = IntStream.range(0, count).filter(i -> stopped[i] == null).toArray();
        if (ridden.length < LEAST_RIDDEN * count) {
            throw new RideException(count - ridden.length + " of " + count
                    + " rides drawn within the tolerances could not be ridden to their end. The last: "
                    + Arrays.stream(stopped)
                            .filter(Objects::nonNull)
                            .reduce((a, b) -> b)
                            .orElseThrow()
                            .getMessage());
        }
        Map<String, Interval> intervals = new HashMap<>();
        values.forEach((name, column) -> {
            double[] own = Arrays.stream(ridden).mapToDouble(i -> column[i]).toArray();
            if (Arrays.stream(own).allMatch(Double::isFinite)) {
                intervals.put(name, Interval.of(own));
            }
        });
        return new UncertainRide(central, intervals, traces.bands(), ridden.length);
    }

    private static RideResult ridden(Scenario one) {
        return RideRunner.run(one, result -> {}).get(0);
    }
}
