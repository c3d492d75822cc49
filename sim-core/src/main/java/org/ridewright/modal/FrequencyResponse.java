package org.ridewright.modal;

import java.util.Arrays;
import org.hipparchus.complex.Complex;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.dynamics.WheelPlace;
import org.ridewright.dynamics.WheelPush;
import org.ridewright.math.ComplexSystem;

/**
 * Response of the linear vehicle to a sinusoidal road of unit amplitude, {@code (K − ω² M + iωC) q = −Σ B_iᵀ (k_i + iω d_i) u_i}.
 *
 * <p>A wheel that pushes along its contact normal adds {@code row N iωu/v}, N its load at rest; only where the vehicle surges, and at a
 * stated speed.
 */
public final class FrequencyResponse {
    private final VehicleModel model;
    private final LinearModel linear;
    private final RoadInput input;
    private final double[][] mass;
    private final double[][] stiffness;
    private final double[][] damping;

    public FrequencyResponse(VehicleModel model, LinearModel linear, RoadInput input) {
        this.model = model;
        this.linear = linear;
        this.input = input;
        mass = linear.massMatrix();
        stiffness = linear.stiffnessMatrix();
        damping = linear.dampingMatrix();
    }

    /**
     * Coordinates at a frequency.
     *
     * @param frequency (Hz), > 0
     * @return q of each coordinate over the road's amplitude (m/m or rad/m), new
     */
    public Complex[] at(double frequency) {
        double omega = 2 * Math.PI * frequency;
        int n = linear.size();
        double[][] real = new double[n][n];
        double[][] imaginary = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                real[i][j] = stiffness[i][j] - omega * omega * mass[i][j];
                imaginary[i][j] = omega * damping[i][j];
            }
        }
        return ComplexSystem.solve(real, imaginary, forces(omega));
    }

    private Complex[] forces(double omega) {
        Complex[] forces = new Complex[linear.size()];
        Arrays.fill(forces, Complex.ZERO);
        for (WheelPlace wheel : model.wheels()) {
            int e = wheel.element();
            Complex u = height(wheel, omega);
            Complex f = u.multiply(new Complex(linear.rate(e), omega * linear.damping(e)));
            add(forces, linear.equations().elements().get(e).row(), f.negate());
        }
        for (WheelPush push : linear.equations().pushes().wheels()) {
            WheelPlace wheel = model.wheels().stream()
                    .filter(w -> w.element() == push.element())
                    .findFirst()
                    .orElseThrow();
            double load = linear.rest().force()[push.element()];
            double factor = Double.isInfinite(input.speed()) ? 0 : load * omega / input.speed();
            add(forces, push.row(), height(wheel, omega).multiply(new Complex(0, factor)));
        }
        return forces;
    }

    /** Height of the ground under a wheel over the road's amplitude. */
    Complex height(WheelPlace wheel, double omega) {
        return input.under(wheel, model.vehicle().axles().get(0).x(), omega);
    }

    private static void add(Complex[] forces, double[] row, Complex f) {
        for (int i = 0; i < forces.length; i++) {
            forces[i] = forces[i].add(f.multiply(row[i]));
        }
    }

    /** A row of the coordinates, such as the rise of a seat (m/m). */
    public static Complex of(double[] row, Complex[] q) {
        Complex sum = Complex.ZERO;
        for (int i = 0; i < q.length; i++) {
            sum = sum.add(q[i].multiply(row[i]));
        }
        return sum;
    }

    /** Compression of an element over the road's amplitude. */
    Complex compression(int element, Complex[] q, double omega) {
        Complex c = of(linear.equations().elements().get(element).row(), q);
        for (WheelPlace wheel : model.wheels()) {
            if (wheel.element() == element) {
                c = c.add(height(wheel, omega));
            }
        }
        return c;
    }
}
