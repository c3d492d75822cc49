package org.ridewright.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.ridewright.figure.AxisSpec;
import org.ridewright.figure.Band;
import org.ridewright.figure.Figure;
import org.ridewright.figure.LegendPlace;
import org.ridewright.figure.Level;
import org.ridewright.figure.LineStyle;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;
import org.ridewright.figure.Tone;
import org.ridewright.figure.Trace;
import org.ridewright.study.Factor;
import org.ridewright.study.Limit;
import org.ridewright.study.Method;
import org.ridewright.study.Question;
import org.ridewright.study.SearchReading;
import org.ridewright.study.SearchRun;
import org.ridewright.study.Study;

/** The way of a search: what each run gave, and what the limits say of it, against the value that was sought or the number of the run. */
final class SearchFigures {
    private final Study study;
    private final Method.Search method;
    private final SearchRun.Result result;
    private final SearchReading reading;
    private final SearchWords words;
    private final Question question;

    private SearchFigures(Study study, SearchRun.Result result) {
        this.study = study;
        this.result = result;
        method = (Method.Search) study.method();
        reading = new SearchReading(method, result);
        words = new SearchWords(study);
        question = words.question(method.sought().asked());
    }

    static List<FigureGroup> of(Study study, SearchRun.Result result) {
        SearchFigures figures = new SearchFigures(study, result);
        Figure figure = figures.method.factors().size() == 1 ? figures.against() : figures.way();
        return List.of(new FigureGroup("The way of the search", List.of(figure)));
    }

    private Figure against() {
        Factor factor = method.factors().get(0);
        List<Band> forbidden = forbidden(factor);
        List<Panel> panels = new ArrayList<>();
        panels.add(levelled(panel(factor, words.sought(), question, SearchRun.Step::worth))
                .withLegend(LegendPlace.BELOW)
                .withBands(forbidden));
        for (int l = 0; l < method.limits().size(); l++) {
            Limit limit = method.limits().get(l);
            int number = l;
            panels.add(panel(
                            factor,
                            words.limit(limit),
                            words.question(limit.asked()),
                            s -> s.limited().get(number))
                    .withLevels(List.of(new Level(limit.bound(), "limit")))
                    .withLegend(LegendPlace.NONE)
                    .withBands(forbidden.stream()
                            .map(b -> new Band(b.span(), b.from(), b.to(), ""))
                            .toList()));
        }
        return Figure.stacked(
                StudyFigures.file("search", question),
                RideFigures.upperFirst(question.title()) + " where the search looked",
                "Every run of the search, and what it ended with."
                        + (method.limits().isEmpty() ? "" : " Shaded: where a limit is broken.")
                        + StudyFigures.cut(shown(
                                reading.row(),
                                SearchRun.Step::worth,
                                result.way().get(0).worth())),
                panels.size() == 1 ? 88 : Math.min(1400, 34 + 46.0 * panels.size()),
                panels.toArray(Panel[]::new));
    }

    private Panel panel(Factor factor, String title, Question of, ToDoubleFunction<SearchRun.Step> answer) {
        List<SearchRun.Step> steps = reading.row().stream()
                .filter(s -> Double.isFinite(answer.applyAsDouble(s)))
                .toList();
        List<Series> series = new ArrayList<>();
        if (!steps.isEmpty()) {
            series.add(new Series(
                    "runs of the search",
                    steps.stream().mapToDouble(s -> shown(factor, s, 0)).toArray(),
                    steps.stream().mapToDouble(answer).toArray(),
                    LineStyle.SOLID,
                    Tone.NAVY,
                    Trace.LINE_AND_MARKS));
        }
        double written = answer.applyAsDouble(result.way().get(0));
        study.asWritten(factor).ifPresent(base -> {
            if (Double.isFinite(written)) {
                series.add(mark("as written", base, written, Tone.AMBER));
            }
        });
        reading.best()
                .ifPresent(best ->
                        series.add(mark(found(), shown(factor, best, 0), answer.applyAsDouble(best), Tone.RUST)));
        if (series.isEmpty()) {
            series.add(new Series(
                    "no ride", new double[] {0}, new double[] {Double.NaN}, LineStyle.SOLID, Tone.INK, Trace.MARKS));
        }
        return Panel.of(
                method.limits().isEmpty() ? "" : RideFigures.upperFirst(title),
                StudyFigures.axis(factor),
                StudyFigures.axis(of, shown(steps, answer, written)),
                series.toArray(Series[]::new));
    }

    private static double[] shown(List<SearchRun.Step> steps, ToDoubleFunction<SearchRun.Step> answer, double written) {
        return DoubleStream.concat(steps.stream().mapToDouble(answer), DoubleStream.of(written))
                .toArray();
    }

    /** Stretches in which every run breaks a limit, or cannot be ridden; an edge lies halfway between the runs on either side of it. */
    private List<Band> forbidden(Factor factor) {
        List<Band> bands = new ArrayList<>();
        List<SearchRun.Step> row = method.limits().isEmpty() ? List.of() : reading.row();
        double[] edges = IntStream.rangeClosed(0, row.size())
                .mapToDouble(i -> i == 0
                        ? 0
                        : i == row.size()
                                ? 1
                                : (row.get(i - 1).shares()[0] + row.get(i).shares()[0]) / 2)
                .map(share -> factor.shown(factor.at(share)))
                .toArray();
        int from = 0;
        while (from < row.size()) {
            int to = from;
            while (to < row.size() && row.get(to).keeps() == row.get(from).keeps()) {
                to++;
            }
            double a = Math.min(edges[from], edges[to]);
            double b = Math.max(edges[from], edges[to]);
            if (!row.get(from).keeps() && a < b) {
                bands.add(new Band(Band.Span.OF_X, a, b, "a limit is broken"));
            }
            from = to;
        }
        return bands;
    }

    private static double shown(Factor factor, SearchRun.Step step, int at) {
        return factor.shown(factor.at(step.shares()[at]));
    }

    private String found() {
        if (!reading.keeps()) {
            return "nearest to keeping the limits";
        }
        String kept = method.limits().isEmpty() ? "" : " that keeps the limits";
        return (method.sought().target().isPresent() ? "nearest to the target" : "the best") + kept;
    }

    private Panel levelled(Panel panel) {
        return method.sought()
                .target()
                .map(target -> panel.withLevels(List.of(new Level(target, "target"))))
                .orElse(panel);
    }

    private static Series mark(String name, double x, double y, Tone tone) {
        return new Series(name, new double[] {x}, new double[] {y}, LineStyle.SOLID, tone, Trace.MARKS);
    }

    /** Above: what each run gave and the best so far; then the limits; below: where in its range each value was. */
    private Figure way() {
        List<SearchRun.Step> steps = reading.looks();
        double[] x = steps.stream().mapToDouble(s -> s.trial().run()).toArray();
        AxisSpec runs = AxisSpec.of("Run", "");
        List<Panel> panels = new ArrayList<>();
        boolean limited = !method.limits().isEmpty();
        List<Series> answers = new ArrayList<>();
        answers.add(each(limited ? "keeps the limits" : "each run", x, steps, true, Tone.NAVY));
        if (limited) {
            answers.add(each("breaks a limit", x, steps, false, Tone.AMBER));
        }
        answers.add(new Series("the best so far", x, bestSoFar(steps), LineStyle.SOLID, Tone.RUST, Trace.STEP));
        panels.add(levelled(Panel.of("", runs, StudyFigures.axis(question), answers.toArray(Series[]::new))
                .withLegend(LegendPlace.BELOW)));
        for (int l = 0; l < method.limits().size(); l++) {
            Limit limit = method.limits().get(l);
            int number = l;
            Question of = words.question(limit.asked());
            panels.add(plain(
                            RideFigures.upperFirst(words.limit(limit)),
                            runs,
                            StudyFigures.axis(of),
                            x,
                            steps.stream()
                                    .mapToDouble(s -> s.limited().get(number))
                                    .toArray())
                    .withLevels(List.of(new Level(limit.bound(), "limit"))));
        }
        for (int f = 0; f < method.factors().size(); f++) {
            Factor factor = method.factors().get(f);
            int at = f;
            double[] values =
                    steps.stream().mapToDouble(s -> shown(factor, s, at)).toArray();
            panels.add(plain("", runs, StudyFigures.axis(factor), x, values));
        }
        return Figure.stacked(
                StudyFigures.file("search", question),
                RideFigures.upperFirst(question.title()) + " along the search, and the values it tried",
                "Each run of the search in its order."
                        + (limited ? " Of those that break a limit the marks are lighter." : ""),
                Math.min(1400, 30 + 48.0 * panels.size()),
                panels.toArray(Panel[]::new));
    }

    private static Panel plain(String title, AxisSpec runs, AxisSpec axis, double[] x, double[] y) {
        return Panel.of(title, runs, axis, new Series(axis.quantity(), x, y, LineStyle.SOLID, Tone.NAVY, Trace.MARKS))
                .withLegend(LegendPlace.NONE);
    }

    /** Runs that keep the limits, or those that do not. */
    private static Series each(String name, double[] x, List<SearchRun.Step> steps, boolean keeping, Tone tone) {
        double[] worth = steps.stream()
                .mapToDouble(s -> s.keeps() == keeping && Double.isFinite(s.worth()) ? s.worth() : Double.NaN)
                .toArray();
        return new Series(name, x, worth, LineStyle.SOLID, tone, Trace.MARKS);
    }

    private double[] bestSoFar(List<SearchRun.Step> steps) {
        double[] best = new double[steps.size()];
        Arrays.fill(best, Double.NaN);
        double now = Double.NaN;
        for (int i = 0; i < best.length; i++) {
            double worth = steps.get(i).worth();
            if (steps.get(i).keeps() && (Double.isNaN(now) || method.sought().isBetter(worth, now))) {
                now = worth;
            }
            best[i] = now;
        }
        return best;
    }
}
