package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ridewright.figure.AxisSpec;
import org.ridewright.figure.Figure;
import org.ridewright.figure.LegendPlace;
import org.ridewright.figure.Level;
import org.ridewright.figure.LineStyle;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;
import org.ridewright.figure.Tone;
import org.ridewright.figure.Trace;
import org.ridewright.roughness.Excerpt;
import org.ridewright.roughness.SampledWheel;
import org.ridewright.roughness.SampledWheel.Disc;
import org.ridewright.roughness.SurveyedRoad;
import org.ridewright.roughness.SurveyedRoad.Passed;
import org.ridewright.roughness.SurveyedRoad.SurveyedTrack;

/** What wheels of several sizes make of a road: why old vehicles have big wheels. */
final class RoadWheelFigures {
    private static final double MILLI = 1000;
    private static final double PERCENT = 100;
    /** Lines that can be told apart in one plot. */
    private static final int MOST_LINES = 5;

    /** A share that needs a word of explanation. */
    private static final double MUCH_LONGER = 1.2;

    private RoadWheelFigures() {}

    /** How much of waves of each length reaches the axle, and how much of all of them, against the size of the wheel. */
    static Optional<Figure> passing(SurveyedRoad road) {
        List<SampledWheel> wheels = road.wheels();
        if (wheels.isEmpty()) {
            return Optional.empty();
        }
        List<Series> lines = new ArrayList<>();
        List<double[]> rigid = new ArrayList<>();
        List<double[]> soft = new ArrayList<>();
        List<String> said = new ArrayList<>();
        boolean longer = false;
        for (int w = 0; w < wheels.size(); w++) {
            List<Passed> passed = road.passed(w);
            if (passed.size() < 2) {
                return Optional.empty();
            }
            double[] length = new double[passed.size()];
            double[] share = new double[passed.size()];
            for (int i = 0; i < length.length; i++) {
                // from short to long
                Passed each = passed.get(passed.size() - 1 - i);
                length[i] = 1 / each.band().centre();
                share[i] = PERCENT * each.share();
                longer |= each.share() > MUCH_LONGER;
            }
            if (wheels.size() - w < MOST_LINES || lines.isEmpty()) {
                lines.add(Series.line(lines.size(), wheels.get(w).label(), length, share));
            }
            double jolting = PERCENT * road.jolting(w);
            (wheels.get(w) instanceof Disc ? rigid : soft).add(new double[] {diameter(wheels.get(w)), jolting});
            said.add("%s: %s %%".formatted(wheels.get(w).label(), Numbers.of(jolting, 2)));
        }
        Panel byLength = Panel.of(
                        "Of waves of each length",
                        AxisSpec.of("Length of a wave", "m").logarithmic(),
                        AxisSpec.of("Height of the waves that reaches the axle", "%")
                                .from(0),
                        lines.toArray(Series[]::new))
                .withLevels(List.of(new Level(PERCENT, "")))
                .withLegend(LegendPlace.BELOW);
        List<Series> bySize = new ArrayList<>();
        addSizes(bySize, "rigid wheels", rigid, Trace.LINE_AND_MARKS, LineStyle.SOLID, Tone.NAVY);
        addSizes(bySize, "pneumatic wheels", soft, Trace.MARKS, LineStyle.SOLID, Tone.RUST);
        Panel ofAll = Panel.of(
                        "Of all waves together, by size of the wheel",
                        AxisSpec.of("Diameter of the wheel", "m").from(0),
                        AxisSpec.of("Up-and-down speed of the axle", "%").from(0),
                        bySize.toArray(Series[]::new))
                .withLevels(List.of(new Level(PERCENT, "")))
                .withLegend(LegendPlace.BELOW);
        String caption =
                ("How much of %s reaches the axle, tracks taken together; 100 %% is a wheel without size, which would follow every "
                                + "grain. Left: root of the spectrum of the wheel's path over that of the road, for waves of each length. Right: the r.m.s. "
                                + "up-and-down speed of the axle from waves of %s to %s m (%s).%s")
                        .formatted(
                                road.name(),
                                Numbers.of(road.shortestWave(), 2),
                                Numbers.of(road.longestWave(), 2),
                                String.join("; ", said),
                                longer
                                        ? " More than 100 % of a wave: a wheel turns something short and steep into a longer and gentler rise."
                                        : "");
        return Optional.of(new Figure(
                RideName.slug(road.name()) + "-wheels",
                RideFigures.upperFirst(road.name()) + ": what reaches the axle, by size of wheel",
                caption,
                List.of(byLength, ofAll),
                2,
                Figure.PAGE_WIDTH_MM,
                92));
    }

    private static double diameter(SampledWheel wheel) {
        if (wheel instanceof Disc disc) {
            return disc.diameter();
        }
        return wheel instanceof SampledWheel.Pneumatic tyre ? tyre.diameter() : 0;
    }

    private static void addSizes(
            List<Series> to, String name, List<double[]> points, Trace trace, LineStyle style, Tone tone) {
        if (!points.isEmpty()) {
            double[] x = points.stream().mapToDouble(p -> p[0]).toArray();
            double[] y = points.stream().mapToDouble(p -> p[1]).toArray();
            to.add(new Series(name, x, y, style, tone, trace));
        }
    }

    /** The stretch on which wheels and road differ most, of the track where that is so most. */
    static Optional<Figure> paths(SurveyedRoad road) {
        Optional<SurveyedTrack> track = road.tracks().stream()
                .filter(t -> t.roughness().excerpt().isPresent())
                .findFirst();
        if (track.isEmpty()) {
            return Optional.empty();
        }
        Excerpt excerpt = track.get().roughness().excerpt().orElseThrow();
        List<SampledWheel> wheels = road.wheels();
        double[] x = new double[excerpt.road().length];
        for (int i = 0; i < x.length; i++) {
            x[i] = excerpt.start() + i * excerpt.spacing();
        }
        List<Series> lines = new ArrayList<>();
        lines.add(new Series("road", x, milli(excerpt.road()), LineStyle.SOLID, Tone.AMBER, Trace.LINE));
        for (int w = 0; w < wheels.size(); w++) {
            // the first, one in the middle and the last
            if (w == 0 || w == wheels.size() / 2 || w == wheels.size() - 1) {
                lines.add(Series.line(
                        lines.size() - 1,
                        wheels.get(w).label(),
                        x,
                        milli(excerpt.paths().get(w))));
            }
        }
        Panel panel = Panel.of(
                        "",
                        AxisSpec.of("Station along the road", "m").between(x[0], x[x.length - 1]),
                        AxisSpec.of("Height of road and wheel centre", "mm"),
                        lines.toArray(Series[]::new))
                .withLegend(LegendPlace.BELOW);
        String caption =
                ("Paths of the centres of three wheels over the stretch of %s (%s) on which wheels and road differ most, each above its height on "
                                + "the level. Heights are drawn larger than lengths.")
                        .formatted(road.name(), track.get().name());
        return Optional.of(Figure.stacked(
                RideName.slug(road.name()) + "-wheel-paths",
                RideFigures.upperFirst(road.name()) + ": where wheels do not follow the road",
                caption,
                84,
                panel));
    }

    private static double[] milli(double[] metres) {
        double[] out = new double[metres.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = MILLI * metres[i];
        }
        return out;
    }
}
