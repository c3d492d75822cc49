package org.ridewright.ringdown;

import java.util.Locale;
import java.util.Random;

/**
 * What a phone on the floor of a light cart would have exported while its front was pressed down and let go three times: 100 samples a second with
 * unsteady stamps, askew, noise and coarse steps in the values. Invented, and the file says so.
 */
public final class ExampleBounceLog {
    /** ω/2π (Hz). */
    static final double FREQUENCY = 1.75;

    /** ζ. */
    static final double DAMPING = 0.03;

    /** F/k (m). */
    static final double FRICTION_LENGTH = 0.0032;

    /** k/k_p. */
    static final double SOFTNESS = 0.5;

    private static final double G = 9.80665;
    private static final double RATE = 100;
    private static final double NOISE = 0.03;
    private static final double STEP = 0.0048;
    private static final double JITTER = 0.0007;
    private static final double LENGTH = 30;
    private static final double TILT = Math.toRadians(9);
    private static final double LEAN = Math.toRadians(-4);

    private ExampleBounceLog() {}

    /** The file. */
    public static String text() {
        Random random = new Random(1875);
        PressedMass cart = new PressedMass(FREQUENCY, DAMPING, FRICTION_LENGTH, SOFTNESS, LENGTH)
                .pressed(0.045, 5.21)
                .pressed(0.038, 13.47)
                .pressed(0.050, 21.83);
        StringBuilder out = new StringBuilder();
        out.append("# Invented: synthesised from an equation of motion, not recorded.\n");
        out.append("# A phone on the floor of a light cart; front pressed down and let go three times.\n");
        out.append("time (s),ax (m/s²),ay (m/s²),az (m/s²)\n");
        for (int i = 0; i < LENGTH * RATE; i++) {
            double t = (i + 0.4) / RATE + JITTER * random.nextGaussian();
            double up = G + cart.acceleration(t);
            double[] phone = {
                Math.sin(TILT) * up, Math.cos(TILT) * Math.sin(LEAN) * up, Math.cos(TILT) * Math.cos(LEAN) * up
            };
            out.append(String.format(Locale.ROOT, "%.4f", t));
            for (double value : phone) {
                double noisy = value + NOISE * random.nextGaussian();
                out.append(String.format(Locale.ROOT, ",%.4f", STEP * Math.rint(noisy / STEP)));
            }
            out.append('\n');
        }
        return out.toString();
    }
}
