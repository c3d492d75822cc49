package org.ridewright.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ridewright.figure.AxisSpec;
import org.ridewright.figure.Figure;
import org.ridewright.figure.LegendPlace;
import org.ridewright.figure.Level;
import org.ridewright.figure.LineStyle;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;
import org.ridewright.figure.Tone;
import org.ridewright.figure.Trace;
import org.ridewright.study.Factor;
import org.ridewright.study.Method;
import org.ridewright.study.Question;
import org.ridewright.study.SearchRun;
import org.ridewright.study.Study;

/** The way of a search: what each run gave, against the value that was sought or the number of the run. */
final class SearchFigures {
    private SearchFigures() {}

    static List<FigureGroup> of(Study study, SearchRun.Result result) {
        Method.Search method = (Method.Search) study.method();
        Question question = study.questions().get(0);
        List<Figure> figures = new ArrayList<>();
        if (method.factors().size() == 1) {
            figures.add(against(study, method, result, question));
        } else {
            figures.add(way(method, result, question));
        }
        return List.of(new FigureGroup("The way of the search", figures));
    }

    private static Figure against(Study study, Method.Search method, SearchRun.Result result, Question question) {
        Factor factor = method.factors().get(0);
        List<SearchRun.Step> steps = result.way().stream()
                .filter(s -> s.shares().length > 0 && Double.isFinite(s.worth()))
                .sorted((a, b) -> Double.compare(a.shares()[0], b.shares()[0]))
                .toList();
        List<Series> series = new ArrayList<>();
        if (!steps.isEmpty()) {
            series.add(new Series(
                    "runs of the search",
                    steps.stream()
                            .mapToDouble(s -> factor.shown(factor.at(s.shares()[0])))
                            .toArray(),
                    steps.stream().mapToDouble(SearchRun.Step::worth).toArray(),
                    LineStyle.SOLID,
                    Tone.NAVY,
                    Trace.LINE_AND_MARKS));
        }
        double written = result.way().get(0).worth();
        study.asWritten(factor).ifPresent(base -> {
            if (Double.isFinite(written)) {
                series.add(mark("as written", base, written, Tone.AMBER));
            }
        });
        if (result.best() >= 0) {
            SearchRun.Step best = result.way().get(result.best());
            series.add(mark(found(method), factor.shown(factor.at(best.shares()[0])), best.worth(), Tone.RUST));
        }
        if (series.isEmpty()) {
            series.add(new Series(
                    "no ride", new double[] {0}, new double[] {Double.NaN}, LineStyle.SOLID, Tone.INK, Trace.MARKS));
        }
        AxisSpec axis = StudyFigures.axis(factor);
        boolean byRatio = factor instanceof Factor.Range range && range.byRatio()
                || factor instanceof Factor.Multiple multiple && multiple.byRatio();
        Panel panel = levelled(
                Panel.of(
                                "",
                                byRatio ? axis.logarithmic() : axis,
                                StudyFigures.axis(question),
                                series.toArray(Series[]::new))
                        .withLegend(LegendPlace.BELOW),
                method);
        return Figure.stacked(
                StudyFigures.file("search", question),
                RideFigures.upperFirst(question.title()) + " where the search looked",
                "Every run of the search, in order of " + factor.name() + ", and what it ended with.",
                88,
                panel);
    }

    private static String found(Method.Search method) {
        return method.target().isPresent() ? "nearest to the target" : "the best";
    }

    private static Panel levelled(Panel panel, Method.Search method) {
        return method.target()
                .map(target -> panel.withLevels(List.of(new Level(target, "target"))))
                .orElse(panel);
    }

    private static Series mark(String name, double x, double y, Tone tone) {
        return new Series(name, new double[] {x}, new double[] {y}, LineStyle.SOLID, tone, Trace.MARKS);
    }

    /** Above: what each run gave and the best so far; below: where in its range each value was. */
    private static Figure way(Method.Search method, SearchRun.Result result, Question question) {
        List<SearchRun.Step> steps =
                result.way().stream().filter(s -> s.shares().length > 0).toList();
        double[] x = steps.stream().mapToDouble(s -> s.trial().run()).toArray();
        double[] worth = steps.stream()
                .mapToDouble(s -> Double.isFinite(s.worth()) ? s.worth() : Double.NaN)
                .toArray();
        AxisSpec runs = AxisSpec.of("Run", "");
        List<Panel> panels = new ArrayList<>();
        List<Series> answers = new ArrayList<>();
        answers.add(new Series("each run", x, worth, LineStyle.SOLID, Tone.NAVY, Trace.MARKS));
        answers.add(new Series("the best so far", x, bestSoFar(method, worth), LineStyle.SOLID, Tone.RUST, Trace.STEP));
        panels.add(levelled(
                Panel.of("", runs, StudyFigures.axis(question), answers.toArray(Series[]::new))
                        .withLegend(LegendPlace.BELOW),
                method));
        for (int f = 0; f < method.factors().size(); f++) {
            Factor factor = method.factors().get(f);
            int at = f;
            double[] values = steps.stream()
                    .mapToDouble(s -> factor.shown(factor.at(s.shares()[at])))
                    .toArray();
            panels.add(Panel.of(
                            "",
                            runs,
                            StudyFigures.axis(factor),
                            new Series(factor.name(), x, values, LineStyle.SOLID, Tone.NAVY, Trace.MARKS))
                    .withLegend(LegendPlace.NONE));
        }
        return Figure.stacked(
                StudyFigures.file("search", question),
                RideFigures.upperFirst(question.title()) + " along the search, and the values it tried",
                "Each run of the search in its order.",
                Math.min(1400, 30 + 48.0 * panels.size()),
                panels.toArray(Panel[]::new));
    }

    private static double[] bestSoFar(Method.Search method, double[] worth) {
        double[] best = new double[worth.length];
        Arrays.fill(best, Double.NaN);
        double now = Double.NaN;
        for (int i = 0; i < worth.length; i++) {
            if (Double.isFinite(worth[i]) && (Double.isNaN(now) || better(method, worth[i], now))) {
                now = worth[i];
            }
            best[i] = now;
        }
        return best;
    }

    private static boolean better(Method.Search method, double a, double b) {
        if (method.target().isPresent()) {
            return Math.abs(a - method.target().get())
                    < Math.abs(b - method.target().get());
        }
        return method.least() ? a < b : a > b;
    }
}
