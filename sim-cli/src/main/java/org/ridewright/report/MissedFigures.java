package org.ridewright.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.ridewright.figure.AxisSpec;
import org.ridewright.figure.Figure;
import org.ridewright.figure.LegendPlace;
import org.ridewright.figure.LineStyle;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;
import org.ridewright.figure.Tone;
import org.ridewright.figure.Trace;
import org.ridewright.ride.Missed;
import org.ridewright.ride.RideResult;

/** What vehicles without surge and sway miss: acceleration without and with, bar beside bar, a row to each vehicle, a place to each ride. */
final class MissedFigures {
    private static final int MOST_ROWS = 5;
    /** Room for the key of a ride, two or more to a row (mm). */
    private static final double KEY_MM = 2.2;

    private static final String[] AXES = {"Fore and aft", "Sideways", "Up and down"};
    private static final double ROOM = 1.08;

    private MissedFigures() {}

    static List<Figure> of(List<RideResult> results) {
        boolean oneSpeedEach = oneSpeedEach(results);
        Map<String, Map<String, Missed>> bySubject = new LinkedHashMap<>();
        List<String> places = new ArrayList<>();
        for (RideResult result : results) {
            RideName name = RideName.of(result);
            String subject = oneSpeedEach ? name.subject() + ", " + name.speed() : name.subject();
            String place = oneSpeedEach ? name.road() : name.road() + " at " + name.speed();
            result.missed().stream()
                    .max(Comparator.comparingDouble(Missed::whole))
                    .ifPresent(worst -> {
                        if (!places.contains(place)) {
                            places.add(place);
                        }
                        bySubject
                                .computeIfAbsent(subject, k -> new LinkedHashMap<>())
                                .put(place, worst);
                    });
        }
        List<String> subjects = List.copyOf(bySubject.keySet());
        List<Figure> figures = new ArrayList<>();
        for (int from = 0; from < subjects.size(); from += MOST_ROWS) {
            List<String> part = subjects.subList(from, Math.min(subjects.size(), from + MOST_ROWS));
            List<Panel> panels = new ArrayList<>();
            part.forEach(subject -> panels.addAll(row(subject, bySubject.get(subject), places)));
            panels.set(0, keyed(panels.get(0), places));
            figures.add(new Figure(
                    "surge-and-sway" + (from == 0 ? "" : "-" + (from / MOST_ROWS + 1)),
                    "What is missed without surge and sway",
                    caption(places),
                    panels,
                    AXES.length,
                    Figure.PAGE_WIDTH_MM,
                    24 + 38.0 * part.size() + KEY_MM * places.size()));
        }
        return figures;
    }

    /** The same panel with what the numbers of rides mean in the legend that all share. */
    private static Panel keyed(Panel panel, List<String> places) {
        List<Series> series = new ArrayList<>(panel.series());
        for (int i = 0; i < places.size(); i++) {
            series.add(Series.key(i + 1, places.get(i)));
        }
        return Panel.of(panel.title(), panel.x(), panel.y(), series.toArray(Series[]::new))
                .withLegend(LegendPlace.SHARED);
    }

    /** Whether each vehicle with its load goes at one speed, so that roads alone tell its rides apart. */
    private static boolean oneSpeedEach(List<RideResult> results) {
        Map<String, String> speeds = new LinkedHashMap<>();
        return results.stream()
                .map(RideName::of)
                .allMatch(name -> speeds.computeIfAbsent(name.subject(), k -> name.speed())
                        .equals(name.speed()));
    }

    private static List<Panel> row(String subject, Map<String, Missed> byPlace, List<String> places) {
        double top = byPlace.values().stream()
                .mapToDouble(MissedFigures::highest)
                .max()
                .orElse(0);
        double end = top > 0 ? ROOM * top : 1;
        List<Panel> panels = new ArrayList<>();
        for (int axis = 0; axis < AXES.length; axis++) {
            int of = axis;
            String title = axis == 0 ? subject : "";
            panels.add(Panel.of(
                            title,
                            AxisSpec.of("Ride", "").between(0.4, places.size() + 0.6),
                            AxisSpec.of(AXES[axis], "m/s²").between(0, end),
                            bars(
                                    "as described",
                                    Tone.INK,
                                    places,
                                    byPlace,
                                    m -> m.without().get(of)),
                            bars(
                                    "with surge and sway",
                                    Tone.AMBER,
                                    places,
                                    byPlace,
                                    m -> m.with().get(of)))
                    .withLegend(LegendPlace.SHARED));
        }
        return panels;
    }

    private static double highest(Missed missed) {
        double top = 0;
        for (int axis = 0; axis < AXES.length; axis++) {
            top = Math.max(
                    top,
                    Math.max(
                            missed.without().get(axis).rms(),
                            missed.with().get(axis).rms()));
        }
        return top;
    }

    private static Series bars(
            String name,
            Tone tone,
            List<String> places,
            Map<String, Missed> byPlace,
            Function<Missed, Missed.Level> level) {
        double[] x = new double[places.size()];
        double[] y = new double[places.size()];
        for (int i = 0; i < x.length; i++) {
            Missed missed = byPlace.get(places.get(i));
            x[i] = i + 1;
            y[i] = missed == null ? Double.NaN : level.apply(missed).rms();
        }
        return new Series(name, x, y, LineStyle.SOLID, tone, Trace.BARS);
    }

    private static String caption(List<String> places) {
        List<String> numbered = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            numbered.add((i + 1) + " " + places.get(i));
        }
        return "R.m.s. of the unweighted acceleration at the seat, or with nobody aboard the named point, where it is greatest, as an accelerometer reads it, from first contact on: "
                + "as the vehicle is described, and with surge and sway besides (free, or held as its file says; sway not measured is taken at 6 Hz). "
                + "Rides: " + String.join(", ", numbered) + ".";
    }
}
