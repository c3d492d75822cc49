package org.ridewright.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.ridewright.figure.AxisSpec;
import org.ridewright.figure.Figure;
import org.ridewright.figure.LegendPlace;
import org.ridewright.figure.LineStyle;
import org.ridewright.figure.Marker;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;
import org.ridewright.figure.Tone;
import org.ridewright.figure.Trace;
import org.ridewright.friction.BestBand;
import org.ridewright.friction.Criterion;
import org.ridewright.friction.FrictionLab;
import org.ridewright.friction.TradeLine;
import org.ridewright.friction.TradeOff;

/** What more or less friction makes of a ride, and where it is best. */
final class TradeFigures {
    private static final double KMH = 3.6;
    private static final double MILLI = 1000;
    /** Of an axis over the greatest value on it. */
    private static final double ROOM = 1.05;

    private static final int MOST_BESIDE = 3;
    /** Of the height of a row's area (rows). */
    private static final double HALF = 0.3;

    /** Frictions that are looked at for an area. */
    private static final int LOOKS = 500;

    private final FrictionLab lab;
    private final TradeOff trade;
    private final AxisSpec axis;

    private TradeFigures(FrictionLab lab) {
        this.lab = lab;
        trade = lab.tradeOff();
        axis = AxisSpec.of("Friction over that as written", "")
                .between(0, 1.03 * trade.factors().get(trade.factors().size() - 1));
    }

    static List<Figure> of(FrictionLab lab) {
        TradeFigures figures = new TradeFigures(lab);
        List<Figure> all = new ArrayList<>();
        if (!TradeWords.bands(lab).isEmpty()) {
            all.add(figures.best());
        }
        figures.gravel().ifPresent(all::add);
        figures.classes().ifPresent(all::add);
        figures.locked().ifPresent(all::add);
        List.of(Criterion.PLANK_PEAK, Criterion.PITCH_AFTER, Criterion.CYCLES)
                .forEach(c -> figures.plank(c).ifPresent(all::add));
        return all;
    }

    static String speed(double metresPerSecond) {
        return Numbers.brief(KMH * metresPerSecond) + " km/h";
    }

    private String slug(String what) {
        return RideName.slug(lab.model().vehicle().name()) + "-" + what;
    }

    private double factor(Criterion criterion) {
        return criterion == Criterion.PITCH_AFTER ? MILLI : criterion == Criterion.LOCKED ? 100 : 1;
    }

    private AxisSpec upright(Criterion criterion) {
        return switch (criterion) {
            case PLANK_PEAK -> AxisSpec.of("Greatest acceleration", "m/s²");
            case WEIGHTED -> AxisSpec.of("Weighted acceleration", "m/s²");
            case PITCH_AFTER -> AxisSpec.of("Greatest pitch", "mrad");
            case CYCLES -> AxisSpec.of("Cycles", "");
            case HEAVE_LEFT, PITCH_LEFT -> throw new IllegalArgumentException("not drawn: " + criterion.title());
            case LOCKED -> AxisSpec.of("Time locked", "%");
        };
    }

    /** A panel for each line, all on one scale: the median, and the area in which nine tenths of the draws lie. */
    private List<Panel> panels(Criterion criterion, List<TradeLine> lines, Function<TradeLine, String> title) {
        double most = lines.stream()
                .flatMapToDouble(l -> IntStream.range(0, l.factors().length)
                        .mapToDouble(i -> factor(criterion) * l.at(i).high()))
                .max()
                .orElse(1);
        List<Panel> panels = new ArrayList<>();
        for (TradeLine line : lines) {
            double[] x = line.factors();
            List<Series> series = new ArrayList<>();
            series.add(Series.line(0, "median of the draws", x, along(line, criterion, TradeLine.Spread::median))
                    .as(Trace.LINE_AND_MARKS));
            if (trade.draws() > 1) {
                series.add(new Series(
                        "where a further draw would lie",
                        joined(x, x),
                        joined(
                                along(line, criterion, TradeLine.Spread::low),
                                along(line, criterion, TradeLine.Spread::high)),
                        LineStyle.SOLID,
                        Tone.NAVY,
                        Trace.AREA));
            }
            panels.add(Panel.of(
                            title.apply(line),
                            axis,
                            upright(criterion).between(0, most > 0 ? ROOM * most : 1),
                            series.toArray(Series[]::new))
                    .withMarkers(List.of(new Marker(1, "as written")))
                    .withLegend(trade.draws() > 1 ? LegendPlace.SHARED : LegendPlace.NONE));
        }
        return panels;
    }

    private double[] along(TradeLine line, Criterion criterion, ToDoubleFunction<TradeLine.Spread> end) {
        return IntStream.range(0, line.factors().length)
                .mapToDouble(i -> factor(criterion) * end.applyAsDouble(line.at(i)))
                .toArray();
    }

    private static Figure beside(String slug, String title, String caption, List<Panel> panels) {
        int columns = Math.min(MOST_BESIDE, panels.size());
        int rows = (panels.size() + columns - 1) / columns;
        return new Figure(
                slug, title, caption, panels, columns, Figure.PAGE_WIDTH_MM, 24 + (columns == 1 ? 62.0 : 54.0) * rows);
    }

    /** There and back. */
    private static double[] joined(double[] there, double[] back) {
        int n = there.length;
        double[] out = new double[2 * n];
        for (int i = 0; i < n; i++) {
            out[i] = there[i];
            out[2 * n - 1 - i] = back[i];
        }
        return out;
    }

    private Optional<Figure> plank(Criterion criterion) {
        List<TradeLine> lines = trade.lines(criterion, "plank");
        if (lines.isEmpty()) {
            return Optional.empty();
        }
        String what =
                switch (criterion) {
                    case PITCH_AFTER -> "Greatest pitch once the last axle is down.";
                    case CYCLES ->
                        "Cycles of heave or pitch once the last axle is down, for as far as 3 s go: swings of at least 2 mm or 2 mrad from turn to turn, without what goes on on springs that friction holds."
                                + HeldSwing.notAtRest(trade, List.of(lines.get(lines.size() / 2)));
                    default -> "Greatest vertical acceleration at %s.".formatted(trade.place());
                };
        return Optional.of(beside(
                slug("friction-plank-" + RideName.slug(criterion.title())),
                RingDownFigures.subject(lab) + ": " + criterion.title(),
                "A plank 25 mm high and 200 mm long, square-edged, under both wheels. " + what + " " + draws(),
                panels(criterion, lines, l -> speed(l.speed()))));
    }

    private Optional<Figure> classes() {
        List<TradeLine> lines = TradeWords.classes(trade);
        return lines.isEmpty()
                ? Optional.empty()
                : Optional.of(beside(
                        slug("friction-classes"),
                        RingDownFigures.subject(lab) + ": rougher and rougher roads",
                        "Random roads of ISO 8608 classes at %s. Acceleration at %s weighted by W_k of ISO 2631-1, r.m.s. over %s s. %s"
                                .formatted(
                                        speed(lines.get(0).speed()),
                                        trade.place(),
                                        Numbers.brief(TradeOff.RIDE),
                                        draws()),
                        panels(Criterion.WEIGHTED, lines, l -> RideFigures.upperFirst(l.road()))));
    }

    private Optional<Figure> gravel() {
        List<TradeLine> lines = trade.lines(Criterion.WEIGHTED, "gravel");
        return lines.isEmpty()
                ? Optional.empty()
                : Optional.of(beside(
                        slug("friction-gravel"),
                        RingDownFigures.subject(lab) + ": gravel",
                        "Acceleration at %s weighted by W_k of ISO 2631-1, r.m.s. over %s s. %s"
                                .formatted(trade.place(), Numbers.brief(TradeOff.RIDE), draws()),
                        panels(Criterion.WEIGHTED, lines, l -> speed(l.speed()))));
    }

    private Optional<Figure> locked() {
        List<TradeLine> lines = trade.lines(Criterion.LOCKED, "gravel");
        return lines.isEmpty()
                ? Optional.empty()
                : Optional.of(beside(
                        slug("friction-locked"),
                        RingDownFigures.subject(lab) + ": time that friction holds the springs on gravel",
                        "Share of the time during which a spring is locked, mean of the springs. " + draws(),
                        panels(Criterion.LOCKED, lines, l -> speed(l.speed()))));
    }

    private String draws() {
        if (trade.draws() == 1) {
            return "One vehicle, as written.";
        }
        return "Lines: medians of %d draws; areas: where one further draw would lie with a probability of %s. Each draw has %s."
                .formatted(
                        trade.draws(),
                        Numbers.percent(TradeLine.Spread.coverage(trade.draws())),
                        trade.uncertain() > 0
                                ? "a vehicle within its tolerances and a random road of its own, the friction being left as written"
                                : "a random road of its own");
    }

    private Figure best() {
        List<BestBand> bands = TradeWords.bands(lab);
        List<String> names = new ArrayList<>();
        List<double[]> half = new ArrayList<>();
        List<double[]> most = new ArrayList<>();
        List<double[]> least = new ArrayList<>();
        double[] best = new double[bands.size()];
        double[] rows = new double[bands.size()];
        for (int i = 0; i < bands.size(); i++) {
            BestBand each = bands.get(i);
            // the first stands at the top
            int row = bands.size() - 1 - i;
            names.add(TradeWords.brief(each));
            best[i] = each.best().median();
            rows[i] = row;
            runs(each, (trade.draws() + 1) / 2, row, half);
            runs(each, BestBand.agreeing(trade.draws()), row, most);
            least.add(new double[] {each.best().low(), each.best().high(), row});
        }
        Collections.reverse(names);
        List<Series> series = new ArrayList<>();
        if (trade.draws() == 1) {
            series.add(boxes("as good as the least", half, Trace.AREA));
        } else {
            addBoxes(series, "as good as the least in half of the draws", half, Trace.AREA);
            addBoxes(series, "in nine of ten", most, Trace.DEEP_AREA);
            if (least.stream().anyMatch(e -> e[1] > e[0])) {
                series.add(segments("where the least of a further draw lies", least));
            }
        }
        series.add(new Series("least, median", best, rows, LineStyle.SOLID, Tone.RUST, Trace.MARKS));
        Panel panel = Panel.of("", axis, AxisSpec.named("", names), series.toArray(Series[]::new))
                .withMarkers(List.of(new Marker(1, "as written")))
                .withLegend(LegendPlace.BELOW);
        return Figure.stacked(
                slug("friction-best"),
                RingDownFigures.subject(lab) + ": where friction is best",
                ("The frictions at which the %s rides as well as at its best: within 5 %% of the least value of the same draw, half of the least difference of vibration that seated people notice (from "
                                + "memory); of cycles, within half a cycle. "
                                + "An area from edge to edge says that friction does not matter; one at the left edge alone, that too much is worse; one at the right edge alone, that too little is. Where an area is a sliver, the count of draws just comes up to its limit. Cycles leave out what goes on on springs that friction holds. %s")
                        .formatted(lab.model().vehicle().name(), drawn()),
                40 + 7.0 * bands.size(),
                panel);
    }

    private String drawn() {
        return trade.draws() == 1
                ? "One vehicle, as written."
                : "Where there is no deep area, no friction is as good in nine draws of ten. %d draws; the least of a further one would lie on the line with a probability of %s."
                        .formatted(trade.draws(), Numbers.percent(TradeLine.Spread.coverage(trade.draws())));
    }

    /** Stretches of friction at which so many draws are as good as their least. */
    private void runs(BestBand band, int draws, int row, List<double[]> found) {
        double most = trade.factors().get(trade.factors().size() - 1);
        double from = Double.NaN;
        for (int i = 0; i <= LOOKS; i++) {
            double factor = most * i / LOOKS;
            boolean good = band.draws(factor) >= draws;
            if (good && Double.isNaN(from)) {
                from = factor;
            }
            if (!Double.isNaN(from) && (!good || i == LOOKS)) {
                found.add(new double[] {from, good ? factor : factor - most / LOOKS, row});
                from = Double.NaN;
            }
        }
    }

    private static void addBoxes(List<Series> series, String name, List<double[]> each, Trace trace) {
        if (!each.isEmpty()) {
            series.add(boxes(name, each, trace));
        }
    }

    private static Series boxes(String name, List<double[]> each, Trace trace) {
        List<Double> x = new ArrayList<>();
        List<Double> y = new ArrayList<>();
        for (double[] e : each) {
            // a band of no width is still seen
            double to = Math.max(e[1], e[0] + 0.01);
            x.addAll(List.of(e[0], to, to, e[0], e[0]));
            y.addAll(List.of(e[2] - HALF, e[2] - HALF, e[2] + HALF, e[2] + HALF, Double.NaN));
        }
        return new Series(name, array(x), array(y), LineStyle.SOLID, Tone.NAVY, trace);
    }

    private static Series segments(String name, List<double[]> each) {
        List<Double> x = new ArrayList<>();
        List<Double> y = new ArrayList<>();
        for (double[] e : each) {
            if (e[1] > e[0]) {
                x.addAll(List.of(e[0], e[1], e[1]));
                y.addAll(List.of(e[2], e[2], Double.NaN));
            }
        }
        return new Series(name, array(x), array(y), LineStyle.SOLID, Tone.INK, Trace.LINE);
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
