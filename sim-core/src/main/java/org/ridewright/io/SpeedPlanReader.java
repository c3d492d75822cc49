package org.ridewright.io;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.ride.SpeedPlan;

/** Reads {@code speeds}: steady ones as single values, plans as groups of keys. */
final class SpeedPlanReader {
    private static final String EXPECTED =
            Values.expected(QuantityKind.SPEED) + ", or a plan {name: ..., legs: [[0 m, 6 km/h], [80 m, 12 km/h]]}";
    private static final Measure USUAL_CHANGE =
            Measure.estimated(SpeedPlan.USUAL_CHANGE, QuantityKind.LENGTH, "a change of speed over 10 m");

    private SpeedPlanReader() {}

    static List<SpeedPlan> read(Part entrant) {
        if (!entrant.has("speeds")) {
            entrant.missing("speeds", EXPECTED + ", or a list of them");
        }
        Values values = new Values(entrant.reading());
        return entrant.itemsOrOne("speeds", EXPECTED).stream()
                .map(item -> item instanceof Node.Mapping
                        ? plan(Part.of(entrant.reading(), item, "a plan of speeds", "name", "legs", "change over"))
                        : SpeedPlan.steady(
                                values.measure(item, QuantityKind.SPEED).orElse(Values.standIn(QuantityKind.SPEED))))
                .toList();
    }

    private static SpeedPlan plan(Part plan) {
        if (!plan.has("legs")) {
            plan.missing("legs", "rows [station, speed]");
        }
        List<SpeedPlan.Leg> legs = plan.rows("legs", QuantityKind.LENGTH, QuantityKind.SPEED).stream()
                .map(row -> new SpeedPlan.Leg(row.get(0), row.get(1)))
                .toList();
        return new SpeedPlan(
                Optional.of(plan.text("name", "a name for the plan")),
                legs,
                plan.measureOr("change over", USUAL_CHANGE));
    }
}
