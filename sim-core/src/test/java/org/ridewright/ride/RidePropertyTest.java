package org.ridewright.ride;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.ridewright.solver.Solution;

/** What must hold of every ride, whatever the vehicle and the road. The seeds are fixed so that a build is the same each time. */
class RidePropertyTest {
    @Provide
    Arbitrary<GeneratedVehicle> vehicles() {
        return GeneratedVehicle.any();
    }

    @Provide
    Arbitrary<GeneratedRoad> roads() {
        return GeneratedRoad.any();
    }

    /** Invariant 2: no guard ends a step on its wrong side, no switch is missed, and the energy books close. */
    @Property(tries = 60, seed = "1", shrinking = ShrinkingMode.OFF)
    void everyForceIsThatOfItsLawAtEveryInstant(
            @ForAll("vehicles") GeneratedVehicle vehicle, @ForAll("roads") GeneratedRoad road) {
        Trial trial = Trial.of(vehicle.vehicle(), road.road(), road.speed(), 1);
        LawScan scan = new LawScan(trial.problem(), 24);
        Solution solution = trial.solve(scan);
        scan.assertNothingMissed();
        assertThat(solution.energy().relativeResidual()).isLessThan(1e-8);
    }
}
