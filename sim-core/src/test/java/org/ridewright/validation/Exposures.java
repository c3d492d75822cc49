package org.ridewright.validation;

import java.util.List;
import java.util.Map;
import org.ridewright.comfort.Axis;
import org.ridewright.comfort.DailyExposure;
import org.ridewright.comfort.ExposureThreshold;
import org.ridewright.comfort.Iso2631Tables;
import org.ridewright.comfort.MotionSicknessMeter;
import org.ridewright.comfort.StartUp;
import org.ridewright.comfort.VibrationMetrics;
import org.ridewright.comfort.Window;

/**
 * Doses of known motions beside published values: {@code A(8) = k a_w (t/8 h)^½}, {@code VDV_day = k VDV (t/T)^¼},
 * {@code MSDV_z = a_wf t^½}. A swell of 0.5 m/s² at 0.16 Hz is weighted by the printed factor 1.006.
 */
final class Exposures implements ReferenceProblem {
    private static final Source DIRECTIVE = Source.standard("Directive 2002/44/EC art. 3(2)");
    private static final Source ACTION = Source.standard("Directive 2002/44/EC art. 3(2), VDV as quoted");
    private static final Source ANNEX_B = Source.standard("ISO 2631-1:1997 annex B, as quoted");
    private static final Source FORM = Source.closedForm("definitions of A(8), VDV and MSDV");
    private static final double HOUR = 3600;

    @Override
    public String title() {
        return "Exposures";
    }

    @Override
    public String statement() {
        return "A minute of a_w = 0.3 m/s² along x (VDV 2) and 0.4 m/s² along z (VDV 3), ridden for part of a day; a swell of 0.5 m/s² at "
                + "0.16 Hz for two hours. Published values as the program holds them.";
    }

    @Override
    public List<Check> checks() {
        Rows rows = new Rows(this);
        // its VDV was seen quoted only
        addThreshold(rows, ACTION, ExposureThreshold.DIRECTIVE_ACTION, "wbv_action_A8", "wbv_action_VDV");
        addThreshold(rows, DIRECTIVE, ExposureThreshold.DIRECTIVE_LIMIT, "wbv_limit_A8", "wbv_limit_VDV");
        addThreshold(rows, ANNEX_B, ExposureThreshold.GUIDANCE_LOWER, "A8_lower_8h", "VDV_lower");
        addThreshold(rows, ANNEX_B, ExposureThreshold.GUIDANCE_UPPER, "A8_upper_8h", "VDV_upper");
        Map<Axis, VibrationMetrics> ride = Map.of(Axis.X, minute(0.3, 2), Axis.Z, minute(0.4, 3));
        DailyExposure day = DailyExposure.of(ride, 2 * HOUR);
        rows.relative(
                        FORM,
                        "A(8) of 2 h, x being the worst",
                        "m/s²",
                        0.21,
                        day.worstByA8().a8(),
                        1e-12)
                .relative(
                        FORM,
                        "VDV of 2 h, z being the worst",
                        "m/s^1.75",
                        3 * Math.pow(120, 0.25),
                        day.worstByVdv().vdv(),
                        1e-12)
                .relative(
                        FORM,
                        "hours to the action value by A(8)",
                        "h",
                        8 * Math.pow(0.5 / 0.42, 2),
                        DailyExposure.timeToA8(ride, ExposureThreshold.DIRECTIVE_ACTION) / HOUR,
                        1e-12)
                .relative(
                        FORM,
                        "hours to the action value by VDV",
                        "h",
                        Math.pow(9.1 / 3, 4) / 60,
                        DailyExposure.timeToVdv(ride, ExposureThreshold.DIRECTIVE_ACTION) / HOUR,
                        1e-12);
        return rows.absolute(
                        Source.standard("ISO 2631-1:1997 table 3; annex D (Km from memory)"),
                        "people made sick by the swell in 2 h",
                        "%",
                        1.006 * 0.5 * Math.sqrt(0.5) * Math.sqrt(7200) / 3,
                        swell(),
                        0.015)
                .list();
    }

    private static void addThreshold(
            Rows rows, Source source, ExposureThreshold threshold, String eightHours, String dose) {
        rows.relative(source, threshold.label() + ", A(8)", "m/s²", criterion(eightHours), threshold.eightHours(), 1e-9)
                .relative(source, threshold.label() + ", VDV", "m/s^1.75", criterion(dose), threshold.dose(), 1e-9);
    }

    private static double criterion(String item) {
        return Iso2631Tables.rows("criteria.csv").stream()
                .filter(row -> row.get(1).equals(item))
                .map(row -> Double.parseDouble(row.get(2)))
                .findFirst()
                .orElseThrow();
    }

    private static VibrationMetrics minute(double rms, double vdv) {
        return new VibrationMetrics(new Window(5, 65), rms, rms, vdv, 3 * rms, 4 * rms);
    }

    private static double swell() {
        double fs = 20;
        MotionSicknessMeter meter = new MotionSicknessMeter(new Window(100, 725), fs, 0, StartUp.AT_REST);
        for (int i = 0; i <= 730 * fs; i++) {
            meter.accept(0.5 * Math.sin(2 * Math.PI * 0.16 * i / fs));
        }
        return meter.result(7200).percentage();
    }
}
