package org.ridewright.ride;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The properties of {@link RidePropertyTest} and {@link StandingPropertyTest} on as many vehicles as one has patience for:
 * {@code -Dsweep.count}, begun from {@code -Dsweep.seed}.
 */
@Tag("sweep")
class RideSweepTest {
    private interface Check {
        void run(GeneratedVehicle vehicle, GeneratedRoad road, Random random);
    }

    private final RidePropertyTest rides = new RidePropertyTest();
    private final StandingPropertyTest standing = new StandingPropertyTest();

    private final List<Check> checks = List.of(
            (v, r, random) -> rides.everyForceIsThatOfItsLawAtEveryInstant(v, r),
            (v, r, random) -> rides.aMirroredVehicleOnAMirroredRoadGivesAMirroredRide(v, r),
            rides::theOrderOfTheElementsDoesNotMatter,
            (v, r, random) -> rides.aSpringInTwoOrThreeLikePartsIsTheSpring(v, r),
            (v, r, random) -> rides.aHelperThatIsNeverTouchedIsAbsent(v, r),
            (v, r, random) -> rides.theLengthOfTheStepsDoesNotMatter(v, r),
            rides::aRunInTwoPartsIsTheRun,
            (v, r, random) -> rides.whileNothingSwitchesMotionsAddUp(v, random),
            (v, r, random) -> standing.wheelLoadsBalanceTheWeightAndBothMoments(v, random.nextInt(3) - 1),
            (v, r, random) -> standing.aLoadAtTheStiffnessCentreRaisesEveryWheel(v),
            (v, r, random) -> standing.aStandingVehicleStaysAtRest(v, random.nextInt(3) - 1));

    @Test
    void thePropertiesHoldForManyMoreVehicles() {
        long first = Long.getLong("sweep.seed", 1000);
        int count = Integer.getInteger("sweep.count", 500);
        List<String> failures = new ArrayList<>();
        for (long seed = first; seed < first + count; seed++) {
            for (int c = 0; c < checks.size(); c++) {
                Random random = new Random(seed);
                GeneratedVehicle vehicle = GeneratedVehicle.any(random);
                GeneratedRoad road = GeneratedRoad.any(random);
                try {
                    checks.get(c).run(vehicle, road, random);
                } catch (RuntimeException | AssertionError e) {
                    failures.add("seed " + seed + ", check " + c + ": " + e.getMessage());
                }
            }
        }
        assertThat(failures).isEmpty();
    }
}
