package org.ridewright.report;

import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.ridewright.calibration.CalibratedVehicle;
import org.ridewright.calibration.Residual;

/** The data of a calibration as a table for other programs. */
public final class CalibrationCsv {
    private CalibrationCsv() {}

    /** One row to each datum that stands alone; decimal points, lines ended by a line feed. */
    public static String data(CalibratedVehicle calibrated) {
        CSVFormat format = CSVFormat.RFC4180.builder().setRecordSeparator("\n").get();
        StringBuilder out = new StringBuilder();
        out.append(format.format(
                        "datum",
                        "unit",
                        "measured",
                        "standard uncertainty",
                        "predicted before",
                        "predicted",
                        "lower end of 90 %",
                        "upper end of 90 %",
                        "normalised residual",
                        "kept back"))
                .append('\n');
        List<Residual> residuals = calibrated.fit().residuals().stream()
                .filter(r -> r.datum().group().isBlank())
                .toList();
        for (Residual r : residuals) {
            out.append(format.format(
                            r.datum().label(),
                            r.datum().unit(),
                            r.datum().observed(),
                            r.datum().uncertainty(),
                            r.before(),
                            r.predicted(),
                            r.lower(),
                            r.upper(),
                            r.normalised(),
                            r.datum().keptBack() ? "yes" : "no"))
                    .append('\n');
        }
        return out.toString();
    }
}
