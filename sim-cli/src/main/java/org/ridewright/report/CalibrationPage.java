package org.ridewright.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ridewright.calibration.AddedLoadCheck;
import org.ridewright.calibration.CalibratedVehicle;
import org.ridewright.calibration.Calibration;
import org.ridewright.calibration.Residual;
import org.ridewright.calibration.RideOverlay;
import org.ridewright.calibration.RiderSaid;
import org.ridewright.comfort.MotionBands;
import org.ridewright.fieldwork.Measurements;
import org.ridewright.figure.FigureFiles;

/** The page of a calibration. One file that needs no other. */
public final class CalibrationPage {
    private static final double KILO = 1000;

    private CalibrationPage() {}

    /**
     * The page; every text of the user's is escaped.
     *
     * @param file name of the calibrated vehicle file beside the page
     * @param figures drawn from {@link CalibrationFigures#of}, found by file name
     */
    public static String render(
            Measurements measurements, CalibratedVehicle calibrated, String file, List<FigureFiles> figures) {
        Calibration fit = calibrated.fit();
        Map<String, Object> model = new HashMap<>();
        model.put("name", calibrated.after().name() + ", calibrated");
        model.put("about", measurements.about().strip());
        model.put("measurements", measurements.name());
        model.put("file", file);
        model.put("answers", CalibrationWords.answers(calibrated));
        model.put("values", values(calibrated));
        model.put("circumstances", circumstances(calibrated));
        model.put("unclear", CalibrationWords.unclear(calibrated));
        List<Residual> fitted = fit.fitted();
        model.put("data", data(fitted, 1));
        model.put("kept", data(fit.keptBack(), 1 + fitted.size()));
        model.put(
                "rides", calibrated.rides().stream().map(CalibrationPage::ride).toList());
        model.put(
                "added",
                calibrated.addedLoads().stream().map(CalibrationPage::added).toList());
        model.put("riders", riders(calibrated));
        model.put(
                "leftOut",
                calibrated.leftOut().stream()
                        .map(l -> l.label() + ". " + l.reason())
                        .toList());
        model.put(
                "groups",
                Templates.groups(List.of(new FigureGroup("Calibration", CalibrationFigures.of(calibrated))), figures));
        model.put("starts", fit.tried());
        model.put("agreeing", fit.agreeing());
        model.put("evolved", fit.byEvolution());
        model.put("band", Numbers.of(RideOverlay.BAND));
        return Templates.render("calibration.ftlh", model);
    }

    private static List<List<String>> values(CalibratedVehicle calibrated) {
        List<List<String>> rows = new ArrayList<>();
        for (int j = 0; j < calibrated.ofVehicle(); j++) {
            rows.add(row(calibrated, j, String.valueOf(j + 1)));
        }
        return rows;
    }

    private static List<List<String>> circumstances(CalibratedVehicle calibrated) {
        Calibration fit = calibrated.fit();
        List<List<String>> rows = new ArrayList<>();
        for (int j = calibrated.ofVehicle(); j < fit.unknowns().size(); j++) {
            rows.add(row(calibrated, j, ""));
        }
        return rows;
    }

    private static List<String> row(CalibratedVehicle calibrated, int j, String number) {
        Calibration fit = calibrated.fit();
        return List.of(
                number,
                CalibrationWords.path(calibrated, j),
                CalibrationWords.before(fit, j),
                CalibrationWords.now(fit, j),
                CalibrationWords.interval(fit, j),
                Numbers.percent(fit.shrinkage(j)),
                Numbers.of(fit.posterior().z(j), 2),
                fit.unknowns().get(j).prior());
    }

    private static List<List<String>> data(List<Residual> residuals, int first) {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < residuals.size(); i++) {
            Residual r = residuals.get(i);
            rows.add(List.of(
                    String.valueOf(first + i),
                    r.datum().label(),
                    CalibrationWords.observed(r),
                    CalibrationWords.number(r, r.before()),
                    CalibrationWords.number(r, r.predicted()),
                    CalibrationWords.number(r, r.lower()) + " to " + CalibrationWords.number(r, r.upper()),
                    Numbers.of(r.normalised(), 2) + (r.disagrees() ? " (disagrees)" : "")));
        }
        return rows;
    }

    private static List<String> ride(RideOverlay ride) {
        return List.of(
                ride.label() + (ride.keptBack() ? " (kept back)" : ""),
                ride.sensor().isEmpty() ? "the seat" : ride.sensor(),
                Numbers.percent(ride.explainedBefore()),
                Numbers.percent(ride.explainedAfter()),
                Numbers.of(3.6 * ride.speed()) + " ± " + Numbers.of(3.6 * ride.speedError(), 2),
                Numbers.of(ride.scatter(), 2),
                ride.times().size() + ", worth " + Numbers.of(ride.worth(), 2));
    }

    private static List<String> added(AddedLoadCheck check) {
        return List.of(
                check.label(),
                Numbers.of(check.load()),
                span(
                        check.result().rate().value(),
                        check.result().rate().low(),
                        check.result().rate().high(),
                        KILO),
                Numbers.of(check.rate() / KILO),
                span(
                        check.result().mass().value(),
                        check.result().mass().low(),
                        check.result().mass().high(),
                        1),
                Numbers.of(check.mass()));
    }

    private static String span(double value, double low, double high, double unit) {
        if (!Double.isFinite(value)) {
            return "no load makes it so";
        }
        return Numbers.of(value / unit)
                + " ("
                + Numbers.of(low / unit)
                + (Double.isFinite(high) ? " to " + Numbers.of(high / unit) : " or any more")
                + ")";
    }

    private static List<List<String>> riders(CalibratedVehicle calibrated) {
        List<List<String>> rows = new ArrayList<>();
        for (RiderSaid rider : calibrated.riders()) {
            rows.add(List.of("“" + rider.said() + "”", rider.ride(), bands(rider.seat()), bands(rider.feet())));
        }
        return rows;
    }

    private static String bands(Optional<MotionBands> bands) {
        return bands.map(b -> "%s / %s, %s / %s, %s / %s"
                        .formatted(
                                Numbers.of(b.heave().rms(), 2),
                                Numbers.of(b.heave().peak(), 2),
                                Numbers.of(b.jolt().rms(), 2),
                                Numbers.of(b.jolt().peak(), 2),
                                Numbers.of(b.buzz().rms(), 2),
                                Numbers.of(b.buzz().peak(), 2)))
                .orElse("–");
    }
}
