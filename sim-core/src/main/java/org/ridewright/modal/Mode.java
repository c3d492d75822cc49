package org.ridewright.modal;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A vibration mode about the position of rest.
 *
 * @param name after what moves most, such as {@code pitch} or {@code rear axle tramp}; unlike those of its fellows
 * @param motion what moves most
 * @param frequency natural frequency without damping (Hz); 0 where nothing brings it back
 * @param shape φ, one entry per coordinate, {@code φᵀ M φ = 1}; not to be modified
 * @param participations shares of the kinetic energy, greatest first
 * @param centreBehindMass where the body's middle line does not move, behind its centre of mass (m), {@code −Z/θ}; absent where it does not
 *     pitch
 * @param damped the same mode with its dampers; absent where it dies away without swinging
 */
public record Mode(
        String name,
        Motion motion,
        double frequency,
        double[] shape,
        List<Participation> participations,
        OptionalDouble centreBehindMass,
        Optional<DampedSwing> damped) {

    /**
     * How a mode swings out.
     *
     * @param frequency with which it swings (Hz)
     * @param ratio damping ratio ζ
     */
    public record DampedSwing(double frequency, double ratio) {}

    /** Angular natural frequency (rad/s). */
    public double omega() {
        return 2 * Math.PI * frequency;
    }

    /** Share of the kinetic energy in all motions of a kind. */
    public double share(Motion kind) {
        return participations.stream()
                .filter(p -> p.motion() == kind)
                .mapToDouble(Participation::share)
                .sum();
    }

    /** Whether nothing brings it back: the vehicle rolls along. */
    public boolean free() {
        return frequency == 0;
    }
}
