package org.ridewright.bounce;

import java.util.List;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.modal.Condition;
import org.ridewright.modal.Mode;
import org.ridewright.modal.Modes;

/**
 * The vibration mode that a bounce test shows most. Pressed with a force along the row r and let go, an undamped vehicle moves as
 * {@code Σ φ_i (φ_i·r)/ω_i² cos ω_i t}; of what is read along the row p, mode i makes {@code (p·φ_i)(φ_i·r)/ω_i²}. The partner is the mode for
 * which that is greatest.
 *
 * @param condition of the springs
 * @param mode whose part is greatest
 * @param share of its part in the sum of the sizes of all parts, 0 to 1
 */
public record NaturalPartner(Condition condition, Mode mode, double share) {
    /** The partner of a kind of test, among the modes of the same vehicle and load. */
    public static NaturalPartner of(BounceKind kind, VehicleModel model, Modes modes, Condition condition) {
        BodyPlaces places = new BodyPlaces(model);
        double[] pressed = places.pressed(kind, 1);
        double[] read = places.readings(1).stream()
                .filter(reading -> reading.motion() == kind.counted())
                .map(BodyReading::row)
                .findFirst()
                .orElseThrow();
        return of(condition, modes.modes(), pressed, read);
    }

    static NaturalPartner of(Condition condition, List<Mode> modes, double[] pressed, double[] read) {
        Mode best = modes.get(0);
        double greatest = -1;
        double sum = 0;
        for (Mode mode : modes) {
            if (mode.free()) {
                continue;
            }
            double part = Math.abs(BodyReading.dot(mode.shape(), pressed) * BodyReading.dot(mode.shape(), read))
                    / (mode.omega() * mode.omega());
            sum += part;
            if (part > greatest) {
                greatest = part;
                best = mode;
            }
        }
        return new NaturalPartner(condition, best, greatest / sum);
    }

    /** Natural frequency without damping (Hz). */
    public double frequency() {
        return mode.frequency();
    }
}
