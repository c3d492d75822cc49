package org.ridewright.validation;

import java.util.Arrays;
import java.util.List;
import org.ridewright.comfort.Axis;
import org.ridewright.comfort.Position;
import org.ridewright.comfort.VibrationMetrics;
import org.ridewright.comfort.Window;
import org.ridewright.signal.Channel;
import org.ridewright.signal.Sines;

/**
 * Measures of ISO 2631-1:1997 6.1 and 6.3 on signals whose integrals are known: of {@code A sin ωt} over whole cycles of a time T
 * the r.m.s. and the MTVV are {@code A/√2}, the VDV {@code A (3T/8)^¼}; of one rectangle of height A and length τ in T the r.m.s.
 * is {@code A √(τ/T)}, the MTVV, over 1 s, {@code A √τ}, the VDV {@code A τ^¼}. A sine at the seat is weighted by the printed
 * factor of Wk.
 */
final class MeasuresOfVibration implements ReferenceProblem {
    private static final Source INTEGRAL = Source.closedForm("definitions of ISO 2631-1:1997 6.1, 6.3");
    private static final Source TABLE = Source.standard("ISO 2631-1:1997 table 3");

    @Override
    public String title() {
        return "Measures of vibration";
    }

    @Override
    public String statement() {
        return "8 s of a sine of 2 m/s² at 5 Hz; 50 ms of 3 m/s² in 10 s; 1 m/s² at 5 Hz on the seat.";
    }

    @Override
    public List<Check> checks() {
        Channel sine = Sines.sine(240, 10, 2, 5);
        VibrationMetrics steady = VibrationMetrics.of(sine, sine, new Window(1, 9));
        double[] samples = new double[10_001];
        Arrays.fill(samples, 4000, 4050, -3);
        Channel burst = new Channel("burst", "m/s²", 1000, 0, samples);
        VibrationMetrics single = VibrationMetrics.of(burst, burst, Window.of(burst));
        VibrationMetrics seat =
                VibrationMetrics.of(Sines.sine(1000, 20, 1, 5), Position.SEAT, Axis.Z, new Window(9, 19));
        return new Rows(this)
                .relative(INTEGRAL, "r.m.s. of the sine", "m/s²", Math.sqrt(2), steady.rms(), 1e-10)
                .relative(INTEGRAL, "MTVV of the sine", "m/s²", Math.sqrt(2), steady.mtvv(), 1e-10)
                .relative(INTEGRAL, "VDV of the sine", "m/s^1.75", 2 * Math.pow(3, 0.25), steady.vdv(), 1e-10)
                .relative(INTEGRAL, "r.m.s. of the burst", "m/s²", 3 * Math.sqrt(0.005), single.rms(), 1e-10)
                .relative(INTEGRAL, "MTVV of the burst", "m/s²", 3 * Math.sqrt(0.05), single.mtvv(), 1e-10)
                .relative(INTEGRAL, "VDV of the burst", "m/s^1.75", 3 * Math.pow(0.05, 0.25), single.vdv(), 1e-10)
                .absolute(TABLE, "weighted r.m.s. at the seat", "m/s²", 1.039 * Math.sqrt(0.5), seat.rms(), 5e-4)
                .list();
    }
}
