package org.ridewright.validation;

import java.util.List;
import java.util.Locale;
import org.ridewright.comfort.Axis;
import org.ridewright.comfort.AxisMeter;
import org.ridewright.comfort.AxisVibration;
import org.ridewright.comfort.Position;
import org.ridewright.comfort.Window;

/**
 * A sine of 1 m/s² divided into heave, jolt and buzz by fourth-order Butterworth filters at 3 and 10 Hz: with {@code L₃ = 1/(1 + (f/3)⁸)} and
 * L₁₀ likewise the squares are {@code L₃/2}, {@code (1 − L₃)L₁₀/2} and {@code (1 − L₃)(1 − L₁₀)/2}; its jerk below 10 Hz has the
 * r.m.s. {@code 2πf √(L₁₀/2)}. Measured by the meters that rides use, sample by sample.
 */
final class KindsOfMotion implements ReferenceProblem {
    private static final Source FORM = Source.closedForm("squared gains of Butterworth's filters");

    @Override
    public String title() {
        return "Heave, jolt, buzz and jerk";
    }

    @Override
    public String statement() {
        return "A sine of 1 m/s² at 500 Hz sampling, in three bands below 3 Hz, between, and above 10 Hz.";
    }

    @Override
    public List<Check> checks() {
        Rows rows = new Rows(this);
        for (double f : new double[] {1, 3, 5.5, 10, 25}) {
            AxisMeter meter = new AxisMeter(Position.SEAT, Axis.Z, new Window(10, 30), 500);
            for (int i = 0; i <= 15_100; i++) {
                meter.accept(Math.sin(2 * Math.PI * f * i / 500));
            }
            AxisVibration z = meter.result();
            double low = 1 / (1 + Math.pow(f / 3, 8));
            double high = 1 / (1 + Math.pow(f / 10, 8));
            String at = String.format(Locale.ROOT, " of %.3g Hz", f);
            rows.absolute(
                            FORM,
                            "heave" + at,
                            "m/s²",
                            Math.sqrt(low / 2),
                            z.bands().heave().rms(),
                            2e-4)
                    .absolute(
                            FORM,
                            "jolt" + at,
                            "m/s²",
                            Math.sqrt((1 - low) * high / 2),
                            z.bands().jolt().rms(),
                            2e-4)
                    .absolute(
                            FORM,
                            "buzz" + at,
                            "m/s²",
                            Math.sqrt((1 - low) * (1 - high) / 2),
                            z.bands().buzz().rms(),
                            2e-4)
                    .relative(
                            FORM,
                            "jerk" + at,
                            "m/s³",
                            2 * Math.PI * f * Math.sqrt(high / 2),
                            z.jerk().felt().rms(),
                            1e-3);
        }
        return rows.list();
    }
}
