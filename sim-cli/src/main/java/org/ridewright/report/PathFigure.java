package org.ridewright.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.ridewright.dynamics.WheelPlace;
import org.ridewright.figure.AxisSpec;
import org.ridewright.figure.Figure;
import org.ridewright.figure.LineStyle;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;
import org.ridewright.figure.Tone;
import org.ridewright.figure.Trace;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.ride.RideResult;
import org.ridewright.road.RoadProfile;
import org.ridewright.road.RoadTracks;
import org.ridewright.road.Track;
import org.ridewright.vehicle.Wheel;
import org.ridewright.wheel.WheelPath;

/** Paths of the wheels' centres against the shape of what they roll over: one panel for each track that differs. */
final class PathFigure {
    private static final int SAMPLES = 1600;
    private static final double LONGEST = 4;
    /** Steps by which the roughest stretch is looked for, pieces that are compared, and what is held at a time (m). */
    private static final double STEP = 0.02;

    private static final double PIECE = 0.5;
    private static final double WINDOW = 20;
    private static final double MILLI = 1000;
    private static final double JUMP = 1e-9;

    private PathFigure() {}

    /** The figure; none where the road is level under every wheel. */
    static Optional<Figure> of(RideResult result) {
        double first = Double.POSITIVE_INFINITY;
        double last = Double.NEGATIVE_INFINITY;
        for (PiecewisePolynomial path : result.wheelPaths()) {
            first = Math.min(first, WheelPath.firstDeparture(path).orElse(first));
            last = Math.max(last, WheelPath.lastReturn(path).orElse(last));
        }
        if (!(first < last)) {
            return Optional.empty();
        }
        boolean cut = last - first > LONGEST;
        double begin = cut ? roughest(result, first, last) : first;
        double end = cut ? begin + LONGEST : last;
        double room = 0.12 * (end - begin);
        return Optional.of(figure(result, begin - room, end + room, cut));
    }

    /** Where the stretch begins in the middle of which wheels and road differ most, as the survey of a road looks for it (m). */
    private static double roughest(RideResult result, double first, double last) {
        double[] differ = new double[(int) Math.ceil((last - first) / PIECE)];
        for (double from = first; from < last; from += WINDOW) {
            double to = Math.min(last, from + WINDOW);
            List<RoadProfile> roads = roads(result, from, to);
            for (int w = 0; w < roads.size(); w++) {
                for (double s = from + STEP / 2; s < to; s += STEP) {
                    double off =
                            result.wheelPaths().get(w).value(s) - roads.get(w).height(s);
                    differ[Math.min(differ.length - 1, (int) ((s - first) / PIECE))] += off * off;
                }
            }
        }
        int worst = 0;
        for (int i = 1; i < differ.length; i++) {
            worst = differ[i] > differ[worst] ? i : worst;
        }
        double begin = first + (worst + 0.5) * PIECE - LONGEST / 2;
        return Math.max(first, Math.min(last - LONGEST, begin));
    }

    private static Figure figure(RideResult result, double from, double to, boolean cut) {
        List<RoadProfile> roads = roads(result, from, to);
        Map<List<Double>, List<Integer>> tracks = new LinkedHashMap<>();
        for (int w = 0; w < result.wheelPaths().size(); w++) {
            RoadProfile road = roads.get(w);
            List<Double> heights = Arrays.stream(stations(road, from, to))
                    .mapToObj(road::height)
                    .toList();
            tracks.computeIfAbsent(heights, k -> new ArrayList<>()).add(w);
        }
        List<Panel> panels = new ArrayList<>();
        List<String> rises = new ArrayList<>();
        for (List<Integer> wheels : tracks.values()) {
            panels.add(panel(result, roads.get(wheels.get(0)), wheels, from, to, tracks.size() > 1, rises));
        }
        String vehicle = result.model().vehicle().name();
        String road = result.road().name();
        String caption =
                "Height of the wheels' centres above their height on the level, for the wheels of the %s on %s, against the road's own height; heights are drawn larger than lengths. Largest departure: %s.%s"
                        .formatted(
                                vehicle,
                                road,
                                String.join("; ", rises),
                                cut ? " Shown are the 4 m on which wheels and road differ most." : "");
        return Figure.stacked(
                RideName.slug(vehicle) + "-" + RideName.slug(road) + "-wheel-paths",
                "%s: what its wheels follow on %s".formatted(vehicle, road),
                caption,
                26 + 58.0 * panels.size(),
                panels.toArray(Panel[]::new));
    }

    private static Panel panel(
            RideResult result,
            RoadProfile road,
            List<Integer> wheels,
            double from,
            double to,
            boolean named,
            List<String> rises) {
        double[] x = stations(road, from, to);
        List<Series> lines = new ArrayList<>();
        double[] ground = Arrays.stream(x).map(s -> MILLI * road.height(s)).toArray();
        lines.add(new Series("road", x, ground, LineStyle.SOLID, Tone.AMBER, Trace.LINE));
        Map<String, Integer> sizes = new LinkedHashMap<>();
        wheels.forEach(w -> sizes.putIfAbsent(size(result, w), w));
        sizes.forEach((size, w) -> {
            PiecewisePolynomial path = result.wheelPaths().get(w);
            double[] y = Arrays.stream(x).map(s -> MILLI * path.value(s)).toArray();
            lines.add(Series.line(lines.size() - 1, size, x, y));
            double extreme = Arrays.stream(y)
                    .boxed()
                    .max((a, b) -> Double.compare(Math.abs(a), Math.abs(b)))
                    .orElse(0.0);
            rises.add("%s mm (%s)".formatted(Numbers.of(extreme), size));
        });
        String title = named
                ? RideFigures.upperFirst(String.join(
                        ", ",
                        wheels.stream()
                                .map(w -> result.model().wheels().get(w).name())
                                .toList()))
                : "";
        return Panel.of(
                title,
                AxisSpec.of("Station along the road", "m").between(from, to),
                AxisSpec.of("Height", "mm"),
                lines.toArray(Series[]::new));
    }

    private static String size(RideResult result, int w) {
        WheelPlace place = result.model().wheels().get(w);
        Wheel wheel = result.model().vehicle().axles().get(place.axle()).wheel();
        return String.format(
                Locale.ROOT,
                "wheel of %.0f mm, %s",
                MILLI * wheel.diameter().value(),
                wheel.path().word());
    }

    /** The road under each wheel; the tracks are made together, as they were for the ride. */
    private static List<RoadProfile> roads(RideResult result, double from, double to) {
        List<WheelPlace> wheels = result.model().wheels();
        List<Track> tracks = result.model().vehicle().layout().rolls()
                ? RoadTracks.of(
                        result.road(),
                        wheels.stream().mapToDouble(WheelPlace::y).toArray())
                : Collections.nCopies(wheels.size(), RoadTracks.everySide(result.road()));
        return tracks.stream().map(track -> track.window(from, to)).toList();
    }

    /** Equal steps, and both sides of every joint so that upright faces are drawn upright. */
    private static double[] stations(RoadProfile road, double from, double to) {
        TreeSet<Double> x = new TreeSet<>();
        for (int i = 0; i <= SAMPLES; i++) {
            x.add(from + (to - from) * i / SAMPLES);
        }
        for (int i = 0; i < road.joints(); i++) {
            for (double side : new double[] {-JUMP, 0, JUMP}) {
                double s = road.joint(i) + side;
                if (s > from && s < to) {
                    x.add(s);
                }
            }
        }
        return x.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
