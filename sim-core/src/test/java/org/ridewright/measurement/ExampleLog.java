package org.ridewright.measurement;

import java.util.Locale;
import java.util.Random;
import org.ridewright.signal.AnalogueFilter;
import org.ridewright.signal.Butterworth;
import org.ridewright.signal.Channel;

/**
 * What a phone in the pocket of the dray's seat would have exported: 100 samples a second behind a low pass of 40 Hz, the phone askew, the
 * stamps unsteady, noise and coarse steps in the values, some rows lost. Invented, and the file says so.
 */
final class ExampleLog {
    private static final double RATE = 100;
    private static final double G = 9.80665;
    private static final double STEP = 0.0024;
    private static final double NOISE = 0.02;
    private static final double JITTER = 0.0006;
    private static final double STILL = 3;

    private ExampleLog() {}

    static String text() {
        Random random = new Random(2024);
        Channel[] ride = {filtered("longitudinal"), filtered("lateral"), filtered("vertical")};
        double[][] phone = turned(Math.toRadians(28), Math.toRadians(-11), Math.toRadians(35));
        StringBuilder out = new StringBuilder();
        out.append("# Invented: synthesised from a simulated ride of the dray in scenarios/vehicles, not recorded.\n");
        out.append(
                "# A phone in the driver's seat: 100 samples a second, askew, unsteady stamps, noise, some rows lost.\n");
        out.append("time (ms),ax (m/s²),ay (m/s²),az (m/s²)\n");
        int rows = (int) ((ride[2].end() + STILL) * RATE);
        for (int i = 0; i < rows; i++) {
            double t = (i + 0.3) / RATE + JITTER * random.nextGaussian();
            double[] a = {at(ride[0], t - STILL), at(ride[1], t - STILL), at(ride[2], t - STILL) + G};
            StringBuilder row = new StringBuilder(String.format(Locale.ROOT, "%.1f", 1000 * t));
            for (int axis = 0; axis < 3; axis++) {
                double sum = NOISE * random.nextGaussian();
                for (int k = 0; k < 3; k++) {
                    sum += phone[axis][k] * a[k];
                }
                row.append(String.format(Locale.ROOT, ",%.4f", STEP * Math.rint(sum / STEP)));
            }
            if (!lost(i)) {
                out.append(row).append('\n');
            }
        }
        return out.toString();
    }

    /** Single rows, and one stretch of 0.7 s. */
    private static boolean lost(int row) {
        return row % 977 == 500 || (row >= 2600 && row < 2670);
    }

    private static Channel filtered(String direction) {
        return new AnalogueFilter(1, Butterworth.lowPass(4, 40)).apply(SimulatedRide.seat(direction));
    }

    /** Straight lines will do between 2000 samples a second. */
    private static double at(Channel channel, double t) {
        double place = (t - channel.start()) * channel.sampleRate();
        if (place < 0 || place >= channel.size() - 1) {
            return 0;
        }
        int i = (int) place;
        return channel.sample(i) + (place - i) * (channel.sample(i + 1) - channel.sample(i));
    }

    /** Turned about z, then y, then x: columns are forward, left and up in the phone's axes. */
    static double[][] turned(double yaw, double pitch, double roll) {
        double cy = Math.cos(yaw);
        double sy = Math.sin(yaw);
        double cp = Math.cos(pitch);
        double sp = Math.sin(pitch);
        double cr = Math.cos(roll);
        double sr = Math.sin(roll);
        return new double[][] {
            {cy * cp, sy * cp, -sp},
            {cy * sp * sr - sy * cr, sy * sp * sr + cy * cr, cp * sr},
            {cy * sp * cr + sy * sr, sy * sp * cr - cy * sr, cp * cr}
        };
    }
}
