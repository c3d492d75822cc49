package org.ridewright.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
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

    /** Longest time shown after the letting go (s). */
    private static final double LONGEST = 6;

    private static final double TITLE_HEIGHT = 24;
    private static final double PANEL_HEIGHT = 40;
    private static final double CHART_HEIGHT = 62;
    /** Letters of the axis that stand side by side over the width of a page. */
    private static final int LETTERS_ACROSS = 100;

    private BounceFigures() {}

    /** What happens after each letting go under one load. */
    static Figure traces(LoadCaseBounces bounces) {
        List<BounceResult> results = bounces.results();
        double whole = results.stream().mapToDouble(BounceFigures::end).max().orElse(1);
        double end = Math.min(LONGEST, whole);
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
                        + "from there on, but for moments.%s",
                bounces.model().vehicle().name(),
                load,
                lifted,
                Handling.RAMP,
                Handling.HOLD,
                whole > end ? String.format(Locale.ROOT, " The first %.0f s are shown.", end) : "");
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
        List<TurningPoint> turns = result.count().turningPoints().stream()
                .filter(turn -> turn.time() <= end)
                .toList();
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
                : Numbers.of(count.frequency().getAsDouble()) + " Hz, " + BounceTables.cyclesInWords(count);
    }

    static double shown(Motion motion, double value) {
        return motion.turns() ? Math.toDegrees(value) : MILLI * value;
    }

    private static String upper(String word) {
        return RideFigures.upperFirst(word);
    }

    /** Ride frequencies over load cases, or of one over its tests, beside the natural ones of both conditions. */
    static Figure chart(List<LoadCaseBounces> all) {
        List<List<Bar>> panels = new ArrayList<>();
        int kinds = all.get(0).results().size();
        if (all.size() == 1) {
            panels.add(all.get(0).results().stream()
                    .map(result -> bar(all.get(0), result))
                    .toList());
        }
        for (int k = 0; k < kinds && all.size() > 1; k++) {
            int place = k;
            panels.add(all.stream().map(b -> bar(b, b.results().get(place))).toList());
        }
        double top = panels.stream()
                .flatMap(List::stream)
                .mapToDouble(bar -> Math.max(bar.locked(), Double.isNaN(bar.ride()) ? 0 : bar.ride()))
                .max()
                .orElse(1);
        List<String> places = all.size() > 1
                ? all.stream().map(b -> b.model().loadCase().name()).toList()
                : all.get(0).results().stream().map(r -> r.test().kind().word()).toList();
        int columns = panels.size() > 1 ? 2 : 1;
        AxisSpec across = places(all.size() > 1 ? "Load case" : "Test", places, columns);
        List<Panel> drawn = new ArrayList<>();
        for (int k = 0; k < panels.size(); k++) {
            String title = all.size() > 1
                    ? upper(all.get(0).results().get(k).test().kind().word())
                    : "";
            drawn.add(panel(title, across, top, panels.get(k)));
        }
        String caption = String.format(
                Locale.ROOT,
                "Ride frequency as the bounce test counts it, beside the natural frequency with springs that slide freely and that with springs which "
                        + "friction holds, of the motion that each test shows most. %s: %s. No bar: there is no cycle to count.",
                all.size() > 1
                        ? "Load cases"
                        : upper(all.get(0).model().loadCase().name()) + ", tests",
                numbered(places));
        int rows = (drawn.size() + columns - 1) / columns;
        return new Figure(
                "ride-frequencies",
                "What friction does to the ride frequency",
                caption,
                drawn,
                columns,
                Figure.PAGE_WIDTH_MM,
                TITLE_HEIGHT + CHART_HEIGHT * rows);
    }

    /** Three frequencies side by side (Hz). */
    private record Bar(double sliding, double ride, double locked) {}

    private static Bar bar(LoadCaseBounces bounces, BounceResult result) {
        BounceKind kind = result.test().kind();
        return new Bar(
                bounces.partner(kind, Condition.SLIDING).frequency(),
                result.count().frequency().orElse(Double.NaN),
                bounces.partner(kind, Condition.LOCKED).frequency());
    }

    private static Panel panel(String title, AxisSpec across, double top, List<Bar> bars) {
        return Panel.of(
                        title,
                        across,
                        AxisSpec.of("Frequency", "Hz").between(0, 1.05 * top),
                        bars("natural, sliding", Tone.AMBER, bars, Bar::sliding),
                        bars("ride frequency, counted", Tone.INK, bars, Bar::ride),
                        bars("natural, locked", Tone.TEAL, bars, Bar::locked))
                .withLegend(LegendPlace.SHARED);
    }

    /** Names below the bars where there is room; numbers, told in the caption, where there is none. */
    private static AxisSpec places(String what, List<String> names, int columns) {
        int longest = names.stream().mapToInt(String::length).max().orElse(0);
        return longest * names.size() <= LETTERS_ACROSS / columns
                ? AxisSpec.named(what, names)
                : AxisSpec.named(
                        what + ", numbered as in the caption",
                        IntStream.rangeClosed(1, names.size())
                                .mapToObj(Integer::toString)
                                .toList());
    }

    private static String numbered(List<String> names) {
        return IntStream.range(0, names.size())
                .mapToObj(i -> (i + 1) + " " + names.get(i))
                .collect(Collectors.joining(", "));
    }

    private static Series bars(String name, Tone tone, List<Bar> bars, ToDoubleFunction<Bar> value) {
        double[] x = IntStream.range(0, bars.size()).asDoubleStream().toArray();
        double[] y = bars.stream().mapToDouble(value).toArray();
        return new Series(name, x, y, LineStyle.SOLID, tone, Trace.BARS);
    }
}
