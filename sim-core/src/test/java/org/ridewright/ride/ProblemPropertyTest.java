package org.ridewright.ride;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.ridewright.solver.Problem;

/** The solver on equations that stray further than a vehicle would. */
class ProblemPropertyTest {
    @Provide
    Arbitrary<Problem> problems() {
        return GeneratedProblem.any(3);
    }

    @Provide
    Arbitrary<Problem> roundedProblems() {
        return GeneratedProblem.any(6);
    }

    @Property(tries = 120, seed = "21", shrinking = ShrinkingMode.OFF)
    void everyForceIsThatOfItsLaw(@ForAll("problems") Problem problem) {
        Bench.right(problem);
    }

    /** Heights of a higher degree than the series would otherwise need. */
    @Property(tries = 120, seed = "22", shrinking = ShrinkingMode.OFF)
    void everyForceIsThatOfItsLawOnAnUnevenRoad(@ForAll("roundedProblems") Problem problem) {
        Bench.right(problem);
    }

    /** Displacements within a hundredth of a micrometre at every millisecond. */
    @Property(tries = 60, seed = "23", shrinking = ShrinkingMode.OFF)
    void bothSolversAgree(@ForAll("problems") Problem problem) {
        assertThat(Bench.apartFromReference(problem)).isLessThan(1e-8);
    }
}
