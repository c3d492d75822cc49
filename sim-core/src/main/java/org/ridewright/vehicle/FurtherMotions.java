package org.ridewright.vehicle;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.ridewright.quantity.Measure;

/**
 * Horizontal motions beyond heave, roll and pitch, and what holds and drives them.
 *
 * @param motions that are coordinates of this vehicle; often none
 * @param holds what holds the vehicle fore and aft; none lets it roll freely
 * @param pull a horse's step
 * @param swayFrequency at which the loaded body sways if it neither rolls nor its axles do (Hz); absent: from rates of the axles, or
 *     estimated
 * @param swayDampingRatio of that motion; absent: estimated
 */
public record FurtherMotions(
        List<Motion> motions,
        List<Hold> holds,
        Optional<Pull> pull,
        Optional<Measure> swayFrequency,
        Optional<Measure> swayDampingRatio) {
    public FurtherMotions {
        motions = motions.stream().distinct().toList();
        holds = List.copyOf(holds);
    }

    /** A horizontal motion. */
    public enum Motion {
        /** Departure of the undercarriage from steady travel. */
        SURGE,
        /** Sideways motion of the body at its roll axis. */
        SWAY;

        /** The word as written in files. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * Traces, drawbar or brake.
     *
     * @param aboveGround height at which it holds the body (m); absent: it holds the undercarriage
     * @param rate (N/m), > 0
     * @param damping a coefficient, or none
     */
    public record Hold(String name, Optional<Measure> aboveGround, Measure rate, Damping damping) {}

    /**
     * A pull that grows and slackens with each step, beside the steady one that keeps the speed.
     *
     * @param frequency of steps (Hz), > 0
     * @param amplitude (N), > 0
     * @param aboveGround height at which it acts on the body (m); absent: it acts on the undercarriage
     */
    public record Pull(Measure frequency, Measure amplitude, Optional<Measure> aboveGround) {}

    /** Whether a motion is a coordinate of the vehicle. */
    public boolean has(Motion motion) {
        return motions.contains(motion);
    }

    /** The same with the given motions. */
    public FurtherMotions with(Motion... others) {
        return new FurtherMotions(Arrays.asList(others), holds, pull, swayFrequency, swayDampingRatio);
    }
}
