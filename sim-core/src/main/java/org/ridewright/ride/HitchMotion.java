package org.ridewright.ride;

import java.util.List;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.vehicle.Hitch;

/** Height of a hitch's held end against time. */
final class HitchMotion {
    /** Pieces to a cycle of a sinusoid: seventh-degree pieces this short err by less than 1e-9 of the amplitude. */
    private static final int PIECES_PER_CYCLE = 48;

    private HitchMotion() {}

    static PiecewisePolynomial height(Hitch.Motion motion, double duration) {
        if (motion instanceof Hitch.Motion.Sinusoid sine) {
            return sinusoid(
                    sine.amplitude().value(), 2 * Math.PI * sine.frequency().value(), duration);
        } else if (motion instanceof Hitch.Motion.Recorded recorded) {
            return recorded(recorded.points());
        }
        return PiecewisePolynomial.constant(0);
    }

    /** {@code a sin ωt}, over the first period times {@code ½(1 − cos ωt/2)}; Taylor pieces about their left joints. */
    private static PiecewisePolynomial sinusoid(double amplitude, double omega, double duration) {
        double dt = 2 * Math.PI / omega / PIECES_PER_CYCLE;
        int pieces = (int) Math.ceil(duration / dt) + 1;
        double[] joints = new double[pieces + 1];
        double[][] a = new double[pieces][];
        for (int i = 0; i <= pieces; i++) {
            joints[i] = i * dt;
        }
        for (int i = 0; i < pieces; i++) {
            double[] whole = sine(amplitude, omega, joints[i]);
            if (i >= PIECES_PER_CYCLE) {
                a[i] = whole;
                continue;
            }
            double[] slow = sine(-amplitude / 4, 1.5 * omega, joints[i]);
            double[] slower = sine(-amplitude / 4, 0.5 * omega, joints[i]);
            a[i] = new double[whole.length];
            for (int k = 0; k < whole.length; k++) {
                a[i][k] = whole[k] / 2 + slow[k] + slower[k];
            }
        }
        return new PiecewisePolynomial(joints, a, 0);
    }

    /** Taylor coefficients of {@code a sin ωt} about t. */
    private static double[] sine(double a, double omega, double t) {
        double[] c = new double[8];
        double factor = a;
        for (int k = 0; k < c.length; k++) {
            c[k] = factor * Math.sin(omega * t + k * Math.PI / 2);
            factor *= omega / (k + 1);
        }
        return c;
    }

    private static PiecewisePolynomial recorded(List<Hitch.Motion.Point> points) {
        int pieces = points.size() - 1;
        double[] joints = new double[pieces + 1];
        double[][] a = new double[pieces][];
        for (int i = 0; i <= pieces; i++) {
            joints[i] = points.get(i).time().value();
        }
        for (int i = 0; i < pieces; i++) {
            double from = points.get(i).height().value();
            double to = points.get(i + 1).height().value();
            a[i] = new double[] {from, (to - from) / (joints[i + 1] - joints[i])};
        }
        return new PiecewisePolynomial(joints, a, points.get(pieces).height().value());
    }
}
