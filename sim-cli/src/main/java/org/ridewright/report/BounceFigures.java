package org.ridewright.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.ridewright.bounce.BounceKind;
import org.ridewright.bounce.BounceResult;
import org.ridewright.bounce.Count;
import org.ridewright.bounce.Handling;
import org.ridewright.bounce.LoadCaseBounces;
import org.ridewright.bounce.Motion;
import org.ridewright.bounce.TurningPoint;
import org.ridewright.figure.AxisSpec;
import org.ridewright.figure.Band;
import org.ridewright.figure.Figure;
import org.ridewright.figure.LegendPlace;
import org.ridewright.figure.LineStyle;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;
import org.ridewright.figure.Tone;
import org.ridewright.figure.Trace;
import org.ridewright.modal.Condition;
import org.ridewright.signal.Channel;

/** Figures of simulated bounce tests. */
final class BounceFigures {
    private static final double MILLI = 1000;
    /** Shown after the last thing that happens (s). */
    private static final double AFTER = 0.8;
    /** Shown before the letting go: the end of the push (s). */
    private static final double BEFORE = 0.5;

    private static final double TITLE_HEIGHT = 24;
    private static final double PANEL_HEIGHT = 40;
    private static final double CHART_HEIGHT = 62;

    private BounceFigures() {}

    /** What happens after each letting go under one load. */
    static Figure traces(LoadCaseBounces bounces) {
        List<BounceResult> results = bounces.results();
        double end = results.stream().mapToDouble(BounceFigures::end).max().orElse(1);
        AxisSpec time = AxisSpec.of("Time from letting go", "s").between(-BEFORE, end);
        List<Panel> panels = new ArrayList<>();
        for (BounceResult result : results) {
            panels.add(panel(result, time, end));
        }
        String load = bounces.model().loadCase().name();
        String lifted = results.get(0).test().handling().lifts() ? "lifted" : "pressed down";
        String caption = String.format(
                Locale.ROOT,
                "%s, %s: the motion that is counted in each test, from the position of rest. The body has been %s with a force that grows over %.0f s, is held for "
                        + "%.0f s and is gone at time 0. Marks: turning points that count, the letting go among them. Shaded: friction holds every spring "
                        + "from there on.",
                bounces.model().vehicle().name(),
                load,
                lifted,
                Handling.RAMP,
                Handling.HOLD);
        return Figure.stacked(
                "bounce-" + RideName.slug(load),
                "Bounce tests, " + load,
                caption,
                TITLE_HEIGHT + PANEL_HEIGHT * panels.size(),
                panels.toArray(Panel[]::new));
    }

    private static double end(BounceResult result) {
        Count count = result.count();
        double last = count.turningPoints().get(count.halfCycles()).time();
        return Math.min(
                result.duration(), Math.max(last, Math.min(result.lockedSince().orElse(0), last + AFTER)) + AFTER);
    }

    private static Panel panel(BounceResult result, AxisSpec time, double end) {
        Motion motion = result.test().kind().counted();
        Channel channel = result.traces().stream()
                .filter(c -> c.name().equals(motion.title()))
                .findFirst()
                .orElseThrow();
        int[] seen = IntStream.range(0, channel.size())
                .filter(i -> channel.time(i) >= -BEFORE && channel.time(i) <= end)
                .toArray();
        double[] x = Arrays.stream(seen).mapToDouble(channel::time).toArray();
        double[] y = Arrays.stream(seen)
                .mapToDouble(i -> shown(motion, channel.sample(i)))
                .toArray();
        List<TurningPoint> turns = result.count().turningPoints();
        double[] tx = turns.stream().mapToDouble(TurningPoint::time).toArray();
        double[] ty = turns.stream().mapToDouble(t -> shown(motion, t.value())).toArray();
        List<Band> bands =
                result.lockedSince().isPresent() && result.lockedSince().getAsDouble() < end
                        ? List.of(new Band(Band.Span.OF_X, result.lockedSince().getAsDouble(), end, ""))
                        : List.of();
        return Panel.of(
                        upper(result.test().kind().word()) + " test: " + told(result.count()),
                        time,
                        AxisSpec.of(axis(motion), motion.turns() ? "°" : "mm"),
                        new Series("motion", x, y, LineStyle.SOLID, Tone.INK, Trace.LINE),
                        new Series("turning points counted", tx, ty, LineStyle.SOLID, Tone.RUST, Trace.MARKS))
                .withBands(bands)
                .withLegend(LegendPlace.SHARED);
    }

    private static String axis(Motion motion) {
        return switch (motion) {
            case PITCH -> "Pitch";
            case ROLL -> "Roll";
            default -> "Height";
        };
    }

    private static String told(Count count) {
        return count.isHeld()
                ? "no cycle"
                : Numbers.of(count.frequency().getAsDouble()) + " Hz, " + BounceTables.cycles(count) + " cycles";
    }

    static double shown(Motion motion, double value) {
        return motion.turns() ? Math.toDegrees(value) : MILLI * value;
    }

    private static String upper(String word) {
        return RideFigures.upperFirst(word);
    }

    /** Ride frequencies over load cases, beside the natural ones of both conditions. */
    static Figure chart(List<LoadCaseBounces> all) {
        List<Panel> panels = new ArrayList<>();
        int kinds = all.get(0).results().size();
        double top = 0;
        for (LoadCaseBounces bounces : all) {
            for (BounceResult result : bounces.results()) {
                BounceKind kind = result.test().kind();
                top = Math.max(top, result.count().frequency().orElse(0));
                top = Math.max(top, bounces.partner(kind, Condition.LOCKED).frequency());
            }
        }
        for (int k = 0; k < kinds; k++) {
            int place = k;
            BounceKind kind = all.get(0).results().get(k).test().kind();
            panels.add(Panel.of(
                            upper(kind.word()),
                            AxisSpec.of("Load case", "").between(0.5, all.size() + 0.5),
                            AxisSpec.of("Frequency", "Hz").between(0, 1.05 * top),
                            bars(
                                    "natural, sliding",
                                    Tone.AMBER,
                                    all,
                                    b -> b.partner(kind, Condition.SLIDING).frequency()),
                            bars(
                                    "ride frequency, counted",
                                    Tone.INK,
                                    all,
                                    b -> b.results()
                                            .get(place)
                                            .count()
                                            .frequency()
                                            .orElse(Double.NaN)),
                            bars(
                                    "natural, locked",
                                    Tone.TEAL,
                                    all,
                                    b -> b.partner(kind, Condition.LOCKED).frequency()))
                    .withLegend(LegendPlace.SHARED));
        }
        StringBuilder numbered = new StringBuilder();
        for (int i = 0; i < all.size(); i++) {
            numbered.append(i == 0 ? "" : ", ").append(i + 1).append(" ");
            numbered.append(all.get(i).model().loadCase().name());
        }
        String caption =
                "Ride frequency as the bounce test counts it, between the natural frequency with springs that slide freely and that with springs which "
                        + "friction holds, of the mode that each test shows most. Load cases: " + numbered
                        + ". No bar: the body does not come back visibly.";
        int columns = kinds > 1 ? 2 : 1;
        int rows = (kinds + columns - 1) / columns;
        return new Figure(
                "ride-frequencies",
                "What friction does to the ride frequency",
                caption,
                panels,
                columns,
                Figure.PAGE_WIDTH_MM,
                TITLE_HEIGHT + CHART_HEIGHT * rows);
    }

    private static Series bars(
            String name, Tone tone, List<LoadCaseBounces> all, ToDoubleFunction<LoadCaseBounces> value) {
        double[] x = IntStream.range(0, all.size()).mapToDouble(i -> i + 1).toArray();
        double[] y = all.stream().mapToDouble(value).toArray();
        return new Series(name, x, y, LineStyle.SOLID, tone, Trace.BARS);
    }
}
