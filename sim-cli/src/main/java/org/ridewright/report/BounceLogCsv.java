package org.ridewright.report;

import java.util.Locale;
import org.ridewright.ringdown.RingDown;

/** A release sample by sample. */
public final class BounceLogCsv {
    private BounceLogCsv() {}

    /** Time from the log's first row, record less the sensor's zero, fit, and whether the sample counted. */
    public static String render(RingDown release) {
        StringBuilder out = new StringBuilder("time (s),recorded (m/s²),fitted (m/s²),counted\n");
        RingDown.Curve curve = release.curve();
        for (int i = 0; i < curve.times().length; i++) {
            out.append(String.format(
                    Locale.ROOT,
                    "%.6f,%.6f,%.6f,%d%n",
                    curve.times()[i],
                    curve.recorded()[i],
                    curve.fitted()[i],
                    curve.counted()[i] ? 1 : 0));
        }
        return out.toString().replace("\r\n", "\n");
    }
}
