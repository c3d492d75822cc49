package org.ridewright.modal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.VehicleModel;

/**
 * How frequency and damping of a mode depend on how far it swings, by harmonic balance of dry friction: the mode of the vehicle in which
 * each rubbing element is replaced by its {@link EquivalentFriction}.
 *
 * <p>The springs are taken to travel in the proportions of the sliding mode, whatever the amplitude; the mode itself is that of the
 * vehicle so stiffened. Both ends are then exact: at great amplitudes it is the sliding mode, at small ones the locked one. Were the proportions sought
 * from the mode itself, two modes of near frequencies would change into motions of one end or one side, between which a real vehicle
 * wanders.
 *
 * @param travel amplitude of the spring that travels most (m)
 * @param frequency (Hz)
 * @param viscous damping ratio by dampers and contacts, {@code φᵀ C φ/(2ω)}
 * @param friction damping ratio by dry friction, {@code Σ h_i (B_i φ)²/(2ω²)}
 */
public record Swing(double travel, double frequency, double viscous, double friction) {
    /** Damping ratio of both. */
    public double ratio() {
        return viscous + friction;
    }

    /**
     * Of a mode of the sliding vehicle, at amplitudes from the greatest down.
     *
     * @param travels falling (m), > 0
     * @return empty if the mode strains no spring
     */
    public static Optional<List<Swing>> of(VehicleModel model, Mode slidingMode, double[] travels) {
        LinearModel sliding = LinearModel.of(model, Condition.SLIDING);
        FrictionElements friction = new FrictionElements(sliding);
        if (travel(sliding, slidingMode.shape()) == 0) {
            return Optional.empty();
        }
        List<Swing> swings = new ArrayList<>();
        Mode mode = slidingMode;
        double unit = travel(sliding, mode.shape());
        double[] shares = new double[friction.count()];
        for (int i = 0; i < shares.length; i++) {
            double[] row =
                    sliding.equations().elements().get(friction.element(i)).row();
            shares[i] = Math.abs(dot(row, mode.shape())) / unit;
        }
        for (double travel : travels) {
            double[] amplitudes = Arrays.stream(shares).map(s -> s * travel).toArray();
            // the frequency enters only the damping, which shifts no frequency here: two rounds settle it
            LinearModel linear = friction.at(amplitudes, mode.omega());
            mode = alike(mode, Modes.of(model, linear), sliding);
            linear = friction.at(amplitudes, mode.omega());
            double viscous = loss(sliding, mode);
            swings.add(new Swing(travel, mode.frequency(), viscous, loss(linear, mode) - viscous));
        }
        return Optional.of(List.copyOf(swings));
    }

    /** Travel of the suspension spring that travels most in a shape. */
    private static double travel(LinearModel linear, double[] shape) {
        return linear.equations().elements().stream()
                .filter(e -> e.kind() == Element.Kind.SPRING)
                .mapToDouble(e -> Math.abs(dot(e.row(), shape)))
                .max()
                .orElse(0);
    }

    /** The mode with the greatest part of this one in it. */
    private static Mode alike(Mode mode, Modes modes, LinearModel linear) {
        double[][] mass = linear.massMatrix();
        Mode best = mode;
        double most = -1;
        for (Mode each : modes.modes()) {
            double common = 0;
            for (int i = 0; i < mass.length; i++) {
                common += each.shape()[i] * dot(mass[i], mode.shape());
            }
            if (Math.abs(common) > most && !each.free()) {
                most = Math.abs(common);
                best = each;
            }
        }
        return best;
    }

    private static double loss(LinearModel linear, Mode mode) {
        double[][] damping = linear.dampingMatrix();
        double sum = 0;
        for (int i = 0; i < damping.length; i++) {
            sum += mode.shape()[i] * dot(damping[i], mode.shape());
        }
        return sum / (2 * mode.omega());
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
