package org.ridewright.ride;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ridewright.dynamics.RideException;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.road.Road;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.wheel.Ground;

/**
 * Rides the tests of one scenario after another for little more than the solver's own work: only what is wanted is measured, and
 * a vehicle under its load is assembled once for as long as it stays the same. Belongs to one thread.
 */
public final class RideBench {
    /** Assembled vehicles kept. */
    private static final int KEPT = 8;

    private final List<Assembled> kept = new ArrayList<>();

    private record Assembled(Vehicle vehicle, LoadCase load, Ground ground, boolean braked, VehicleModel model) {
        boolean is(Vehicle other, LoadCase otherLoad, Ground otherGround, boolean otherBraked) {
            return braked == otherBraked
                    && ground.equals(otherGround)
                    && load.equals(otherLoad)
                    && vehicle.equals(other);
        }
    }

    /** The ride tests of a scenario: each vehicle, with each load case, over each road, at each speed, in that order. */
    public static List<Test> tests(Scenario scenario) {
        List<Test> tests = new ArrayList<>();
        for (int i = 0; i < scenario.entrants().size(); i++) {
            tests.addAll(tests(scenario, i));
        }
        return tests;
    }

    /** Those of one of its vehicles, counted from 0. */
    public static List<Test> tests(Scenario scenario, int vehicle) {
        Scenario.Entrant entrant = scenario.entrants().get(vehicle);
        List<Test> tests = new ArrayList<>();
        for (LoadCase load : RideRunner.loadCases(entrant)) {
            for (Road road : scenario.roads()) {
                for (SpeedPlan plan : entrant.speeds()) {
                    tests.add(new Test(entrant.file(), entrant.vehicle(), load, road, plan));
                }
            }
        }
        return tests;
    }

    /** One vehicle, load case, road and speed of a scenario. */
    public record Test(String file, Vehicle vehicle, LoadCase load, Road road, SpeedPlan plan) {}

    /**
     * Rides one test and measures what is wanted.
     *
     * @param scenario to which the test belongs
     * @throws RideException if the vehicle cannot stand or ride as described
     */
    public Measured measure(Scenario scenario, Test test, Set<Wanted> wanted) {
        VehicleModel model = model(test, scenario.braked());
        return new RideTest(scenario, test.file(), model, test.road(), test.plan()).measure(wanted);
    }

    /**
     * Rides an assembled vehicle and measures what is wanted.
     *
     * @param scenario whose start, duration and points hold; its vehicles and roads are not looked at
     * @throws RideException if it cannot ride there
     */
    public static Measured measure(
            Scenario scenario, VehicleModel model, Road road, SpeedPlan plan, Set<Wanted> wanted) {
        return new RideTest(scenario, model.vehicle().name(), model, road, plan).measure(wanted);
    }

    private VehicleModel model(Test test, boolean braked) {
        Ground ground = new Ground(test.road().groundRate(), test.road().groundDamping());
        Optional<Assembled> known = kept.stream()
                .filter(a -> a.is(test.vehicle(), test.load(), ground, braked))
                .findFirst();
        if (known.isPresent()) {
            return known.get().model();
        }
        VehicleModel model = VehicleModel.assemble(test.vehicle(), test.load(), ground, braked);
        if (kept.size() == KEPT) {
            kept.remove(0);
        }
        kept.add(new Assembled(test.vehicle(), test.load(), ground, braked, model));
        return model;
    }
}
