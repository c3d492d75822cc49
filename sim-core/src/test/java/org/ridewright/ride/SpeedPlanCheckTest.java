package org.ridewright.ride;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Measures;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.road.Road;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.vehicle.check.Fault;

/** Speeds that would be ridden twice, and changes of speed that a ride does not see the end of. */
class SpeedPlanCheckTest {
    private static final Vehicle QUARTER = Fleet.described(Fleet.quarter(1000));

    @Test
    void oneSpeedInTwoUnitsIsGivenTwice() {
        assertThat(faults(Optional.empty(), steady("8.04672 km/h"), steady("10 km/h"), steady("5 mph")))
                .singleElement()
                .satisfies(fault -> {
                    assertThat(fault.path()).isEqualTo("vehicles[0].speeds[2]");
                    assertThat(fault.fault()).isEqualTo("is the same as 8.04672 km/h before it");
                });
    }

    @Test
    void unlikeSpeedsAndPlansAreAllTaken() {
        assertThat(faults(
                        Optional.empty(),
                        steady("5 km/h"),
                        steady("5.001 km/h"),
                        plan(10, 40),
                        plan(10, 50),
                        plan(12, 50)))
                .isEmpty();
    }

    @Test
    void aPlanOfTheSameLegsIsGivenTwice() {
        assertThat(faults(Optional.empty(), plan(10, 40), plan(10, 40))).hasSize(1);
    }

    @Test
    void aChangeOfSpeedIsOverBeforeTheRideIs() {
        assertThat(faults(Optional.of("60 m"), plan(20, 40))).isEmpty();
        assertThat(faults(Optional.of("60 m"), plan(20.1, 40))).singleElement().satisfies(fault -> {
            assertThat(fault.path()).isEqualTo("vehicles[0].speeds[0].legs[1][0]");
            assertThat(fault.fault()).contains("takes until 60.10 m");
        });
    }

    private static List<Fault> faults(Optional<String> distance, SpeedPlan... plans) {
        return ScenarioCheck.faults(new Scenario(
                "speeds",
                "",
                List.of(new Scenario.Entrant(QUARTER, "", List.of("empty"), List.of(plans))),
                List.of(new Road("level", List.of(), Optional.empty())),
                Optional.empty(),
                distance.map(d -> Measures.parse(d, QuantityKind.LENGTH)),
                Measure.of(200, QuantityKind.FREQUENCY),
                Scenario.Start.UNSTRESSED,
                false,
                List.of(),
                Optional.empty()));
    }

    private static SpeedPlan steady(String written) {
        return SpeedPlan.steady(Measures.parse(written, QuantityKind.SPEED));
    }

    private static SpeedPlan plan(double change, double second) {
        List<SpeedPlan.Leg> legs = new ArrayList<>();
        legs.add(new SpeedPlan.Leg(Measure.of(0, QuantityKind.LENGTH), Measure.of(2, QuantityKind.SPEED)));
        legs.add(new SpeedPlan.Leg(Measure.of(second, QuantityKind.LENGTH), Measure.of(4, QuantityKind.SPEED)));
        return new SpeedPlan(Optional.of("plan"), legs, Measure.of(change, QuantityKind.LENGTH));
    }
}
