package org.ridewright.ride;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Consumer;
import java.util.function.ObjDoubleConsumer;
import org.ridewright.dynamics.RideException;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.road.Road;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.wheel.Ground;

/** Runs every ride test of a scenario. */
public final class RideRunner {
    private RideRunner() {}

    /**
     * Each vehicle, with each load case, over each road, at each speed, in that order; several at a time.
     *
     * @param progress is told each result, in order
     * @throws RideException if a vehicle cannot stand or ride as described; of the first that cannot
     */
    public static List<RideResult> run(Scenario scenario, Consumer<RideResult> progress) {
        List<ForkJoinTask<RideResult>> tasks = new ArrayList<>();
        forEach(scenario, test -> tasks.add(ForkJoinPool.commonPool().submit(test::run)));
        List<RideResult> results = new ArrayList<>();
        for (ForkJoinTask<RideResult> task : tasks) {
            task.quietlyJoin();
            if (task.getException() != null) {
                tasks.forEach(other -> other.cancel(false));
                throw cause(task.getException());
            }
            RideResult result = task.getRawResult();
            progress.accept(result);
            results.add(result);
        }
        return results;
    }

    /** What went wrong within a task: the pool may hand it over wrapped in another of its kind. */
    private static RuntimeException cause(Throwable thrown) {
        for (Throwable each = thrown; each != null; each = each.getCause()) {
            if (each instanceof RideException told) {
                return told;
            }
        }
        return thrown instanceof RuntimeException unchecked ? unchecked : new IllegalStateException(thrown);
    }

    /**
     * Each ride test by both solvers, in the same order.
     *
     * @param told is told of each ride test as it is done: its name, and the relative r.m.s. difference of the accelerations, of the
     *     coordinate that differs most
     * @throws RideException if a vehicle cannot stand or ride as described
     */
    public static void differencesFromReference(Scenario scenario, ObjDoubleConsumer<String> told) {
        forEach(scenario, test -> told.accept(test.name(), test.differenceFromReference()));
    }

    private static void forEach(Scenario scenario, Consumer<RideTest> action) {
        for (Scenario.Entrant entrant : scenario.entrants()) {
            for (LoadCase load : loadCases(entrant)) {
                for (Road road : scenario.roads()) {
                    VehicleModel model = VehicleModel.assemble(
                            entrant.vehicle(),
                            load,
                            new Ground(road.groundRate(), road.groundDamping()),
                            scenario.braked());
                    for (SpeedPlan plan : entrant.speeds()) {
                        action.accept(new RideTest(scenario, entrant.file(), model, road, plan));
                    }
                }
            }
        }
    }

    static List<LoadCase> loadCases(Scenario.Entrant entrant) {
        Vehicle vehicle = entrant.vehicle();
        if (entrant.loadCases().isEmpty()) {
            return vehicle.loadCases();
        }
        return entrant.loadCases().stream()
                .map(name -> vehicle.loadCase(name).orElseThrow())
                .toList();
    }
}
