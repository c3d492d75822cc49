package org.ridewright.validation;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.ride.Fleet;
import org.ridewright.ride.RideRunner;
import org.ridewright.ride.Scenario;
import org.ridewright.ride.SpeedPlan;
import org.ridewright.road.Obstacle;
import org.ridewright.road.Road;
import org.ridewright.vehicle.Vehicle;

/**
 * Whole vehicles beside another integrator: the Dormand–Prince method of order 8(5,3) of the Hipparchus library advances the same
 * equations, force laws and guards, one call per regime. What it shares with the solver stands at
 * {@link org.ridewright.solver.ReferenceSolver}; a vehicle whose laws and switches are written anew is {@link RetypedQuarterVehicle}.
 */
final class IndependentIntegration implements ReferenceProblem {
    private static final Source LIBRARY = Source.integrator("Hipparchus, Dormand–Prince 8(5,3)");

    @Override
    public String title() {
        return "Demonstration fleet beside a library's integrator";
    }

    @Override
    public String statement() {
        return "Each vehicle over a haversine hump of 30 mm and 3 m, under all wheels and under the left ones, at 3 m/s for "
                + "2.2 s: r.m.s. difference of the accelerations over their r.m.s., of the coordinate that differs most. Shared "
                + "are equations, force laws with their list of guards, the bookkeeping of which piece is in force, and the "
                + "heights of the road (`FlatLaws`, `GuardTable`, `Regime`, `HeightCursor`); series, steps, forces as the series "
                + "has them and the search for switches are not.";
    }

    @Override
    public List<Check> checks() {
        Rows rows = new Rows(this);
        for (Vehicle vehicle : Fleet.all()) {
            for (Obstacle.Side side : List.of(Obstacle.Side.BOTH, Obstacle.Side.LEFT)) {
                String where = side == Obstacle.Side.BOTH ? ", both sides" : ", left side";
                rows.absolute(LIBRARY, vehicle.name() + where, "1", 0, difference(vehicle, side), 1e-6);
            }
        }
        return rows.list();
    }

    private static double difference(Vehicle vehicle, Obstacle.Side side) {
        Obstacle hump = new Obstacle.Hump(
                new Obstacle.Lie(length(4), side, Measure.of(0, QuantityKind.ANGLE), 1, Optional.empty()),
                length(0.03),
                length(3));
        Scenario scenario = new Scenario(
                "beside the library",
                "",
                List.of(new Scenario.Entrant(
                        vehicle,
                        "",
                        List.of(vehicle.loadCases().get(0).name()),
                        List.of(SpeedPlan.steady(Measure.of(3, QuantityKind.SPEED))))),
                List.of(new Road("hump", List.of(hump), Optional.empty())),
                Optional.of(Measure.of(2.2, QuantityKind.TIME)),
                Optional.empty(),
                Measure.of(100, QuantityKind.FREQUENCY),
                Scenario.Start.UNSTRESSED,
                false,
                List.of(),
                Optional.empty());
        double[] found = {Double.NaN};
        RideRunner.differencesFromReference(scenario, (test, difference) -> found[0] = difference);
        return found[0];
    }

    private static Measure length(double metres) {
        return Measure.of(metres, QuantityKind.LENGTH);
    }
}
