package org.ridewright.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ridewright.comfort.Axis;
import org.ridewright.comfort.AxisVibration;
import org.ridewright.comfort.Position;
import org.ridewright.figure.AxisSpec;
import org.ridewright.figure.Figure;
import org.ridewright.figure.LegendPlace;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;
import org.ridewright.figure.Trace;
import org.ridewright.ride.RideResult;
import org.ridewright.ride.RideResult.SeatResult;

/** How what riders feel grows with speed, on each road that was ridden at three speeds or more. */
final class SpeedFigures {
    private static final int LEAST_SPEEDS = 3;
    private static final int MOST_LINES = 5;
    private static final double KMH = 3.6;

    private SpeedFigures() {}

    /** A vehicle's worst seat at one speed. */
    private record Reading(double speed, AxisVibration vertical) {}

    static List<Figure> of(List<RideResult> results) {
        Map<String, Map<String, List<Reading>>> byRoad = new LinkedHashMap<>();
        for (RideResult result : results) {
            reading(result)
                    .ifPresent(reading -> byRoad.computeIfAbsent(result.road().name(), road -> new LinkedHashMap<>())
                            .computeIfAbsent(RideName.of(result).subject(), subject -> new ArrayList<>())
                            .add(reading));
        }
        List<Figure> figures = new ArrayList<>();
        byRoad.forEach((road, subjects) -> {
            subjects.values().removeIf(readings -> readings.size() < LEAST_SPEEDS);
            List<Map.Entry<String, List<Reading>>> all = new ArrayList<>(subjects.entrySet());
            for (int from = 0; from < all.size(); from += MOST_LINES) {
                figures.add(figure(road, all.subList(from, Math.min(all.size(), from + MOST_LINES))));
            }
        });
        return figures;
    }

    private static Optional<Reading> reading(RideResult result) {
        if (!result.plan().isSteady()) {
            return Optional.empty();
        }
        return result.seats().stream()
                .map(SpeedFigures::vertical)
                .flatMap(Optional::stream)
                .max(Comparator.comparingDouble(v -> v.metrics().rms()))
                .map(v -> new Reading(result.speed(), v));
    }

    private static Optional<AxisVibration> vertical(SeatResult seat) {
        return seat.felt().flatMap(person -> person.axis(Position.SEAT, Axis.Z));
    }

    private static Figure figure(String road, List<Map.Entry<String, List<Reading>>> subjects) {
        List<Panel> panels = List.of(
                panel("Weighted (Wk)", subjects, v -> v.metrics().rms()),
                panel("Heave, below 3 Hz", subjects, v -> v.bands().heave().rms()),
                panel("Jolt, 3 to 10 Hz", subjects, v -> v.bands().jolt().rms()),
                panel("Buzz, above 10 Hz", subjects, v -> v.bands().buzz().rms()));
        Map.Entry<String, List<Reading>> roughest = subjects.stream()
                .max(Comparator.comparingDouble(SpeedFigures::greatest))
                .orElseThrow();
        String caption =
                "Vertical acceleration on the worst seat against speed on %s, r.m.s.: weighted after ISO 2631-1, and unweighted in three bands that riders tell apart. The greatest weighted value is %s m/s², of the %s."
                        .formatted(road, Numbers.of(greatest(roughest)), roughest.getKey());
        return new Figure(
                "speeds-" + RideName.slug(road),
                "What riders feel on %s against speed".formatted(road),
                caption,
                panels,
                2,
                Figure.PAGE_WIDTH_MM,
                150);
    }

    private static double greatest(Map.Entry<String, List<Reading>> subject) {
        return subject.getValue().stream()
                .mapToDouble(r -> r.vertical().metrics().rms())
                .max()
                .orElse(0);
    }

    private interface Level {
        double of(AxisVibration vibration);
    }

    private static Panel panel(String title, List<Map.Entry<String, List<Reading>>> subjects, Level level) {
        List<Series> lines = new ArrayList<>();
        for (Map.Entry<String, List<Reading>> subject : subjects) {
            List<Reading> sorted = subject.getValue().stream()
                    .sorted(Comparator.comparingDouble(Reading::speed))
                    .toList();
            lines.add(Series.line(
                            lines.size(),
                            subject.getKey(),
                            sorted.stream().mapToDouble(r -> KMH * r.speed()).toArray(),
                            sorted.stream()
                                    .mapToDouble(r -> level.of(r.vertical()))
                                    .toArray())
                    .as(Trace.LINE_AND_MARKS));
        }
        return Panel.of(
                        title,
                        AxisSpec.of("Speed", "km/h"),
                        AxisSpec.of("Acceleration", "m/s²").from(0),
                        lines.toArray(Series[]::new))
                .withLegend(LegendPlace.SHARED);
    }
}
