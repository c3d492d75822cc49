package org.ridewright.solver;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.suspension.ForceLaw;

class TallyTest {
    /** Chatter moves on by a little round-off at a time, and yet must be seen as switches that do not settle. */
    @Test
    void switchesWithinTheShortestStepAreOfOneInstant() {
        Problem problem = Oscillator.driven(1, ForceLaw.contact(1e4, 10), PiecewisePolynomial.constant(0), 0, 1);
        Tally tally = new Tally(new GuardTable(new FlatLaws(problem.equations())), 1e-10);
        for (int i = 1; i <= 100; i++) {
            assertThat(tally.cross(0, 2 + i * 5e-13)).isEqualTo(i);
        }
        assertThat(tally.cross(0, 2 + 2e-10)).isEqualTo(1);
        assertThat(tally.switches()).isEqualTo(101);
        assertThat(tally.statistics().contactSwitches()).isEqualTo(101);
    }
}
