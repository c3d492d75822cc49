package org.ridewright.friction;

import java.util.Arrays;
import java.util.List;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;
import org.ridewright.math.PolynomialRange;
import org.ridewright.math.Sinusoid;
import org.ridewright.solver.Problem;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.solver.Step;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.Pieces;

/**
 * A closed load–deflection loop, as the solver drives the force law: an element that follows a stated height {@code c_0 + X sin ωt} and
 * touches no coordinate. The first cycle begins with unstressed friction; the second, once round, is the loop. What a loop looks like
 * does not depend on ω.
 *
 * @param amplitude X (m)
 * @param travel compression over the loop, once round (m); not to be modified
 * @param force there (N); not to be modified
 * @param area {@code ∮ f dc} (J)
 * @param inStep {@code (1/πX) ∮ f sin φ dφ}, first harmonic in step with the travel, over X (N/m)
 * @param range greatest less least force (N)
 */
public record Loop(double amplitude, double[] travel, double[] force, double area, double inStep, double range) {
    private static final double OMEGA = 2 * Math.PI;
    private static final int SAMPLES = 480;
    private static final int ROOM = 64;
    /** Left of the joint where the second cycle begins by less than this is that joint (s). */
    private static final double ROUND_OFF = 1e-9;

    /** @param centre c_0 (m) */
    public static Loop of(ForceLaw law, double centre, double amplitude) {
        return new Run(centre, amplitude).over(law);
    }

    private static final class Run {
        private final double centre;
        private final double amplitude;
        private final PolynomialRange range = new PolynomialRange(ROOM);
        private final double[] travel = new double[SAMPLES + 1];
        private final double[] force = new double[SAMPLES + 1];
        private final double[] c = new double[ROOM];
        private final double[] f = new double[ROOM];
        private int taken;
        private double area;
        private double inStep;

        Run(double centre, double amplitude) {
            this.centre = centre;
            this.amplitude = amplitude;
        }

        Loop over(ForceLaw law) {
            ForceLaw alone = law.withDamping(0).withSpeedStages(Pieces.NONE);
            Element element = new Element("spring", Element.Kind.SPRING, new double[] {0}, 0, alone);
            Equations idle = new Equations(new double[] {1}, new double[] {0}, new double[] {0}, List.of(element), 1);
            double period = 2 * Math.PI / OMEGA;
            Problem problem = new Problem(
                    idle,
                    List.of(Sinusoid.steady(centre, amplitude, OMEGA, 2 * period)),
                    new double[1],
                    new double[1],
                    new double[law.friction().states()],
                    2 * period);
            RegimeSolver.solve(problem, step -> {
                if (step.start() > period - ROUND_OFF) {
                    take(step, period);
                }
            });
            // the last sample lies on the first
            travel[SAMPLES] = travel[0];
            force[SAMPLES] = force[0];
            return new Loop(
                    amplitude,
                    travel,
                    force,
                    area,
                    inStep * OMEGA / (Math.PI * amplitude * amplitude),
                    range.greatest() - range.least());
        }

        private void take(Step step, double period) {
            Arrays.fill(c, 0);
            Arrays.fill(f, 0);
            step.addCompression(0, 1, c);
            step.addForce(0, 1, f);
            int degree = step.degree();
            range.include(f, degree, step.end(), step.start(), step.h());
            // ∫ f ċ dt and ∫ f (c − c_0) dt of polynomials in τ, term by term
            for (int i = 0; i <= degree; i++) {
                for (int k = 0; k <= degree; k++) {
                    if (k > 0) {
                        area += f[i] * k * c[k] * Math.pow(step.end(), i + k) / (i + k);
                    }
                    double away = k == 0 ? c[0] - centre : c[k];
                    inStep += f[i] * away * step.h() * Math.pow(step.end(), i + k + 1) / (i + k + 1);
                }
            }
            double to = step.start() + step.duration();
            for (double t = at(period); taken < SAMPLES && t < to; t = at(period)) {
                double tau = Math.max(0, (t - step.start()) / step.h());
                travel[taken] = value(c, degree, tau);
                force[taken] = value(f, degree, tau);
                taken++;
            }
        }

        private double at(double period) {
            return period * (1 + (double) taken / SAMPLES);
        }

        private static double value(double[] a, int degree, double tau) {
            double sum = 0;
            for (int k = degree; k >= 0; k--) {
                sum = sum * tau + a[k];
            }
            return sum;
        }
    }
}
