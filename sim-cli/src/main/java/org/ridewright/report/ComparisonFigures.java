package org.ridewright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ridewright.figure.AxisSpec;
import org.ridewright.figure.Figure;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;
import org.ridewright.ride.RideResult;

/** Acceleration of all ride tests side by side on equal axes, so that heights can be compared by eye. */
final class ComparisonFigures {
    private static final int MOST_ROWS = 6;
    private static final int MOST_COLUMNS = 3;
    private static final double ROOM = 1.08;
    /** Letters that two lines of a panel's title hold where there are three columns, and fewer. */
    private static final int TITLE_IN_THREE = 52;

    private ComparisonFigures() {}

    static List<Figure> of(List<RideResult> results) {
        Map<String, List<RideResult>> byRoad = new LinkedHashMap<>();
        for (RideResult result : results) {
            if (!Felt.of(result).isEmpty()) {
                byRoad.computeIfAbsent(result.road().name(), k -> new ArrayList<>())
                        .add(result);
            }
        }
        List<Figure> figures = new ArrayList<>();
        byRoad.forEach((road, rides) -> {
            if (rides.size() > 1) {
                figures.addAll(ofRoad(road, rides));
            }
        });
        return figures;
    }

    private static List<Figure> ofRoad(String road, List<RideResult> rides) {
        int columns = columns(rides);
        Frame frame = Frame.around(rides);
        List<Figure> figures = new ArrayList<>();
        int perFigure = columns * MOST_ROWS;
        for (int from = 0; from < rides.size(); from += perFigure) {
            List<RideResult> part = rides.subList(from, Math.min(rides.size(), from + perFigure));
            List<Panel> panels = part.stream().map(r -> panel(r, frame)).toList();
            int rows = (panels.size() + columns - 1) / columns;
            RideResult worst = worst(part);
            RideName name = RideName.of(worst);
            Felt felt = Felt.worst(Felt.of(worst));
            String caption =
                    "Vertical acceleration on %s in each of %d ride tests, at the seat or, with nobody aboard, at the named point where it is greatest, all on the same axes; time is counted from the first contact, or in a ride too long for print from the beginning of the ten seconds around its greatest acceleration. The greatest is %s m/s², of the %s at %s (%s)."
                            .formatted(
                                    road,
                                    part.size(),
                                    Numbers.of(felt.peak()),
                                    name.subject(),
                                    name.speed(),
                                    felt.name());
            figures.add(new Figure(
                    "comparison-" + RideName.slug(road) + (from == 0 ? "" : "-" + (from / perFigure + 1)),
                    "Vertical acceleration on " + road + ", equal axes",
                    caption,
                    panels,
                    columns,
                    Figure.PAGE_WIDTH_MM,
                    24 + 46.0 * rows));
        }
        return figures;
    }

    /** One column for each speed where every subject has as many, so that a row is a subject. */
    private static int columns(List<RideResult> rides) {
        Map<String, Integer> speeds = new LinkedHashMap<>();
        rides.forEach(r -> speeds.merge(RideName.of(r).subject(), 1, Integer::sum));
        long different = speeds.values().stream().distinct().count();
        int each = speeds.values().iterator().next();
        if (different == 1 && each > 1) {
            return Math.min(each, MOST_COLUMNS);
        }
        boolean wide = rides.stream().anyMatch(r -> title(r).length() > TITLE_IN_THREE);
        return Math.min(rides.size(), wide ? MOST_COLUMNS - 1 : MOST_COLUMNS);
    }

    private static String title(RideResult result) {
        RideName name = RideName.of(result);
        return name.subject() + ", " + name.speed() + ": "
                + Felt.worst(Felt.of(result)).name();
    }

    private static RideResult worst(List<RideResult> rides) {
        RideResult worst = rides.get(0);
        for (RideResult ride : rides) {
            if (Felt.worst(Felt.of(ride)).peak() > Felt.worst(Felt.of(worst)).peak()) {
                worst = ride;
            }
        }
        return worst;
    }

    private static Panel panel(RideResult result, Frame frame) {
        Felt felt = Felt.worst(Felt.of(result));
        TimeSlice slice = TimeSlice.fromFirstContact(result);
        Optional<Series> line = felt.trace(result).map(t -> slice.line(0, felt.name(), t, 1));
        return Panel.of(
                title(result),
                AxisSpec.of("Time", "s").between(frame.from(), frame.to()),
                AxisSpec.of("Acceleration", "m/s²").between(frame.low(), frame.high()),
                line.orElseGet(() -> Series.line(0, felt.name(), new double[] {0}, new double[] {Double.NaN})));
    }

    /** Ends of the axes that all panels share. */
    private record Frame(double from, double to, double low, double high) {
        static Frame around(List<RideResult> rides) {
            double from = 0;
            double to = 0;
            double size = 0;
            for (RideResult ride : rides) {
                TimeSlice slice = TimeSlice.fromFirstContact(ride);
                from = Math.min(from, slice.from() - slice.origin());
                to = Math.max(to, slice.to() - slice.origin());
                size = Math.max(size, Felt.worst(Felt.of(ride)).peak());
            }
            double half = size > 0 ? ROOM * size : 1;
            return new Frame(from, to, -half, half);
        }
    }
}
