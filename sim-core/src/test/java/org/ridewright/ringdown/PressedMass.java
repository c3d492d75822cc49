package org.ridewright.ringdown;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A mass on a spring whose friction turns over gradually, pressed down, held and let go, by small steps of time:
 *
 * <pre>
 *   ẍ + 2ζω ẋ + ω² x + s = 0      ṡ = (ω²/q) ẋ while |s| &lt; f, and s = ±f while sliding
 * </pre>
 *
 * <p>Leapfrog steps of 0.1 ms.
 */
final class PressedMass {
    private static final double STEP = 1e-4;
    private static final double PRESSING = 0.9;

    private final double omega;
    private final double zeta;
    private final double friction;
    private final double softness;
    private final double[] accelerations;
    private final List<Double> turns = new ArrayList<>();

    /**
     * @param frequency ω/2π (Hz)
     * @param zeta ζ
     * @param frictionLength F/k (m)
     * @param softness q = k/k_p
     * @param length of the record (s)
     */
    PressedMass(double frequency, double zeta, double frictionLength, double softness, double length) {
        this.omega = 2 * Math.PI * frequency;
        this.zeta = zeta;
        this.friction = frictionLength * omega * omega;
        this.softness = softness;
        this.accelerations = new double[(int) (length / STEP)];
    }

    /** Pressed down by a depth (m) within 0.9 s before it is let go at a time (s), and held there for the last half second. */
    PressedMass pressed(double depth, double at) {
        int press = (int) ((at - 0.5 - PRESSING) / STEP);
        int hold = (int) ((at - 0.5) / STEP);
        int release = (int) (at / STEP);
        Arrays.fill(accelerations, press, accelerations.length, 0);
        for (int i = press; i < hold; i++) {
            double t = (i - press) * STEP;
            accelerations[i] = -depth / 2 * Math.pow(Math.PI / PRESSING, 2) * Math.cos(Math.PI * t / PRESSING);
        }
        double x = -depth;
        double v = 0;
        double s = -friction;
        turns.add(x);
        for (int i = release; i < accelerations.length; i++) {
            double a = -2 * zeta * omega * v - omega * omega * x - s;
            accelerations[i] = a;
            double before = v;
            v += STEP * a;
            if (before * v < 0) {
                turns.add(x);
            }
            x += STEP * v;
            s = Math.max(-friction, Math.min(friction, s + omega * omega / softness * STEP * v));
        }
        return this;
    }

    /** Where it turned (m), from where it was let go. */
    List<Double> turns() {
        return List.copyOf(turns);
    }

    double acceleration(double t) {
        int i = (int) (t / STEP);
        return i < 0 || i >= accelerations.length ? 0 : accelerations[i];
    }
}
