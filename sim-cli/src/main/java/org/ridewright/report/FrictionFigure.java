package org.ridewright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ridewright.figure.AxisSpec;
import org.ridewright.figure.Figure;
import org.ridewright.figure.LegendPlace;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;
import org.ridewright.figure.Trace;
import org.ridewright.ride.RideResult;
import org.ridewright.ride.RideResult.ElementResult;

/** How much of the time the friction of each spring holds it locked, on each road in turn. */
final class FrictionFigure {
    private static final int MOST_LINES = 5;
    /** Room for the key of a ride, two or more to a row (mm). */
    private static final double KEY_MM = 2.2;

    private FrictionFigure() {}

    static List<Figure> of(List<RideResult> results) {
        Map<String, List<RideResult>> bySubject = new LinkedHashMap<>();
        for (RideResult result : results) {
            if (!result.spectra().isEmpty()) {
                bySubject
                        .computeIfAbsent(RideName.of(result).subject(), s -> new ArrayList<>())
                        .add(result);
            }
        }
        List<Figure> figures = new ArrayList<>();
        bySubject.forEach((subject, rides) -> {
            List<Series> lines = lines(rides);
            if (rides.size() > 1 && !lines.isEmpty()) {
                figures.add(figure(subject, rides, lines));
            }
        });
        return figures;
    }

    private static List<Series> lines(List<RideResult> rides) {
        List<Series> lines = new ArrayList<>();
        for (ElementResult spring : rides.get(0).springs()) {
            boolean rubs = rides.stream().anyMatch(r -> share(r, spring.element()) < 1);
            if (spring.kind().equals("spring") && rubs && lines.size() < MOST_LINES) {
                double[] x = new double[rides.size()];
                double[] y = new double[rides.size()];
                for (int i = 0; i < x.length; i++) {
                    x[i] = i + 1;
                    y[i] = 100 * share(rides.get(i), spring.element());
                }
                lines.add(Series.line(lines.size(), spring.element(), x, y).as(Trace.BARS));
            }
        }
        return lines;
    }

    /** 1 where the spring has no friction. */
    private static double share(RideResult ride, String spring) {
        return ride.springs().stream()
                .filter(s -> s.element().equals(spring))
                .mapToDouble(ElementResult::lockedShare)
                .findFirst()
                .orElse(1);
    }

    private static Figure figure(String subject, List<RideResult> rides, List<Series> lines) {
        StringBuilder numbered = new StringBuilder();
        List<Series> entries = new ArrayList<>(lines);
        for (int i = 0; i < rides.size(); i++) {
            RideName name = RideName.of(rides.get(i));
            String ride = name.road() + " at " + name.speed();
            numbered.append(i == 0 ? "" : ", ").append(i + 1).append(" ").append(ride);
            entries.add(Series.key(i + 1, ride));
        }
        String caption =
                "Share of the time during which the friction of each spring of the %s holds it locked, so that it moves only as far as its leaves give without sliding. Rides: %s. A spring that is locked all the time passes the road on as if it were hardly there."
                        .formatted(subject, numbered);
        Panel panel = Panel.of(
                        "",
                        AxisSpec.of("Ride, by its number", "").between(0.5, rides.size() + 0.5),
                        AxisSpec.of("Time locked", "%").between(0, 100),
                        entries.toArray(Series[]::new))
                .withLegend(LegendPlace.BELOW);
        return Figure.stacked(
                "locked-" + RideName.slug(subject),
                "%s: how long friction holds each spring locked".formatted(subject),
                caption,
                80 + KEY_MM * rides.size(),
                panel);
    }
}
