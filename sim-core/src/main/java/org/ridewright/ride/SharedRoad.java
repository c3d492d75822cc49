package org.ridewright.ride;

import java.util.List;
import java.util.Set;
import org.ridewright.dynamics.RideException;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.math.PolynomialBlocks;
import org.ridewright.road.Road;

/**
 * One road at one speed for vehicles that differ in the laws of their springs and dampers alone: what the wheels follow, which takes most of the
 * time of a short ride, is worked out once. Belongs to one thread.
 */
public final class SharedRoad {
    private final VehicleModel first;
    private final RideTest test;
    private final List<PolynomialBlocks> followed;

    /**
     * @param scenario whose start, duration and points hold; its vehicles and roads are not looked at
     * @throws RideException if the vehicle cannot follow the road
     */
    public SharedRoad(Scenario scenario, VehicleModel first, Road road, SpeedPlan plan) {
        this.first = first;
        test = new RideTest(scenario, first.vehicle().name(), first, road, plan);
        followed = test.followed();
    }

    /**
     * The same as {@link RideBench#measure} of the vehicle.
     *
     * @throws IllegalArgumentException if it is another vehicle or bears another load
     */
    public Measured measure(VehicleModel model, Set<Wanted> wanted) {
        return checked(model).measure(wanted);
    }

    /**
     * What the ride is like from an instant to its end.
     *
     * @param from (s), at least a second before the end
     * @throws IllegalArgumentException if it is another vehicle or bears another load
     */
    public SteadyRide steady(VehicleModel model, double from) {
        return checked(model).steady(from);
    }

    private RideTest checked(VehicleModel model) {
        if (!model.vehicle().equals(first.vehicle()) || !model.loadCase().equals(first.loadCase())) {
            throw new IllegalArgumentException("'" + model.vehicle().name() + "', "
                    + model.loadCase().name() + ", does not follow the road as '"
                    + first.vehicle().name() + "' does");
        }
        return test.with(model, followed);
    }
}
