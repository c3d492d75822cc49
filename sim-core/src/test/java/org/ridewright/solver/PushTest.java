package org.ridewright.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;
import org.ridewright.dynamics.Pushes;
import org.ridewright.dynamics.StatedForce;
import org.ridewright.dynamics.WheelPush;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.suspension.ForceLaw;

/** A wheel of 40 kg under 160 kg on a spring, the whole free to surge, over a wavy path; a stated force beside. */
class PushTest {
    private static final double[] UP = {-1, 0, 0};
    private static final double[] BETWEEN = {1, -1, 0};

    private static Problem problem(PiecewisePolynomial height, PiecewisePolynomial speed, double duration) {
        double[] mass = {40, 0, 0, 0, 160, 0, 0, 0, 230};
        double[] weight = {400, 1600, 0};
        List<Element> elements = List.of(
                new Element(
                        "spring",
                        Element.Kind.SPRING,
                        BETWEEN,
                        -1,
                        ForceLaw.spring(15e3).withDamping(300)),
                new Element("contact", Element.Kind.CONTACT, UP, 0, ForceLaw.contact(400e3, 900)));
        PiecewisePolynomial force = RegimeSolverTest.sine(60, 3, 12);
        Equations equations = new Equations(mass, new double[9], weight, elements, 3)
                .withPushes(new Pushes(
                        List.of(new WheelPush(1, new double[] {0, 0, -1})),
                        1,
                        List.of(new StatedForce("pull", new double[] {0, 0, 1}, 2))));
        double[] rest = {-2000 / 400e3, -2000 / 400e3 - 1600 / 15e3, 0};
        return new Problem(equations, List.of(height, speed, force), rest, new double[3], new double[0], duration);
    }

    /** Slope of a path of which the station runs as {@code X = 2 t + 0.4 t²}: {@code u = 5 mm · X² − 1 mm · X³}. */
    private static Problem speedingUp() {
        double[] x = {0, 2, 0.4};
        double[] square = times(x, x);
        double[] cube = times(square, x);
        double[] u = new double[7];
        for (int k = 0; k < cube.length; k++) {
            u[k] = (k < square.length ? 0.005 * square[k] : 0) - 0.001 * cube[k];
        }
        return problem(
                new PiecewisePolynomial(new double[] {0, 2}, new double[][] {u}, 0),
                new PiecewisePolynomial(new double[] {0, 2}, new double[][] {{2, 0.8}}, 3.6),
                1.5);
    }

    private static double[] times(double[] a, double[] b) {
        double[] c = new double[a.length + b.length - 1];
        for (int i = 0; i < a.length; i++) {
            for (int j = 0; j < b.length; j++) {
                c[i + j] += a[i] * b[j];
            }
        }
        return c;
    }

    @Test
    void theSlopeFollowsASpeedThatChanges() {
        Problem problem = speedingUp();
        double[] reference = new double[3];
        ReferenceSolver.solve(problem, 1e-12, 1000, (t, q, v, a) -> {
            if (Math.abs(t - 1.4) < 1e-9) {
                System.arraycopy(a, 0, reference, 0, 3);
            }
        });
        double[] own = new double[3];
        RegimeSolver.solve(problem, step -> {
            if (step.start() <= 1.4 && 1.4 < step.start() + step.duration()) {
                for (int i = 0; i < 3; i++) {
                    own[i] = step.acceleration(i, (1.4 - step.start()) / step.h());
                }
            }
        });
        for (int i = 0; i < 3; i++) {
            assertThat(own[i]).isCloseTo(reference[i], within(1e-8));
        }
        double x = 2 * 1.4 + 0.4 * 1.4 * 1.4;
        double slope = 0.01 * x - 0.003 * x * x;
        double load = 40 * own[0] + 160 * own[1] + 2000;
        double pull = 60 * Math.sin(3 * 1.4);
        assertThat(own[2]).isCloseTo((pull - load * slope) / 230, within(1e-8));
    }

    @Test
    void theBooksCloseWithASpeedThatChanges() {
        assertThat(RegimeSolver.solve(speedingUp(), step -> {}).energy().relativeResidual())
                .isLessThan(1e-10);
    }

    /** At a steady speed the series of the slope ends where that of the path does. */
    @Test
    void theBooksCloseOverWavesAtASteadySpeed() {
        Problem steady = problem(RegimeSolverTest.sine(0.02, 9, 10), PiecewisePolynomial.constant(3), 6);
        assertThat(RegimeSolver.solve(steady, step -> {}).energy().relativeResidual())
                .isLessThan(1e-10);
    }

    /** A run ten times as long allocates no more. */
    @Test
    void pushesAllocateNothing() {
        for (int i = 0; i < 5; i++) {
            allocated(20);
        }
        long more = allocated(20);
        long less = allocated(2);
        assertThat(more - less).isLessThan(4096);
    }

    private static long allocated(double duration) {
        Problem whole = problem(RegimeSolverTest.sine(0.02, 9, 20), PiecewisePolynomial.constant(3), 20);
        Problem problem =
                new Problem(whole.equations(), whole.heights(), whole.q(), whole.v(), whole.friction(), duration);
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long id = Thread.currentThread().getId();
        long before = threads.getThreadAllocatedBytes(id);
        RegimeSolver.solve(problem, step -> {});
        return threads.getThreadAllocatedBytes(id) - before;
    }
}
