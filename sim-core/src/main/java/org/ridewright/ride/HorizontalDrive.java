package org.ridewright.ride;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.dynamics.Pushes;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.vehicle.FurtherMotions.Pull;

/** What drives a vehicle horizontally, against time: its speed where it surges, then a horse's step. */
final class HorizontalDrive {
    /** Pieces to a cycle of a sinusoid: seventh-degree pieces this short err by less than 1e-9 of the amplitude. */
    private static final int PIECES_PER_CYCLE = 48;

    private static final int DEGREE = 7;
    /** Coefficients of a speed that changes. */
    private static final int SPEED_TERMS = 4;

    private HorizontalDrive() {}

    static List<PiecewisePolynomial> of(VehicleModel model, Travel travel, double duration) {
        Pushes pushes = model.equations().pushes();
        List<PiecewisePolynomial> inputs = new ArrayList<>();
        if (pushes.speed() >= 0) {
            inputs.add(speed(travel));
        }
        if (!pushes.stated().isEmpty()) {
            inputs.add(pull(model.vehicle().further().pull().orElseThrow(), duration));
        }
        return inputs;
    }

    /** The speed of a plan, one piece to each change and to each steady stretch between two (m/s). */
    static PiecewisePolynomial speed(Travel travel) {
        double[] seams = travel.seams();
        double last = travel.speed(Double.POSITIVE_INFINITY);
        if (seams.length == 0) {
            return PiecewisePolynomial.constant(last);
        }
        double[][] pieces = new double[seams.length - 1][SPEED_TERMS];
        for (int i = 0; i < pieces.length; i++) {
            travel.expandSpeed(seams[i], 1, pieces[i]);
        }
        return new PiecewisePolynomial(seams, pieces, last);
    }

    /**
     * {@code A sin ωt}, growing evenly over the first period T: {@code A (t/T) sin ωt} has the impulse {@code −A/ω}, so that the speed then
     * swings about what it was before and does not drift.
     */
    static PiecewisePolynomial pull(Pull pull, double duration) {
        double amplitude = pull.amplitude().value();
        double omega = 2 * Math.PI * pull.frequency().value();
        double dt = 2 * Math.PI / omega / PIECES_PER_CYCLE;
        int pieces = (int) Math.ceil(duration / dt) + 1;
        double[] joints = new double[pieces + 1];
        double[][] a = new double[pieces][];
        for (int i = 0; i <= pieces; i++) {
            joints[i] = i * dt;
        }
        for (int i = 0; i < pieces; i++) {
            a[i] = sine(amplitude, omega, joints[i]);
            if (i < PIECES_PER_CYCLE) {
                grow(a[i], (double) i / PIECES_PER_CYCLE, 1 / (dt * PIECES_PER_CYCLE));
            }
        }
        return new PiecewisePolynomial(joints, a, 0);
    }

    /** Times {@code start + slope·t}. */
    private static void grow(double[] a, double start, double slope) {
        for (int k = a.length - 1; k >= 0; k--) {
            a[k] = start * a[k] + (k > 0 ? slope * a[k - 1] : 0);
        }
    }

    /** Taylor coefficients of {@code A sin ωt} about t. */
    private static double[] sine(double amplitude, double omega, double t) {
        double[] c = new double[DEGREE + 1];
        double factor = amplitude;
        for (int k = 0; k <= DEGREE; k++) {
            c[k] = factor * Math.sin(omega * t + k * Math.PI / 2);
            factor *= omega / (k + 1);
        }
        return c;
    }
}
