package org.ridewright.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.ridewright.figure.AxisSpec;
import org.ridewright.figure.Figure;
import org.ridewright.figure.LegendPlace;
import org.ridewright.figure.LineStyle;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;
import org.ridewright.figure.Tone;
import org.ridewright.figure.Trace;
import org.ridewright.study.Estimate;
import org.ridewright.study.Factor;
import org.ridewright.study.Findings;
import org.ridewright.study.IndexFindings;
import org.ridewright.study.Question;
import org.ridewright.study.ScreeningFindings;

/** Which values matter most: bars in order of size with their intervals. */
final class RankFigures {
    /** Bars of one panel; what ranks lower is in the numbers. */
    static final int MOST = 15;

    private static final String HEADING = "Which value matters most";

    private static final double SIDE = 0.19;

    private RankFigures() {}

    static List<FigureGroup> of(ScreeningFindings findings) {
        List<Figure> figures = new ArrayList<>();
        for (int q = 0; q < findings.study().questions().size(); q++) {
            Question question = findings.study().questions().get(q);
            for (int t = 0; t < findings.tests().size(); t++) {
                if (!findings.effects(t, q).isTold()) {
                    continue;
                }
                int test = t;
                int asked = q;
                int[] ranked = ranked(
                        findings.factors().size(),
                        f -> findings.effects(test, asked).size(f));
                figures.add(figure(
                        findings,
                        question,
                        t,
                        "Effect of each value: " + question.title(),
                        "Twice the mean size of the change when a value jumps over half of its range, or over half of what its tolerance "
                                + "lets it be, with 90 % intervals: Morris screening with " + findings.trajectories()
                                + " trajectories."
                                + left(ranked.length, findings.factors().size()),
                        screened(findings, question, t, q, ranked),
                        ranked.length));
            }
        }
        return figures.isEmpty() ? List.of() : List.of(new FigureGroup(HEADING, figures));
    }

    private static Panel screened(ScreeningFindings findings, Question question, int t, int q, int[] ranked) {
        int n = ranked.length;
        double[] x = new double[n];
        double[] y = new double[n];
        Across intervals = new Across();
        for (int r = 0; r < n; r++) {
            Estimate size = findings.effects(t, q).size(ranked[r]);
            x[r] = finite(size.value());
            y[r] = n - 1.0 - r;
            intervals.whisker(size.low(), size.high(), y[r]);
        }
        List<Series> series = new ArrayList<>();
        series.add(new Series("mean size of the effect", x, y, LineStyle.SOLID, Tone.NAVY, Trace.BARS_ACROSS));
        add(series, intervals, "90 % interval", Tone.INK);
        AxisSpec axis = AxisSpec.of(
                "Effect on " + question.name().replace("a_w", "a_{w}"),
                StudyFigures.unit(question.measure().unit()));
        return Panel.of("", axis, names(findings.factors(), ranked), series.toArray(Series[]::new))
                .withLegend(LegendPlace.BELOW);
    }

    static List<FigureGroup> of(IndexFindings findings) {
        List<Figure> figures = new ArrayList<>();
        for (int q = 0; q < findings.study().questions().size(); q++) {
            Question question = findings.study().questions().get(q);
            for (int t = 0; t < findings.tests().size(); t++) {
                if (!findings.indices(t, q).isTold()) {
                    continue;
                }
                int test = t;
                int asked = q;
                int[] ranked = ranked(
                        findings.factors().size(),
                        f -> findings.indices(test, asked).total(f));
                figures.add(figure(
                        findings,
                        question,
                        t,
                        "Share of each value: " + question.title(),
                        "Sobol' indices with 90 % intervals. First order: share of the variance that would go if that value alone were known. "
                                + "Total: share that would stay if all others were known. Their difference acts together with other values."
                                + left(ranked.length, findings.factors().size()),
                        indexed(findings, t, q, ranked),
                        2 * ranked.length));
            }
        }
        return figures.isEmpty() ? List.of() : List.of(new FigureGroup(HEADING, figures));
    }

    private static Panel indexed(IndexFindings findings, int t, int q, int[] ranked) {
        int n = ranked.length;
        double[] total = new double[n];
        double[] first = new double[n];
        double[] y = new double[n];
        Across intervals = new Across();
        for (int r = 0; r < n; r++) {
            Estimate of = findings.indices(t, q).total(ranked[r]);
            Estimate alone = findings.indices(t, q).first(ranked[r]);
            total[r] = finite(of.value());
            first[r] = finite(alone.value());
            y[r] = n - 1.0 - r;
            intervals.whisker(of.low(), of.high(), y[r] + SIDE);
            intervals.whisker(alone.low(), alone.high(), y[r] - SIDE);
        }
        List<Series> series = new ArrayList<>();
        series.add(new Series("total", total, y, LineStyle.SOLID, Tone.NAVY, Trace.BARS_ACROSS));
        series.add(new Series("first order", first, y, LineStyle.SOLID, Tone.AMBER, Trace.BARS_ACROSS));
        add(series, intervals, "90 % interval", Tone.INK);
        return Panel.of(
                        "",
                        AxisSpec.of("Share of the variance", ""),
                        names(findings.factors(), ranked),
                        series.toArray(Series[]::new))
                .withLegend(LegendPlace.BELOW);
    }

    private static Figure figure(
            Findings findings, Question question, int t, String title, String caption, Panel panel, int bars) {
        boolean several = findings.tests().size() > 1;
        String test = findings.tests().get(t);
        return new Figure(
                StudyFigures.file("rank", question) + (several ? "-" + RideName.slug(test) : ""),
                several ? title + ": " + test : title,
                caption,
                List.of(panel),
                1,
                Figure.PAGE_WIDTH_MM,
                34 + 5.0 * bars);
    }

    private static void add(List<Series> series, Across across, String name, Tone tone) {
        if (!across.isEmpty()) {
            series.add(across.series(name, tone, Trace.LINE));
        }
    }

    private static double finite(double value) {
        return Double.isFinite(value) ? value : 0;
    }

    private static String left(int shown, int all) {
        return shown == all ? "" : " The " + (all - shown) + " values that matter less are in study.json.";
    }

    static int[] ranked(int count, IntFunction<Estimate> of) {
        return IntStream.range(0, count)
                .boxed()
                .sorted(Comparator.comparingDouble(f -> -finite(of.apply(f).value())))
                .limit(MOST)
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private static AxisSpec names(List<Factor> factors, int[] ranked) {
        List<String> names = new ArrayList<>();
        for (int r = ranked.length - 1; r >= 0; r--) {
            names.add(factors.get(ranked[r]).name());
        }
        return AxisSpec.named("", names);
    }
}
