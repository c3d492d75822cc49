package org.ridewright.report;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import org.ridewright.figure.AxisSpec;
import org.ridewright.figure.Figure;
import org.ridewright.figure.Level;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;
import org.ridewright.ride.RideResult;
import org.ridewright.ride.RideResult.ElementResult;
import org.ridewright.ride.RideResult.WheelResult;
import org.ridewright.signal.Channel;

/** Figures of one ride test. */
public final class RideFigures {
    private static final int MOST_LINES = 5;
    private static final int MOST_LOOPS = 8;
    private static final double ROOM = 0.06;
    private static final double MILLI = 1000;
    private static final double KILO = 1e-3;

    private RideFigures() {}

    /** Acceleration, body motion, wheel loads, spring loops and the wheel paths. */
    public static List<Figure> of(RideResult result) {
        List<Figure> figures = new ArrayList<>(ofTest(result));
        PathFigure.of(result).ifPresent(figures::add);
        return List.copyOf(figures);
    }

    /** The same without the wheel paths, which do not depend on speed and load. */
    static List<Figure> ofTest(RideResult result) {
        RideName name = RideName.of(result);
        List<Figure> figures = new ArrayList<>();
        acceleration(name, result).ifPresent(figures::add);
        figures.add(motion(name, result));
        wheelLoads(name, result).ifPresent(figures::add);
        loops(name, result).ifPresent(figures::add);
        figures.addAll(SpectrumFigures.of(name, result));
        return List.copyOf(figures);
    }

    private static Optional<Figure> acceleration(RideName name, RideResult result) {
        List<Felt> places = Felt.of(result).stream().limit(MOST_LINES).toList();
        if (places.isEmpty()) {
            return Optional.empty();
        }
        TimeSlice slice = TimeSlice.of(result);
        List<Series> lines = new ArrayList<>();
        for (Felt place : places) {
            place.trace(result).ifPresent(t -> lines.add(slice.line(lines.size(), place.name(), t, 1)));
        }
        if (lines.isEmpty()) {
            return Optional.empty();
        }
        Felt worst = Felt.worst(places);
        Panel panel = slice.marked(
                Panel.of("", slice.axis(), AxisSpec.of("Vertical acceleration", "m/s²"), lines.toArray(Series[]::new)),
                result);
        String caption = "Vertical acceleration %s of the %s; it is greatest %s at %s, %s m/s² %s at %s s."
                .formatted(
                        worst.seat() ? "on the seats, unweighted," : "at the named points",
                        name.words(),
                        places.size() == 1 ? "" : "of " + places.size() + " places",
                        worst.name(),
                        Numbers.of(worst.peak()),
                        worst.upward() ? "upward" : "downward",
                        Numbers.of(worst.at()))
                .replace("  ", " ");
        String title = "%s: vertical acceleration at %s, %s"
                .formatted(name.subject(), worst.seat() ? "the seat" : "the points read off", name.speed());
        return Optional.of(Figure.stacked(name.slug() + "-acceleration", title, caption + slice.said(), 80, panel));
    }

    private static Figure motion(RideName name, RideResult result) {
        TimeSlice slice = TimeSlice.of(result);
        List<Panel> panels = new ArrayList<>();
        List<String> extremes = new ArrayList<>();
        List<String> names = result.model().coordinates().names();
        for (int i = 0; i < names.size(); i++) {
            String coordinate = names.get(i);
            Optional<Channel> trace = result.trace(coordinate);
            if (!coordinate.startsWith("body ") || trace.isEmpty()) {
                continue;
            }
            boolean angle = result.model().coordinates().units().get(i).equals("rad");
            Series line = slice.line(0, coordinate, trace.get(), angle ? Math.toDegrees(1) : MILLI);
            String quantity = upperFirst(coordinate);
            String unit = angle ? "°" : "mm";
            panels.add(slice.marked(Panel.of("", slice.axis(), AxisSpec.of(quantity, unit), line), result));
            extremes.add("%s %s%s%s".formatted(coordinate, Numbers.of(greatestSize(line.y())), angle ? "" : " ", unit));
        }
        String caption =
                "Motion of the body of the %s, from its position of rest (roll: left side up, pitch: nose down); greatest %s."
                        .formatted(name.words(), String.join(", ", extremes));
        return Figure.stacked(
                name.slug() + "-body-motion",
                "%s: how the body moves, %s".formatted(name.subject(), name.speed()),
                caption + slice.said(),
                30 + 42.0 * panels.size(),
                panels.toArray(Panel[]::new));
    }

    private static Optional<Figure> wheelLoads(RideName name, RideResult result) {
        TimeSlice slice = TimeSlice.ofBlow(result);
        List<Panel> panels = new ArrayList<>();
        for (int axle = 0; axle < result.model().vehicle().axles().size(); axle++) {
            List<Series> lines = new ArrayList<>();
            for (var wheel : result.model().wheels()) {
                if (wheel.axle() == axle) {
                    result.trace(wheel.name() + " load")
                            .ifPresent(t -> lines.add(slice.line(lines.size(), wheel.name(), t, KILO)));
                }
            }
            if (!lines.isEmpty()) {
                String title = result.model().vehicle().axles().get(axle).name();
                panels.add(slice.marked(
                        Panel.of(
                                        upperFirst(title),
                                        slice.axis(),
                                        AxisSpec.of("Wheel load", "kN"),
                                        lines.toArray(Series[]::new))
                                .withLevels(List.of(new Level(0, "lift-off"))),
                        result));
            }
        }
        if (panels.isEmpty()) {
            return Optional.empty();
        }
        WheelResult lightest = Extremes.lightestWheel(result);
        WheelResult longest = Extremes.longestOff(result);
        String off = longest.timeOff() > 0
                ? "the %s is off the ground for %s s in all, longer than any other"
                        .formatted(longest.wheel(), Numbers.of(longest.timeOff()))
                : "no wheel leaves the ground";
        String caption =
                "Loads of the wheels of the %s on the road; the smallest is %s N at the %s (%s N at rest), and %s."
                        .formatted(
                                name.words(),
                                Numbers.of(Extremes.leastLoad(lightest)),
                                lightest.wheel(),
                                Numbers.of(lightest.loadAtRest()),
                                off);
        return Optional.of(Figure.stacked(
                name.slug() + "-wheel-loads",
                "%s: wheel loads, %s".formatted(name.subject(), name.speed()),
                caption + slice.said(),
                26 + 58.0 * panels.size(),
                panels.toArray(Panel[]::new)));
    }

    private static Optional<Figure> loops(RideName name, RideResult result) {
        TimeSlice slice = TimeSlice.of(result);
        List<Series> loops = new ArrayList<>();
        for (ElementResult spring : result.springs()) {
            Optional<Channel> travel = result.trace(spring.element() + " travel");
            Optional<Channel> force = result.trace(spring.element() + " force");
            // the right-hand one of a pair is like the left-hand one
            boolean second = spring.element().endsWith(" right");
            if (!spring.kind().equals("spring") || second || travel.isEmpty() || force.isEmpty()) {
                continue;
            }
            if (loops.size() < MOST_LOOPS) {
                Series loop = Series.line(
                        0, spring.element(), slice.values(travel.get(), MILLI), slice.values(force.get(), KILO));
                loops.add(loop);
            }
        }
        if (loops.isEmpty()) {
            return Optional.empty();
        }
        AxisSpec compression = spanning("Compression from rest", "mm", loops, Series::x);
        AxisSpec force = spanning("Force", "kN", loops, Series::y);
        List<Panel> panels = loops.stream()
                .map(loop -> Panel.of(upperFirst(loop.name()), compression, force, loop))
                .toList();
        ElementResult farthest = Extremes.farthestSpring(result).orElseThrow();
        String caption =
                "Load–deflection loops of the springs of the %s, of a pair the left one, all on equal axes; '%s' moves farthest, %s mm from rest, and the area of each loop is the energy its friction and damping turn to heat (%s J in that spring)."
                        .formatted(
                                name.words(),
                                farthest.element(),
                                Numbers.of(MILLI * Extremes.travel(farthest)),
                                Numbers.of(farthest.dissipated()));
        int columns = panels.size() == 1 ? 1 : 2;
        int rows = (panels.size() + columns - 1) / columns;
        return Optional.of(new Figure(
                name.slug() + "-spring-loops",
                "%s: springs at work, %s".formatted(name.subject(), name.speed()),
                caption + slice.said(),
                panels,
                columns,
                Figure.PAGE_WIDTH_MM,
                24 + 64.0 * rows));
    }

    /** An axis that holds all of several series, with a little room. */
    private static AxisSpec spanning(String quantity, String unit, List<Series> all, Function<Series, double[]> which) {
        DoubleSummaryStatistics ends = all.stream()
                .flatMapToDouble(series -> DoubleStream.of(which.apply(series)))
                .filter(Double::isFinite)
                .summaryStatistics();
        double room = ends.getMax() > ends.getMin() ? ROOM * (ends.getMax() - ends.getMin()) : 1;
        return AxisSpec.of(quantity, unit).between(ends.getMin() - room, ends.getMax() + room);
    }

    private static double greatestSize(double[] values) {
        double greatest = 0;
        for (double v : values) {
            greatest = Math.max(greatest, Math.abs(v));
        }
        return greatest;
    }

    static String upperFirst(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
