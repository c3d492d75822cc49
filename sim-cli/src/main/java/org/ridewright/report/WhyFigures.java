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
import org.ridewright.why.Contribution;
import org.ridewright.why.WhyFindings;

/** What each exchange does to each number, ranked, with interactions: one figure for each two ride tests. */
public final class WhyFigures {
    private static final int TOGETHER = 2;
    private static final int MOST_PAIRS = 6;
    private static final double SIDE = 0.19;
    private static final List<Tone> TONES = List.of(Tone.NAVY, Tone.AMBER);
    private static final List<Tone> MARKS = List.of(Tone.INK, Tone.RUST);

    private final WhyFindings findings;
    private final List<Integer> tests;
    private final List<Integer> order;

    private WhyFigures(WhyFindings findings, List<Integer> tests) {
        this.findings = findings;
        this.tests = tests;
        order = WhyWords.ranked(findings, tests.get(0));
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
            IntStream.range(0, findings.questions().size())
                    .filter(q -> List.of(RideMeasure.SEAT_RMS, RideMeasure.PEAK)
                            .contains(findings.questions().get(q).measure()))
                    .forEach(q -> panels.add(interactions(q)));
        }
        int rows = (panels.size() + 1) / 2;
        return new Figure(
                "why" + (number == 0 ? "" : "-" + (number + 1)),
                basis.vehicle() + ", " + basis.load() + ": what would change if one thing were another",
                "Change of each number in parts of what it is now, when one ingredient is exchanged: bars, the median of "
                        + findings.draws()
                        + " draws within the tolerances; lines, where nine tenths of them lie. An interval that holds 0 does "
                        + "not tell whether the number rises or falls."
                        + (shares()
                                ? " Marks, the share of each in what all exchanges do together, the mean over all orders; shares add up to that"
                                        + (basis.whole() ? " (median of the draws)." : " (vehicle as written).")
                                : "")
                        + " Last panels: by how much two exchanges together do more than the sum of each alone.",
                panels,
                panels.size() > 1 ? 2 : 1,
                Figure.PAGE_WIDTH_MM,
                18 + rows * (16 + 6.0 * Math.max(4, findings.swaps().size())));
    }

    private boolean shares() {
        return findings.swaps().size() > 1
                && Double.isFinite(findings.share(0, 0, 0).asWritten());
    }

    private Panel contributions(int q) {
        List<String> names =
                order.stream().map(i -> findings.swaps().get(i).name()).toList();
        List<Series> series = new ArrayList<>();
        Across intervals = new Across();
        for (int t = 0; t < tests.size(); t++) {
            int test = tests.get(t);
            series.add(bars(
                    findings.tests().get(test),
                    t,
                    order.stream().map(i -> findings.alone(test, q, i)).toList(),
                    intervals));
        }
        add(series, intervals);
        if (shares()) {
            for (int t = 0; t < tests.size(); t++) {
                series.add(marks(q, t));
            }
        }
        return panel(title(findings.questions().get(q)), q, names, series);
    }

    private Series marks(int q, int t) {
        int test = tests.get(t);
        int n = order.size();
        double[] x = new double[n];
        double[] y = new double[n];
        for (int r = 0; r < n; r++) {
            Contribution share = findings.share(test, q, order.get(r));
            x[r] = 100 * (share.hasInterval() ? share.interval().median() : share.asWritten());
            y[r] = n - 1.0 - r + offset(t);
        }
        return new Series("share, " + findings.tests().get(test), x, y, LineStyle.SOLID, MARKS.get(t), Trace.MARKS);
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
        List<Series> series = new ArrayList<>();
        Across intervals = new Across();
        for (int t = 0; t < tests.size(); t++) {
            int test = tests.get(t);
            series.add(bars(
                    findings.tests().get(test),
                    t,
                    pairs.stream()
                            .map(p -> findings.interaction(test, q, p.i(), p.j()))
                            .toList(),
                    intervals));
        }
        add(series, intervals);
        return panel("Interactions: " + title(findings.questions().get(q)), q, names, series);
    }

    private double largest(WhyWords.Pair pair, int q) {
        return tests.stream()
                .mapToDouble(t -> Math.abs(findings.interaction(t, q, pair.i(), pair.j())
                        .interval()
                        .median()))
                .max()
                .orElse(0);
    }

    private Series bars(String name, int t, List<Contribution> parts, Across intervals) {
        int n = parts.size();
        double[] x = new double[n];
        double[] y = new double[n];
        for (int r = 0; r < n; r++) {
            var interval = parts.get(r).interval();
            x[r] = Double.isFinite(interval.median()) ? 100 * interval.median() : 0;
            y[r] = n - 1.0 - r;
            intervals.whisker(100 * interval.low(), 100 * interval.high(), y[r] + offset(t));
        }
        return new Series(name, x, y, LineStyle.SOLID, TONES.get(t), Trace.BARS_ACROSS);
    }

    /** Of the middle of a bar from that of all bars of one thing. */
    private double offset(int t) {
        return tests.size() == 1 ? 0 : t == 0 ? SIDE : -SIDE;
    }

    private static void add(List<Series> series, Across intervals) {
        if (!intervals.isEmpty()) {
            series.add(intervals.series("90 % interval", Tone.INK, Trace.LINE));
        }
    }

    private Panel panel(String title, int q, List<String> names, List<Series> series) {
        List<String> upwards = new ArrayList<>();
        names.forEach(name -> upwards.add(0, name));
        return Panel.of(
                        title,
                        AxisSpec.of(
                                "Change of "
                                        + findings.questions().get(q).name().replace("a_w", "a_{w}"),
                                "%"),
                        AxisSpec.named("", upwards),
                        series.toArray(Series[]::new))
                .withMarkers(List.of(new Marker(0, "")))
                .withLegend(LegendPlace.SHARED);
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
