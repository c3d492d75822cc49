package org.ridewright.solver;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.Test;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.FrictionLaw;

class SolverAllocationTest {
    private static final StepListener NOTHING = step -> {};

    /** A run ten times as long, with ten times the steps and switches, allocates no more. */
    @Test
    void stepsAndSwitchesAllocateNothing() {
        long warm = allocated(40);
        for (int i = 0; i < 5; i++) {
            warm = allocated(40);
        }
        long shortRun = allocated(4);
        assertThat(warm - shortRun).isLessThan(4096);
    }

    private static long allocated(int cycles) {
        PiecewisePolynomial drive = RegimeSolverTest.sine(0.02, 6, 40);
        ForceLaw law = ForceLaw.spring(40_000).withFriction(FrictionLaw.single(0.05, 20, 80_000));
        Problem problem = Oscillator.driven(300, law, drive, 0, cycles * 2 * Math.PI / 6);
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long id = Thread.currentThread().getId();
        long before = threads.getThreadAllocatedBytes(id);
        Solution solution = RegimeSolver.solve(problem, NOTHING);
        long after = threads.getThreadAllocatedBytes(id);
        assertThat(solution.statistics().frictionSwitches()).isGreaterThan(cycles);
        return after - before;
    }
}
