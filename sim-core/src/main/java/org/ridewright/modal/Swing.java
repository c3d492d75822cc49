package org.ridewright.modal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.VehicleModel;

/**
 * How frequency and damping of a mode depend on how far it swings, by harmonic balance of dry friction: the mode of the vehicle in which
 * each rubbing element is replaced by its {@link EquivalentFriction} at the amplitude that it has in this very mode.
 *
 * @param travel amplitude of the spring that travels most (m)
 * @param frequency (Hz)
 * @param viscous damping ratio by dampers and contacts, {@code φᵀ C φ/(2ω)}
 * @param friction damping ratio by dry friction, {@code Σ h_i (B_i φ)²/(2ω²)}
 * @param settled whether shape and amplitudes agree
 */
public record Swing(double travel, double frequency, double viscous, double friction, boolean settled) {
    private static final int MOST_ROUNDS = 300;
    private static final double SETTLED = 1e-9;

    /** Damping ratio of both. */
    public double ratio() {
        return viscous + friction;
    }

    /**
     * Of the mode that has most of a motion, at amplitudes from the greatest down.
     *
     * @param travels falling (m), > 0
     * @return empty if no mode of the sliding vehicle has a third of its energy in that motion, or it strains no spring
     */
    public static Optional<List<Swing>> of(VehicleModel model, Motion motion, double[] travels) {
        LinearModel sliding = LinearModel.of(model, Condition.SLIDING);
        FrictionElements friction = new FrictionElements(sliding);
        Optional<Mode> chief = Modes.of(model, Condition.SLIDING).chief(motion);
        if (chief.isEmpty() || travel(sliding, chief.get().shape()) == 0) {
            return Optional.empty();
        }
        List<Swing> swings = new ArrayList<>();
        Mode mode = chief.get();
        for (double travel : travels) {
            double before = 0;
            LinearModel linear = sliding;
            int round = 0;
            for (; round < MOST_ROUNDS && Math.abs(mode.frequency() - before) > SETTLED * before; round++) {
                before = mode.frequency();
                linear = friction.at(amplitudes(sliding, friction, mode, travel), mode.omega());
                mode = alike(mode, Modes.of(model, linear), sliding);
            }
            double viscous = loss(sliding, mode);
            swings.add(new Swing(travel, mode.frequency(), viscous, loss(linear, mode) - viscous, round < MOST_ROUNDS));
        }
        return Optional.of(List.copyOf(swings));
    }

    private static double[] amplitudes(LinearModel sliding, FrictionElements friction, Mode mode, double travel) {
        double scale = travel / travel(sliding, mode.shape());
        double[] amplitudes = new double[friction.count()];
        for (int i = 0; i < amplitudes.length; i++) {
            double[] row =
                    sliding.equations().elements().get(friction.element(i)).row();
            amplitudes[i] = scale * Math.abs(dot(row, mode.shape()));
        }
        return amplitudes;
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
