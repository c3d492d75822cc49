package org.ridewright.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.ride.LinearReadOff.Source;
import org.ridewright.solver.Problem;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.solver.Solution;
import org.ridewright.suspension.ForceLaw;

/** The solver's invariants by the numbers of its {@code package-info}; 1 to 3 are looked at in every step by {@link LawScan}. */
class InvariantsTest {
    @Provide
    Arbitrary<Problem> problems() {
        return GeneratedProblem.any(3);
    }

    /** Invariant 4: no step reaches over a joint of a height or over the end of the run. */
    @Property(tries = 60, seed = "41", shrinking = ShrinkingMode.OFF)
    void noStepReachesOverAJoint(@ForAll("problems") Problem problem) {
        double[] end = {0};
        RegimeSolver.solve(problem, step -> {
            end[0] = step.start() + step.duration();
            double hair = 1e-14;
            for (int i = 0; i < problem.heights().size(); i++) {
                PiecewisePolynomial height = problem.heights().get(i).block(0);
                for (int j = 0; j <= height.pieces(); j++) {
                    double joint = height.joint(j);
                    assertThat(step.start() < joint - hair && end[0] > joint + hair)
                            .as("joint at %s s within %s to %s s", joint, step.start(), end[0])
                            .isFalse();
                }
            }
        });
        assertThat(end[0]).isCloseTo(problem.duration(), within(1e-14));
    }

    /** Invariant 5: where a ramp begins and where it ends, a sample has the damper's force as it is from there on. */
    @Test
    void aSampleAtAJointIsTheRightHandLimit() {
        double m = 80;
        double d = 900;
        double slope = 0.1;
        PiecewisePolynomial ramp =
                new PiecewisePolynomial(new double[] {0.25, 0.5}, new double[][] {{0, slope}}, 0.25 * slope);
        ForceLaw law = ForceLaw.contact(5e4, d);
        Problem problem = Bench.one(m, law, ramp, -m * Bench.G / 5e4, 0, 1);
        ReadOff acceleration = LinearReadOff.named("acceleration", "m/s²")
                .plus(Source.ACCELERATION, 0, 1)
                .build();
        SampleRecorder recorder = new SampleRecorder(List.of(acceleration), 100, 1);
        double[] before = {Double.NaN};
        RegimeSolver.solve(problem, step -> {
            recorder.step(step);
            if (step.start() < 0.5) {
                before[0] = step.acceleration(0, step.end());
            }
        });
        assertThat(recorder.channels().get(0).sample(24)).isCloseTo(0, within(1e-12));
        assertThat(recorder.channels().get(0).sample(25)).isCloseTo(d * slope / m, within(1e-12));
        assertThat(recorder.channels().get(0).sample(50)).isCloseTo(before[0] - d * slope / m, within(1e-10));
    }

    /** Invariant 6: the same equations and heights give the same bits. */
    @Property(tries = 20, seed = "42", shrinking = ShrinkingMode.OFF)
    void theSameProblemGivesTheSameBits(@ForAll("problems") Problem problem) {
        Solution first = RegimeSolver.solve(problem, step -> {});
        Solution second = RegimeSolver.solve(problem, step -> {});
        assertThat(second.q()).isEqualTo(first.q());
        assertThat(second.v()).isEqualTo(first.v());
        assertThat(second.friction()).isEqualTo(first.friction());
        assertThat(second.energy().dissipatedByElement())
                .isEqualTo(first.energy().dissipatedByElement());
    }
}
