package org.ridewright.validation;

import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * The steady motion of {@link FrictionOscillator} without stops, matched over half a cycle from turning point to turning point, for
 * a slider of finite locked rate k_p; m = k = F₀ = 1, ω = r.
 *
 * <p>At t = 0 the mass turns at x = X with the slider at +F. It is locked until x has fallen by 2F/k_p, and slides at −F from there:
 *
 * <pre>
 *   locked    ẍ + (1 + k_p) x = cos(rt + φ) − F + k_p X        x(0) = X, ẋ(0) = 0
 *   sliding   ẍ + x = cos(rt + φ) + F                          x, ẋ continuous
 *   symmetry  x(π/r) = −X, ẋ(π/r) = 0
 * </pre>
 *
 * Both linear equations have sines and cosines for solutions; what is left is the instant t* of sliding, a root of {@code x(t*) = X
 * − 2F/k_p}, and X and φ from the two conditions of symmetry, found by Newton's method from Den Hartog's limit k_p → ∞, {@code X² =
 * V² − (U F)²}, {@code cos φ = X/V}, {@code sin φ = −U F/V} with V = 1/(1 − r²), U = tan(π/2r)/r.
 */
final class HalfCycle {
    private static final int MOST_PASSES = 30;
    private static final double NUDGE = 1e-7;

    private final double r;
    private final double friction;
    private final double lockedRate;

    HalfCycle(double r, double friction, double lockedRate) {
        this.r = r;
        this.friction = friction;
        this.lockedRate = lockedRate;
    }

    /** Den Hartog's amplitude, k_p → ∞. */
    static double rigidAmplitude(double r, double friction) {
        return Math.sqrt(v(r) * v(r) - Math.pow(u(r) * friction, 2));
    }

    private static double v(double r) {
        return 1 / (1 - r * r);
    }

    private static double u(double r) {
        return Math.sin(Math.PI / r) / (r * (1 + Math.cos(Math.PI / r)));
    }

    /** The amplitude X. */
    double amplitude() {
        double x = rigidAmplitude(r, friction);
        double phi = Math.atan2(-u(r) * friction / v(r), x / v(r));
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            double[] miss = miss(x, phi);
            double[] byX = miss(x + NUDGE, phi);
            double[] byPhi = miss(x, phi + NUDGE);
            double a = (byX[0] - miss[0]) / NUDGE;
            double b = (byPhi[0] - miss[0]) / NUDGE;
            double c = (byX[1] - miss[1]) / NUDGE;
            double d = (byPhi[1] - miss[1]) / NUDGE;
            double determinant = a * d - b * c;
            double dx = (d * miss[0] - b * miss[1]) / determinant;
            double dphi = (a * miss[1] - c * miss[0]) / determinant;
            x -= dx;
            phi -= dphi;
            if (Math.abs(dx) + Math.abs(dphi) < 1e-13) {
                break;
            }
        }
        return x;
    }

    /** {@code x + X} and {@code ẋ} half a cycle after a turn. */
    private double[] miss(double x, double phi) {
        double omega = Math.sqrt(1 + lockedRate);
        double p = 1 / (1 + lockedRate - r * r);
        double centre = (lockedRate * x - friction) / (1 + lockedRate);
        double a = x - centre - p * Math.cos(phi);
        double b = p * r * Math.sin(phi) / omega;
        double slip = 2 * friction / lockedRate;
        double sliding = new BrentSolver(1e-15, 1e-15, 1e-16)
                .solve(
                        200,
                        t -> centre
                                + p * Math.cos(r * t + phi)
                                + a * Math.cos(omega * t)
                                + b * Math.sin(omega * t)
                                - x
                                + slip,
                        0,
                        Math.PI / omega);
        double xs = x - slip;
        double vs = -p * r * Math.sin(r * sliding + phi)
                + omega * (b * Math.cos(omega * sliding) - a * Math.sin(omega * sliding));
        double a2 = xs - friction - v(r) * Math.cos(r * sliding + phi);
        double b2 = vs + v(r) * r * Math.sin(r * sliding + phi);
        double half = Math.PI / r;
        double t = half - sliding;
        return new double[] {
            friction + v(r) * Math.cos(Math.PI + phi) + a2 * Math.cos(t) + b2 * Math.sin(t) + x,
            -v(r) * r * Math.sin(Math.PI + phi) - a2 * Math.sin(t) + b2 * Math.cos(t)
        };
    }
}
