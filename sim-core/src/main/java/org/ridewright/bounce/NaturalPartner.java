package org.ridewright.bounce;

import java.util.Comparator;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.modal.Condition;
import org.ridewright.modal.Mode;
import org.ridewright.modal.Modes;

/**
 * The vibration mode that a bounce test shows. Pressed with a force along the row r and let go, an undamped vehicle moves as
 * {@code Σ φ_i (φ_i·r)/ω_i² cos ω_i t}; of what is read along the row p, mode i makes {@code (p·φ_i)(φ_i·r)/ω_i²}. While the springs slide, the partner
 * is the mode s for which that is greatest; locked, it is the mode for which that times the likeness {@code |φ_sᵀ M φ_i|} is greatest, so that
 * both frequencies are of the same motion as far as there is one.
 *
 * @param condition of the springs
 * @param mode that is shown
 * @param share of its part in the sum of the sizes of all parts, 0 to 1
 */
public record NaturalPartner(Condition condition, Mode mode, double share) {
    /** The partner of a kind of test in either condition. */
    public static Map<Condition, NaturalPartner> of(BounceKind kind, VehicleModel model, Modes sliding, Modes locked) {
        BodyPlaces places = new BodyPlaces(model);
        double[] pressed = places.pressed(kind, 1);
        double[] read = places.readings(1).stream()
                .filter(reading -> reading.motion() == kind.counted())
                .map(BodyReading::row)
                .findFirst()
                .orElseThrow();
        Mode shown = greatest(sliding, mode -> part(mode, pressed, read));
        double[] momentum = times(sliding.linear().massMatrix(), shown.shape());
        Mode alike =
                greatest(locked, mode -> part(mode, pressed, read) * Math.abs(BodyReading.dot(momentum, mode.shape())));
        return Map.of(
                Condition.SLIDING,
                new NaturalPartner(Condition.SLIDING, shown, share(shown, sliding, pressed, read)),
                Condition.LOCKED,
                new NaturalPartner(Condition.LOCKED, alike, share(alike, locked, pressed, read)));
    }

    private static Mode greatest(Modes modes, ToDoubleFunction<Mode> value) {
        return modes.modes().stream()
                .filter(mode -> !mode.free())
                .max(Comparator.comparingDouble(value))
                .orElseThrow();
    }

    private static double share(Mode mode, Modes modes, double[] pressed, double[] read) {
        double sum = modes.modes().stream()
                .filter(each -> !each.free())
                .mapToDouble(each -> part(each, pressed, read))
                .sum();
        return part(mode, pressed, read) / sum;
    }

    private static double part(Mode mode, double[] pressed, double[] read) {
        return Math.abs(BodyReading.dot(mode.shape(), pressed) * BodyReading.dot(mode.shape(), read))
                / (mode.omega() * mode.omega());
    }

    private static double[] times(double[][] matrix, double[] vector) {
        double[] product = new double[vector.length];
        for (int i = 0; i < product.length; i++) {
            product[i] = BodyReading.dot(matrix[i], vector);
        }
        return product;
    }

    /** Natural frequency without damping (Hz). */
    public double frequency() {
        return mode.frequency();
    }
}
