package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ridewright.comfort.Axis;
import org.ridewright.comfort.AxisVibration;
import org.ridewright.comfort.DailyExposure;
import org.ridewright.comfort.Discomfort;
import org.ridewright.comfort.ExposureThreshold;
import org.ridewright.comfort.PersonVibration;
import org.ridewright.comfort.Position;
import org.ridewright.comfort.VibrationMetrics;
import org.ridewright.ride.RideResult;
import org.ridewright.ride.RideResult.SeatResult;
import org.ridewright.ride.Scenario;

/** What each rider feels, axis by axis, and what that adds up to. */
final class RiderTables {
    private static final String NONE = "–";
    private static final double HOUR = 3600;

    private RiderTables() {}

    /** Kind of motion at every seat of every ride test: one row each. */
    static List<List<String>> kinds(List<RideResult> results) {
        List<List<String>> rows = new ArrayList<>();
        for (RideResult result : results) {
            for (SeatResult seat : result.seats()) {
                seat.felt()
                        .flatMap(person -> person.axis(Position.SEAT, Axis.Z))
                        .ifPresent(z -> rows.add(kind(RideName.of(result), seat, z)));
            }
        }
        return rows;
    }

    private static List<String> kind(RideName name, SeatResult seat, AxisVibration z) {
        return List.of(
                name.words() + ", " + seat.seat(),
                pair(z.bands().heave().rms(), z.bands().heave().peak()),
                pair(z.bands().jolt().rms(), z.bands().jolt().peak()),
                pair(z.bands().buzz().rms(), z.bands().buzz().peak()),
                Numbers.of(z.jerk().felt().rms()) + " / "
                        + Numbers.of(z.jerk().felt().peak()),
                seat.effectiveness()
                        .map(e -> Numbers.of(e.byRms()) + " / " + Numbers.of(e.byVdv()))
                        .orElse(NONE));
    }

    private static String pair(double rms, double peak) {
        return Numbers.of(rms) + " / " + Numbers.of(peak);
    }

    /** For each seat of each ride test a table by axis and sentences on what they add up to. */
    static List<Map<String, Object>> riders(Scenario scenario, List<RideResult> results) {
        List<Map<String, Object>> tables = new ArrayList<>();
        for (RideResult result : results) {
            for (SeatResult seat : result.seats()) {
                seat.felt()
                        .ifPresent(person -> tables.add(Map.of(
                                "heading",
                                RideName.of(result).words() + ", " + seat.seat(),
                                "rows",
                                axes(person),
                                "sentences",
                                sentences(scenario, seat, person))));
            }
        }
        return tables;
    }

    private static List<List<String>> axes(PersonVibration person) {
        List<List<String>> rows = new ArrayList<>();
        person.points()
                .forEach((position, axes) -> axes.forEach((axis, v) -> rows.add(row(position, axis, v.metrics()))));
        return rows;
    }

    private static List<String> row(Position position, Axis axis, VibrationMetrics m) {
        boolean turns = axis.unit().startsWith("rad");
        return List.of(
                word(position.name()) + " " + word(axis.name()),
                position.weighting(axis).symbol(),
                Numbers.of(position.factor(axis)) + (turns ? " m/rad" : ""),
                Numbers.of(m.rms()) + (turns ? " rad/s²" : ""),
                Numbers.of(m.mtvv()),
                Numbers.of(m.vdv()),
                flagged(m.crestFactor(), m.crestFactorExceeded()),
                flagged(m.mtvvRatio(), m.mtvvRatioExceeded()),
                flagged(m.vdvRatio(), m.vdvRatioExceeded()));
    }

    private static String flagged(double value, boolean exceeded) {
        return Numbers.of(value) + (exceeded ? " *" : "");
    }

    private static String word(String constant) {
        return constant.toLowerCase(Locale.ROOT);
    }

    private static List<String> sentences(Scenario scenario, SeatResult seat, PersonVibration person) {
        List<String> list = new ArrayList<>();
        VibrationMetrics z = person.metrics(Position.SEAT).get(Axis.Z);
        double overall = person.overallTotal();
        list.add(
                "Over %s s: vibration total of x, y and z at the seat %s m/s², at the feet %s m/s²; overall total of all that was worked out %s m/s²%s."
                        .formatted(
                                Numbers.of(z.window().length()),
                                Numbers.of(seat.total(Position.SEAT)),
                                Numbers.of(seat.total(Position.FEET)),
                                Numbers.of(overall),
                                person.points().containsKey(Position.BACKREST)
                                        ? ""
                                        : ", with the factor 1.4 on x and y at the seat for the backrest that was not read off"));
        if (z.window().length() >= LogResult.STEADY) {
            list.add(
                    "Public transport passengers would be likely to call an overall total of %s m/s² %s (bands overlap; ISO 2631-1:1997, annex C)."
                            .formatted(
                                    Numbers.of(overall),
                                    Discomfort.words(overall).stream()
                                            .map(Discomfort::label)
                                            .collect(Collectors.joining(" or "))));
        }
        VibrationMetrics british = person.british(Position.SEAT).get(Axis.Z);
        list.add(
                "BS 6841, Wb vertically at the seat: r.m.s. %s m/s², VDV %s m/s^1.75; VDV of all axes together %s m/s^1.75."
                        .formatted(
                                Numbers.of(british.rms()),
                                Numbers.of(british.vdv()),
                                Numbers.of(person.britishDose())));
        seat.sickness()
                .ifPresent(s -> list.add(
                        "Motion sickness dose over the ride itself %s m/s^1.5; percentage by the standard's formula, which comes from ships and the like, %s %%%s."
                                .formatted(
                                        Numbers.of(s.dose()),
                                        Numbers.of(s.percentage(), 2),
                                        s.reservations().isEmpty()
                                                ? ""
                                                : ", not to be relied on: " + String.join("; ", s.reservations()))));
        scenario.ridingADay().ifPresent(riding -> list.addAll(day(person, riding.value())));
        return list;
    }

    private static List<String> day(PersonVibration person, double riding) {
        Map<Axis, VibrationMetrics> seat = person.metrics(Position.SEAT);
        DailyExposure day = DailyExposure.of(seat, riding);
        List<String> list = new ArrayList<>();
        list.add("A day with %s h of such riding: A(8) %s m/s² (axis %s), VDV %s m/s^1.75 (axis %s)."
                .formatted(
                        Numbers.of(riding / HOUR),
                        Numbers.of(day.worstByA8().a8()),
                        word(day.worstByA8().axis().name()),
                        Numbers.of(day.worstByVdv().vdv()),
                        word(day.worstByVdv().axis().name())));
        for (ExposureThreshold threshold :
                List.of(ExposureThreshold.DIRECTIVE_ACTION, ExposureThreshold.DIRECTIVE_LIMIT)) {
            list.add("The %s (%s m/s² or %s m/s^1.75; %s) would be reached after %s by A(8), after %s by VDV."
                    .formatted(
                            threshold.label(),
                            Numbers.of(threshold.eightHours()),
                            Numbers.of(threshold.dose()),
                            threshold.source(),
                            time(DailyExposure.timeToA8(seat, threshold)),
                            time(DailyExposure.timeToVdv(seat, threshold))));
        }
        return list;
    }

    private static String time(double seconds) {
        if (seconds > 24 * HOUR) {
            return "more than a day";
        }
        return seconds >= HOUR ? Numbers.of(seconds / HOUR, 2) + " h" : Numbers.of(seconds / 60, 2) + " min";
    }

    /** The caution that goes with daily exposures, if there are any. */
    static Optional<String> caution(Scenario scenario) {
        return scenario.ridingADay().map(riding -> DailyExposure.CAUTION);
    }
}
