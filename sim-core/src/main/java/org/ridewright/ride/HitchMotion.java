package org.ridewright.ride;

import java.util.List;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.math.Sinusoid;
import org.ridewright.vehicle.Hitch;

/** Height of a hitch's held end against time. */
final class HitchMotion {
    private HitchMotion() {}

    static PiecewisePolynomial height(Hitch.Motion motion, double duration) {
        if (motion instanceof Hitch.Motion.Sinusoid sine) {
            return Sinusoid.grown(
                    sine.amplitude().value(), 2 * Math.PI * sine.frequency().value(), 1, duration);
        } else if (motion instanceof Hitch.Motion.Recorded recorded) {
            return recorded(recorded.points());
        }
        return PiecewisePolynomial.constant(0);
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
