package org.ridewright.ride;

import java.util.LinkedHashSet;
import java.util.Set;
import org.ridewright.dynamics.RideException;
import org.ridewright.dynamics.SeatPlace;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.dynamics.WheelPlace;
import org.ridewright.wheel.Ground;

/**
 * The names of the places at which something can be measured in any ride test of a scenario.
 *
 * @param seats occupied ones
 * @param points that the scenario names
 * @param elements springs, dampers, bars and cushions
 */
public record RidePlaces(Set<String> seats, Set<String> points, Set<String> wheels, Set<String> elements) {
    /**
     * Of all ride tests; vehicles that cannot stand have none.
     *
     * @param scenario in order
     */
    public static RidePlaces of(Scenario scenario) {
        RidePlaces places = new RidePlaces(
                new LinkedHashSet<>(), new LinkedHashSet<>(), new LinkedHashSet<>(), new LinkedHashSet<>());
        scenario.points().forEach(point -> places.points.add(point.name()));
        for (RideBench.Test test : RideBench.tests(scenario)) {
            try {
                places.add(VehicleModel.assemble(
                        test.vehicle(),
                        test.load(),
                        new Ground(test.road().groundRate(), test.road().groundDamping()),
                        scenario.braked()));
            } catch (RideException cannotStand) {
                continue;
            }
        }
        return places;
    }

    private void add(VehicleModel model) {
        model.seats().stream().map(SeatPlace::name).forEach(seats::add);
        model.wheels().stream().map(WheelPlace::name).forEach(wheels::add);
        for (int element : new ReadOffs(model).suspensionElements()) {
            elements.add(model.equations().elements().get(element).name());
        }
        if (seats.isEmpty() && points.isEmpty()) {
            points.add("centre of mass");
        }
    }
}
