package org.ridewright.friction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.FrictionLaw;
import org.ridewright.suspension.SpringLaws;

/** A rubber stop carries load past the leaves: it stiffens the spring and leaves its loss as it was. */
class LoopOnStopTest {
    @ParameterizedTest
    @ValueSource(doubles = {0.04, 0.055, 0.07})
    void aStopAddsStiffnessButNoLoss(double centre) {
        for (FrictionLaw friction :
                new FrictionLaw[] {FrictionLaw.single(0.1, 20, 60_000), FrictionLaw.envelope(0.1, 20, 0.002)}) {
            ForceLaw free = ForceLaw.spring(30_000).withFriction(friction);
            ForceLaw stopped = SpringLaws.withStop(free, 400_000, 0.05, 1);
            Loop without = Loop.of(free, centre, 0.012);
            Loop with = Loop.of(stopped, centre, 0.012);
            assertThat(with.area()).isCloseTo(without.area(), within(1e-6 * without.area()));
            double further =
                    stopped.elasticForce(centre + 0.012) - stopped.elasticForce(centre - 0.012) - 30_000 * 0.024;
            assertThat(with.range() - without.range()).isCloseTo(further, within(1e-6 * with.range()));
        }
    }
}
