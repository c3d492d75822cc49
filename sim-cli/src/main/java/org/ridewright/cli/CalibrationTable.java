package org.ridewright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.ridewright.calibration.CalibratedVehicle;
import org.ridewright.calibration.Calibration;
import org.ridewright.calibration.LeftOut;
import org.ridewright.calibration.Residual;
import org.ridewright.report.CalibrationWords;

/** What a calibration found, for the terminal. */
final class CalibrationTable {
    private CalibrationTable() {}

    static List<String> lines(CalibratedVehicle calibrated) {
        Calibration fit = calibrated.fit();
        TextTable values = new TextTable(3);
        values.row(List.of("value", "before", "now", "narrower by"));
        for (int j = 0; j < calibrated.ofVehicle(); j++) {
            values.row(List.of(
                    CalibrationWords.path(calibrated, j),
                    CalibrationWords.before(fit, j),
                    CalibrationWords.now(fit, j),
                    String.format(Locale.ROOT, "%.0f %%", 100 * fit.shrinkage(j))));
        }
        List<String> lines = new ArrayList<>(values.lines());
        lines.add("");
        TextTable data = new TextTable(1);
        data.row(List.of("measured", "", "predicted before", "now", "off by"));
        List<Residual> single = new ArrayList<>(fit.fitted());
        single.addAll(fit.keptBack());
        for (Residual residual : single) {
            data.row(List.of(
                    residual.datum().label() + (residual.datum().keptBack() ? " (kept back)" : ""),
                    CalibrationWords.observed(residual),
                    CalibrationWords.number(residual, residual.before()),
                    CalibrationWords.number(residual, residual.predicted()),
                    String.format(Locale.ROOT, "%+.1f", residual.normalised())));
        }
        lines.addAll(data.lines());
        lines.add("");
        for (LeftOut left : calibrated.leftOut()) {
            lines.add("Left out: " + left.label() + ". " + left.reason());
        }
        lines.addAll(CalibrationWords.answers(calibrated));
        return lines;
    }
}
