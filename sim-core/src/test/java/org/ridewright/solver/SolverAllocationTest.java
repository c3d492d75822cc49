package org.ridewright.solver;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.FrictionLaw;
import org.ridewright.suspension.GasLaw;
import org.ridewright.suspension.Pieces;

/** A run ten times as long, with ten times the steps and switches, allocates no more, whatever the law. */
class SolverAllocationTest {
    private static final StepListener NOTHING = step -> {};
    private static final double OMEGA = 6;
    private static final double MASS = 300;

    /** One law on a bench that moves, and the weight that presses on it. */
    private record Bench(String name, ForceLaw law, double weight) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Bench> laws() {
        ForceLaw spring = ForceLaw.spring(40_000);
        ForceLaw gas = new ForceLaw(
                0,
                20_000,
                Pieces.NONE,
                0,
                Pieces.NONE,
                Optional.of(new GasLaw(4000, 0.3, 1.3)),
                FrictionLaw.single(0.05, 20, 80_000),
                false);
        Pieces stages = Pieces.of(List.of(new Pieces.Piece(30_000, 0.01, 1), new Pieces.Piece(50_000, -0.01, -1)));
        Pieces bump = Pieces.of(List.of(new Pieces.Piece(200, 0, 1), new Pieces.Piece(-100, 0.05, 1)));
        return Stream.of(
                new Bench("slider", spring.withFriction(FrictionLaw.single(0.05, 20, 80_000)), 0),
                new Bench("envelope", spring.withFriction(FrictionLaw.envelope(0.05, 20, 1e-3)), 0),
                new Bench("gas with a slider", gas, 0),
                new Bench(
                        "stages and damper segments",
                        spring.withStages(stages).withDamping(300).withSpeedStages(bump),
                        0),
                new Bench("contact that lifts off", ForceLaw.contact(400_000, 1500), MASS * 0.3));
    }

    @ParameterizedTest
    @MethodSource("laws")
    void stepsAndSwitchesAllocateNothing(Bench bench) {
        long warm = allocated(bench, 40);
        for (int i = 0; i < 5; i++) {
            warm = allocated(bench, 40);
        }
        long shortRun = allocated(bench, 4);
        assertThat(warm - shortRun).isLessThan(4096);
    }

    private static long allocated(Bench bench, int cycles) {
        PiecewisePolynomial drive = RegimeSolverTest.sine(0.02, OMEGA, 40);
        Problem problem = Oscillator.driven(MASS, bench.law(), drive, bench.weight(), cycles * 2 * Math.PI / OMEGA);
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long id = Thread.currentThread().getId();
        long before = threads.getThreadAllocatedBytes(id);
        Solution solution = RegimeSolver.solve(problem, NOTHING);
        long after = threads.getThreadAllocatedBytes(id);
        assertThat(solution.statistics().switches()).isGreaterThan(cycles);
        assertThat(solution.statistics().steps()).isGreaterThan(200L * cycles - 10);
        return after - before;
    }
}
