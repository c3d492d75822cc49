package org.ridewright.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.ridewright.comfort.AxisVibration;
import org.ridewright.comfort.DailyExposure;
import org.ridewright.comfort.ExposureThreshold;
import org.ridewright.comfort.Level;
import org.ridewright.comfort.MotionSickness;
import org.ridewright.comfort.VibrationMetrics;
import org.ridewright.figure.FigureFiles;
import org.ridewright.measurement.ColumnCheck;
import org.ridewright.measurement.Mounting;
import org.ridewright.measurement.RecordedRide;
import org.ridewright.measurement.Timing;

/** The page of a recorded ride. One file that needs no other. */
public final class LogPage {
    private static final double HOUR = 3600;
    private static final double DAY = 24 * HOUR;

    private LogPage() {}

    /**
     * The page; every text of the user's is escaped.
     *
     * @param figures drawn from {@link LogFigures#of}
     */
    public static String render(LogResult result, List<FigureFiles> figures) {
        Map<String, Object> model = new HashMap<>();
        model.put("name", result.name());
        model.put("asked", asked(result));
        model.put("answers", result.answers());
        model.put("measures", measures(result));
        model.put("bands", bands(result));
        model.put("thresholds", result.isExposureKnown() ? thresholds(result) : List.of());
        model.put("exposure", exposure(result));
        model.put("caution", DailyExposure.CAUTION);
        model.put("sickness", result.sickness().map(LogPage::sickness).orElse(""));
        model.put(
                "groups",
                Templates.groups(
                        List.of(new FigureGroup("Recorded " + result.place(), LogFigures.of(result))), figures));
        model.put("remarks", result.remarks());
        model.put("columns", columns(result.ride()));
        model.put("log", log(result.ride()));
        model.put("weighting", result.directions().get(0).weighting());
        return Templates.render("log.ftlh", model);
    }

    private static String asked(LogResult result) {
        return "What a person felt " + result.place() + ", by the acceleration recorded in " + result.name() + ": "
                + result.extent() + ".";
    }

    private static List<List<String>> measures(LogResult result) {
        List<List<String>> rows = new ArrayList<>();
        for (LogResult.Direction direction : result.directions()) {
            VibrationMetrics m = direction.metrics();
            rows.add(List.of(
                    RideFigures.upperFirst(direction.name()),
                    direction.weighting(),
                    Numbers.of(direction.factor(), 2),
                    Numbers.of(m.rms()),
                    Numbers.of(m.mtvv()),
                    Numbers.of(m.vdv()),
                    Numbers.of(m.peak()),
                    Numbers.of(m.crestFactor(), 2),
                    Numbers.of(m.mtvvRatio(), 2),
                    Numbers.of(m.vdvRatio(), 2),
                    Numbers.of(m.unweightedPeak())));
        }
        return rows;
    }

    private static List<List<String>> bands(LogResult result) {
        List<List<String>> rows = new ArrayList<>();
        AxisVibration z = result.vibration().vertical();
        rows.add(band("Heave, below 3 Hz", z.bands().heave()));
        rows.add(band("Jolt, 3 to 10 Hz", z.bands().jolt()));
        rows.add(band("Buzz, above 10 Hz", z.bands().buzz()));
        rows.add(band("All", z.bands().whole()));
        return rows;
    }

    private static List<String> band(String name, Level level) {
        return List.of(name, Numbers.of(level.rms()), Numbers.of(level.peak()));
    }

    private static List<List<String>> thresholds(LogResult result) {
        List<List<String>> rows = new ArrayList<>();
        for (ExposureThreshold threshold : ExposureThreshold.values()) {
            rows.add(List.of(
                    RideFigures.upperFirst(threshold.label()),
                    Numbers.of(threshold.eightHours()),
                    time(DailyExposure.timeToA8(result.exposed(), threshold)),
                    Numbers.of(threshold.dose()),
                    time(DailyExposure.timeToVdv(result.exposed(), threshold)),
                    threshold.source()));
        }
        return rows;
    }

    private static String time(double seconds) {
        if (seconds > DAY) {
            return "more than a day";
        }
        long minutes = Math.round(seconds / 60);
        return minutes < 60
                ? Numbers.of(seconds / 60, 2) + " min"
                : String.format(Locale.ROOT, "%d h %02d min", minutes / 60, minutes % 60);
    }

    private static String exposure(LogResult result) {
        if (!result.isExposureKnown()) {
            return "";
        }
        List<String> sentences = new ArrayList<>();
        result.riding().ifPresent(riding -> {
            DailyExposure day = DailyExposure.of(result.exposed(), riding);
            sentences.add(String.format(
                    Locale.ROOT,
                    "%s hours of such riding a day make A(8) = %s m/s² and VDV = %s m/s^1.75 on the worst axis.",
                    Numbers.of(riding / HOUR),
                    Numbers.of(day.worstByA8().a8()),
                    Numbers.of(day.worstByVdv().vdv())));
        });
        if (result.vibration().horizontal().isPresent()) {
            sentences.add(
                    "The horizontal motion is counted as if it all lay in one direction, which is the most it can be; the factor for health is 1.4.");
        }
        if (result.directions().size() == 1) {
            sentences.add("Only the vertical direction was recorded; another may be worse.");
        }
        return String.join(" ", sentences);
    }

    private static String sickness(MotionSickness sickness) {
        String text = String.format(
                Locale.ROOT,
                "Motion sickness, over %s min of the longest piece: MSDV = %s m/s^1.5, for which the rule of ISO 2631-1 (clause 9 and annex D, from memory) expects about %s %% of unaccustomed adults to vomit. The rule comes from ships and the like, whose motion up and down is slow and goes on for long; in road vehicles sway, roll and what one sees count too, and are not in it.",
                Numbers.of(sickness.exposure() / 60, 2),
                Numbers.of(sickness.dose()),
                Numbers.of(sickness.percentage(), 2));
        List<String> reservations = sickness.reservations();
        return reservations.isEmpty()
                ? text
                : text + " " + RideFigures.upperFirst(String.join("; ", reservations)) + ".";
    }

    private static List<List<String>> columns(RecordedRide ride) {
        List<List<String>> rows = new ArrayList<>();
        for (ColumnCheck check : ride.checks()) {
            rows.add(List.of(
                    check.axis().word(),
                    check.column().name(),
                    check.column().unit() + ", " + check.column().unitFound(),
                    Numbers.of(ride.mounting().mean().get(check.axis())),
                    Numbers.of(check.resolution(), 2),
                    check.clipped().isEmpty()
                            ? "none"
                            : String.valueOf(check.clipped().size())));
        }
        return rows;
    }

    private static List<List<String>> log(RecordedRide ride) {
        Timing timing = ride.timing();
        Mounting mounting = ride.mounting();
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Rows", String.valueOf(ride.recording().size())));
        rows.add(List.of(
                "Time",
                ride.recording().stamped()
                        ? "as stamped; intervals vary by " + Numbers.percent(timing.jitter()) + " r.m.s."
                        : "from the rate stated"));
        rows.add(List.of("Sampling rate taken", Numbers.of(timing.rate(), 5) + " Hz"));
        rows.add(List.of(
                "Resampled",
                timing.resampled() == 0
                        ? "no, the instants are even"
                        : timing.resampled() + " of " + timing.stretches().size()
                                + " stretches, by the closest band-limited curve"));
        rows.add(List.of("Dropouts", String.valueOf(timing.dropouts().size())));
        rows.add(List.of(
                "Gravity", mounting.gravityFound() ? "in the values; taken off with the mean" : "not in the values"));
        rows.add(List.of(
                "Start-up left out of each stretch",
                Numbers.of(ride.startUp())
                        + " s, until 1 % of an unknown beginning is left in the filters, unless stated otherwise"));
        return rows;
    }
}
