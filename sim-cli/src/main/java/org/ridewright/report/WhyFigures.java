package org.ridewright.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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
import org.ridewright.study.Question;
import org.ridewright.study.RideMeasure;
import org.ridewright.uncertainty.Interval;
import org.ridewright.why.Contribution;
import org.ridewright.why.WhyFindings;

/** What each exchange does to each number, ranked, with interactions: one figure for each two ride tests. */
public final class WhyFigures {
    private static final int TOGETHER = 2;
    private static final int MOST_PAIRS = 6;
    /** Beyond these changes (parts) numbers are shown as ratios. */
    private static final double MOST_RISE = 1.5;

    private static final double MOST_FALL = -0.75;
    private static final double SIDE = 0.19;
    private static final List<Tone> TONES = List.of(Tone.NAVY, Tone.AMBER);
    private static final List<Tone> MARKS = List.of(Tone.INK, Tone.RUST);

    private final WhyFindings findings;
    private final List<Integer> tests;
    private final List<Integer> order;
    private final boolean ratios;

    private WhyFigures(WhyFindings findings, List<Integer> tests) {
        this.findings = findings;
        this.tests = tests;
        order = WhyWords.ranked(findings, tests.get(0));
        ratios = large();
    }

    /** All figures, under one heading. */
    public static List<FigureGroup> of(WhyFindings findings, WhyBasis basis) {
        if (findings.questions().isEmpty()) {
            return List.of();
        }
        List<Figure> figures = new ArrayList<>();
        for (int from = 0; from < findings.tests().size(); from += TOGETHER) {
            List<Integer> tests = IntStream.range(
                            from, Math.min(from + TOGETHER, findings.tests().size()))
                    .boxed()
                    .toList();
            figures.add(new WhyFigures(findings, tests).figure(figures.size(), basis));
        }
        return List.of(new FigureGroup("What each ingredient contributes", figures));
    }

    private Figure figure(int number, WhyBasis basis) {
        List<Panel> panels = new ArrayList<>();
        for (int q = 0; q < findings.questions().size(); q++) {
            panels.add(contributions(q));
        }
        if (findings.swaps().size() > 1) {
            shown().forEach(q -> panels.add(interactions(q)));
        }
        if (basis.whole() && findings.swaps().size() > 1) {
            shown().forEach(q -> panels.add(shares(q)));
        }
        int rows = (panels.size() + 1) / 2;
        return new Figure(
                "why" + (number == 0 ? "" : "-" + (number + 1)),
                basis.vehicle() + ", " + basis.load() + ": what would change if one thing were another",
                (ratios
                                ? "What each number would be, in times what it is now, when one ingredient is exchanged; equal ratios take equal "
                                        + "lengths. Marks: "
                                : "Change of each number in parts of what it is now, when one ingredient is exchanged. Bars: ")
                        + "the median of " + findings.draws()
                        + " draws within the tolerances; lines: where nine tenths of draws lie. An interval across the dashed line does "
                        + "not tell whether the number rises or falls."
                        + (findings.swaps().size() > 1
                                ? " Interactions: by how much two exchanges together do more (above 0) or less than the sum of each alone, in "
                                        + "parts of the number as it is now."
                                : "")
                        + (basis.whole() && findings.swaps().size() > 1
                                ? " Shares: the part of each in what all exchanges do together, the mean over all orders in which they could be made."
                                : ""),
                panels,
                panels.size() > 1 ? 2 : 1,
                Figure.PAGE_WIDTH_MM,
                18 + rows * (16 + 6.0 * Math.max(4, findings.swaps().size())));
    }

    /** The numbers of which interactions and shares are shown. */
    private List<Integer> shown() {
        return IntStream.range(0, findings.questions().size())
                .filter(q -> List.of(RideMeasure.SEAT_RMS, RideMeasure.PEAK)
                        .contains(findings.questions().get(q).measure()))
                .boxed()
                .toList();
    }

    /** Whether anything changes so much that the rest would be squeezed on a scale of equal steps. */
    private boolean large() {
        return IntStream.range(0, findings.questions().size())
                .boxed()
                .flatMap(q -> tests.stream().flatMap(t -> order.stream().map(i -> findings.alone(t, q, i))))
                .anyMatch(part ->
                        part.interval().high() > MOST_RISE || part.interval().low() < MOST_FALL);
    }

    private Panel contributions(int q) {
        List<String> names =
                order.stream().map(i -> findings.swaps().get(i).name()).toList();
        List<Series> series = series(order.size(), (t, r) -> findings.alone(t, q, order.get(r)), ratios);
        Question question = findings.questions().get(q);
        AxisSpec x = ratios ? ratioAxis(question, q) : AxisSpec.of("Change of " + axisName(question), "%");
        return panel(title(question), x, names, series, ratios ? 1 : 0);
    }

    /** From one of 1, 2, 5 times a power of ten to another, so that at least two numbers stand at it. */
    private AxisSpec ratioAxis(Question question, int q) {
        double low = 0.99;
        double high = 1.01;
        for (int t : tests) {
            for (int i : order) {
                Interval interval = findings.alone(t, q, i).interval();
                low = Math.min(low, 1 + interval.low());
                high = Math.max(high, 1 + interval.high());
            }
        }
        return AxisSpec.of(axisName(question) + ", times what it is now", "")
                .logarithmic()
                .between(end(low, false), end(high, true));
    }

    private static double end(double ratio, boolean above) {
        double power = Math.pow(10, Math.floor(Math.log10(ratio)));
        double[] steps = above ? new double[] {1, 2, 5, 10} : new double[] {5, 2, 1};
        for (double step : steps) {
            if (above ? step * power >= ratio : step * power <= ratio) {
                return step * power;
            }
        }
        return power;
    }

    private Panel shares(int q) {
        List<String> names =
                order.stream().map(i -> findings.swaps().get(i).name()).toList();
        Question question = findings.questions().get(q);
        return panel(
                "Shares: " + title(question),
                AxisSpec.of("Share in the change of " + axisName(question), "%"),
                names,
                series(order.size(), (t, r) -> findings.share(t, q, order.get(r)), false),
                0);
    }

    private Panel interactions(int q) {
        List<WhyWords.Pair> pairs = WhyWords.pairs(findings, tests.get(0), q).stream()
                .sorted(Comparator.comparingDouble(p -> -largest(p, q)))
                .limit(MOST_PAIRS)
                .toList();
        List<String> names = pairs.stream()
                .map(p -> findings.swaps().get(p.i()).name() + " × "
                        + findings.swaps().get(p.j()).name())
                .toList();
        Question question = findings.questions().get(q);
        return panel(
                "Interactions: " + title(question),
                AxisSpec.of("Interaction in " + axisName(question), "%"),
                names,
                series(
                        pairs.size(),
                        (t, r) -> findings.interaction(
                                t, q, pairs.get(r).i(), pairs.get(r).j()),
                        false),
                0);
    }

    private double largest(WhyWords.Pair pair, int q) {
        return tests.stream()
                .mapToDouble(t -> Math.abs(findings.interaction(t, q, pair.i(), pair.j())
                        .interval()
                        .median()))
                .max()
                .orElse(0);
    }

    /** What stands at a row, of a ride test. */
    private interface Row {
        Contribution of(int test, int row);
    }

    /** Medians of each ride test, and all intervals. */
    private List<Series> series(int n, Row row, boolean asRatios) {
        boolean marked = ratios;
        List<Series> series = new ArrayList<>();
        Across intervals = new Across();
        for (int t = 0; t < tests.size(); t++) {
            double[] x = new double[n];
            double[] y = new double[n];
            for (int r = 0; r < n; r++) {
                Interval interval = row.of(tests.get(t), r).interval();
                double middle = placed(interval.median(), asRatios);
                x[r] = Double.isFinite(middle) ? middle : placed(0, asRatios);
                y[r] = n - 1.0 - r + (marked ? offset(t) : 0);
                intervals.whisker(
                        placed(interval.low(), asRatios), placed(interval.high(), asRatios), n - 1.0 - r + offset(t));
            }
            series.add(new Series(
                    findings.tests().get(tests.get(t)),
                    x,
                    y,
                    LineStyle.SOLID,
                    (marked ? MARKS : TONES).get(t),
                    marked ? Trace.MARKS : Trace.BARS_ACROSS));
        }
        if (!intervals.isEmpty()) {
            series.add(intervals.series("90 % interval", Tone.INK, Trace.LINE));
        }
        return series;
    }

    private static double placed(double part, boolean asRatios) {
        return asRatios ? 1 + part : 100 * part;
    }

    /** Of the middle of a bar from that of all bars of one thing. */
    private double offset(int t) {
        return tests.size() == 1 ? 0 : t == 0 ? SIDE : -SIDE;
    }

    private Panel panel(String title, AxisSpec x, List<String> names, List<Series> series, double unchanged) {
        List<String> upwards = new ArrayList<>();
        names.forEach(name -> upwards.add(0, name));
        return Panel.of(title, x, AxisSpec.named("", upwards), series.toArray(Series[]::new))
                .withMarkers(List.of(new Marker(unchanged, "")))
                .withLegend(LegendPlace.SHARED);
    }

    private static String axisName(Question question) {
        return question.name().replace("a_w", "a_{w}");
    }

    private static String title(Question question) {
        return switch (question.measure()) {
            case SEAT_RMS -> "Weighted r.m.s.";
            case SEAT_VDV -> "Vibration dose";
            case PEAK -> "Peak";
            case SEAT_HEAVE -> "Heave, below 3 Hz";
            case SEAT_JOLT -> "Jolt, 3 to 10 Hz";
            case SEAT_BUZZ -> "Buzz, above 10 Hz";
            default -> RideFigures.upperFirst(question.name());
        };
    }
}
