package org.ridewright.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.ridewright.figure.AxisSpec;
import org.ridewright.figure.Field;
import org.ridewright.figure.Figure;
import org.ridewright.figure.LegendPlace;
import org.ridewright.figure.LineStyle;
import org.ridewright.figure.Marker;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;
import org.ridewright.figure.Tone;
import org.ridewright.figure.Trace;
import org.ridewright.study.Factor;
import org.ridewright.study.Question;
import org.ridewright.study.SweepFindings;

/** Answers against what was swept: lines, colours over a plane of two values, bars where words were swept; the scenario as written marked. */
final class SweepFigures {
    private static final String AS_WRITTEN = "as written";
    /** Lines of one panel that are told apart. */
    private static final int LINES = 5;

    private final SweepFindings sweep;
    private final List<String> tests;

    private SweepFigures(SweepFindings sweep) {
        this.sweep = sweep;
        tests = sweep.tests();
    }

    static List<FigureGroup> of(SweepFindings sweep) {
        return new SweepFigures(sweep).groups();
    }

    private List<FigureGroup> groups() {
        List<Figure> all = new ArrayList<>();
        for (int q = 0; q < sweep.study().questions().size(); q++) {
            all.addAll(figures(sweep.study().questions().get(q), q));
        }
        String over = sweep.swept().size() == 1
                ? "Against " + factor(0).name()
                : "Over " + factor(0).name() + " and " + factor(1).name();
        return List.of(new FigureGroup(over, all));
    }

    private List<Figure> figures(Question question, int q) {
        boolean firstWords = words(0);
        if (sweep.swept().size() == 1) {
            return List.of(firstWords ? bars(question, q) : lines(question, q));
        }
        boolean secondWords = words(1);
        if (!firstWords && !secondWords) {
            return List.of(plane(question, q));
        }
        return List.of(family(question, q, firstWords ? 0 : 1));
    }

    private boolean words(int value) {
        return factor(value).unit().isEmpty();
    }

    private Factor factor(int value) {
        return sweep.swept().get(value).factor();
    }

    private AxisSpec axis(int value) {
        return StudyFigures.axis(factor(value));
    }

    /** The ride tests as lines, several panels where they are many. */
    private Figure lines(Question question, int q) {
        List<Panel> panels = new ArrayList<>();
        double[] x = sweep.axis(0);
        double[] order = order(x);
        AxisSpec answer = StudyFigures.axis(question, all(q));
        for (int from = 0; from < tests.size(); from += LINES) {
            List<Series> series = new ArrayList<>();
            for (int t = from; t < Math.min(tests.size(), from + LINES); t++) {
                double[] y = column(sweep.values(t, q), 0);
                if (Arrays.stream(y).anyMatch(Double::isFinite)) {
                    series.add(Series.line(t - from, tests.get(t), picked(x, order), picked(y, order))
                            .as(x.length <= 30 ? Trace.LINE_AND_MARKS : Trace.LINE));
                }
            }
            if (series.isEmpty()) {
                series.add(new Series("no ride", x, nothing(x), LineStyle.SOLID, Tone.INK, Trace.MARKS));
            }
            panels.add(panel("", axis(0), answer, series).withMarkers(marker(0)));
        }
        return figure(question, "swept", panels, 1, 82, "", StudyFigures.cut(all(q)));
    }

    /** One line for each word, a panel for each ride test. */
    private Figure family(Question question, int q, int worded) {
        int other = 1 - worded;
        Factor.Listed listed = (Factor.Listed) factor(worded);
        if (words(other)) {
            return grid(question, q, listed);
        }
        double[] x = sweep.axis(other);
        double[] order = order(x);
        List<Panel> panels = new ArrayList<>();
        for (int t = 0; t < tests.size(); t++) {
            double[][] z = sweep.values(t, q);
            List<Series> series = new ArrayList<>();
            for (int w = 0; w < Math.min(LINES, listed.words().size()); w++) {
                double[] y = worded == 0 ? z[w] : column(z, w);
                if (Arrays.stream(y).anyMatch(Double::isFinite)) {
                    series.add(Series.line(w, listed.words().get(w), picked(x, order), picked(y, order))
                            .as(x.length <= 30 ? Trace.LINE_AND_MARKS : Trace.LINE));
                }
            }
            if (series.isEmpty()) {
                series.add(new Series("no ride", x, nothing(x), LineStyle.SOLID, Tone.INK, Trace.MARKS));
            }
            panels.add(panel(
                            tests.size() > 1 ? tests.get(t) : "",
                            axis(other),
                            StudyFigures.axis(question, all(q)),
                            series)
                    .withMarkers(marker(other)));
        }
        return figure(
                question,
                "swept",
                panels,
                panels.size() > 1 ? 2 : 1,
                82,
                "for each " + listed.name(),
                StudyFigures.cut(all(q)));
    }

    /** Colours over the plane of both values, a panel for each ride test. */
    private Figure plane(Question question, int q) {
        double[] x = sweep.axis(0);
        double[] y = sweep.axis(1);
        double[] orderX = order(x);
        double[] orderY = order(y);
        List<Panel> panels = new ArrayList<>();
        for (int t = 0; t < tests.size(); t++) {
            double[][] raw = sweep.values(t, q);
            double[][] z = new double[x.length][];
            for (int i = 0; i < x.length; i++) {
                z[i] = picked(raw[(int) orderX[i]], orderY);
            }
            double[] px = picked(x, orderX);
            double[] py = picked(y, orderY);
            List<Series> series = new ArrayList<>();
            OptionalDouble baseX = sweep.study().asWritten(factor(0));
            OptionalDouble baseY = sweep.study().asWritten(factor(1));
            boolean marked = baseX.isPresent()
                    && baseY.isPresent()
                    && within(baseX.getAsDouble(), px)
                    && within(baseY.getAsDouble(), py);
            series.add(new Series(
                    AS_WRITTEN,
                    new double[] {marked ? baseX.getAsDouble() : px[0]},
                    new double[] {marked ? baseY.getAsDouble() : Double.NaN},
                    LineStyle.SOLID,
                    Tone.RUST,
                    Trace.MARKS));
            AxisSpec across = axis(0).between(px[0], px[px.length - 1]);
            AxisSpec up = axis(1).between(py[0], py[py.length - 1]);
            panels.add(Panel.of(tests.size() > 1 ? tests.get(t) : "", across, up, series.toArray(Series[]::new))
                    .withField(new Field(
                            StudyFigures.name(question),
                            StudyFigures.unit(question.measure().unit()),
                            px,
                            py,
                            z))
                    .withLegend(marked ? LegendPlace.SHARED : LegendPlace.NONE));
        }
        int columns = panels.size() > 1 ? 2 : 1;
        return figure(question, "plane", panels, columns, columns == 1 ? 100 : 74, "", "");
    }

    private static boolean within(double value, double[] ends) {
        return value >= ends[0] && value <= ends[ends.length - 1];
    }

    /** A bar for each word, with its number, a panel for each ride test. */
    private Figure bars(Question question, int q) {
        Factor.Listed listed = (Factor.Listed) factor(0);
        int n = listed.words().size();
        double most = Arrays.stream(all(q)).filter(Double::isFinite).max().orElse(1);
        double least = Arrays.stream(all(q)).filter(Double::isFinite).min().orElse(0);
        AxisSpec answer = StudyFigures.axis(question).between(1.05 * Math.min(0, least), most > 0 ? 1.05 * most : 1);
        List<Panel> panels = new ArrayList<>();
        for (int t = 0; t < tests.size(); t++) {
            double[] values = column(sweep.values(t, q), 0);
            List<String> names = new ArrayList<>();
            for (int w = 0; w < n; w++) {
                names.add(StudyFigures.numbered(listed.words().get(w), w < values.length ? values[w] : Double.NaN));
            }
            panels.add(panel(
                    tests.size() > 1 ? tests.get(t) : "",
                    answer,
                    AxisSpec.named(RideFigures.upperFirst(listed.name()), reversed(names)),
                    List.of(Series.line(0, "answer", zeros(values), gaps(values, n))
                            .as(Trace.BARS_ACROSS))));
        }
        return figure(question, "swept", panels, panels.size() > 1 ? 2 : 1, 24 + 7.0 * n, "", "");
    }

    private Figure grid(Question question, int q, Factor.Listed first) {
        Factor.Listed second = (Factor.Listed) factor(1);
        int n = first.words().size();
        List<Panel> panels = new ArrayList<>();
        for (int t = 0; t < tests.size(); t++) {
            double[][] z = sweep.values(t, q);
            List<Series> series = new ArrayList<>();
            for (int w = 0; w < Math.min(LINES, second.words().size()); w++) {
                double[] values = column(z, w);
                series.add(Series.line(w, second.words().get(w), zeros(values), gaps(values, n))
                        .as(Trace.BARS_ACROSS));
            }
            panels.add(panel(
                    tests.size() > 1 ? tests.get(t) : "",
                    StudyFigures.axis(question),
                    AxisSpec.named(RideFigures.upperFirst(first.name()), reversed(first.words())),
                    series));
        }
        return figure(question, "swept", panels, 1, 30 + 7.0 * n, "", "");
    }

    /** Where the scenario as written stands on the axis; nowhere if it cannot be said. */
    private List<Marker> marker(int value) {
        OptionalDouble base = sweep.study().asWritten(factor(value));
        return base.isPresent() ? List.of(new Marker(base.getAsDouble(), AS_WRITTEN)) : List.of();
    }

    private static Panel panel(String title, AxisSpec x, AxisSpec y, List<Series> series) {
        Panel panel = Panel.of(title, x, y, series.toArray(Series[]::new));
        return panel.withLegend(series.size() > 1 ? LegendPlace.BELOW : LegendPlace.NONE);
    }

    /** The title says what is seen, the heading above it against what; the caption what neither says. */
    private Figure figure(
            Question question, String kind, List<Panel> panels, int columns, double height, String how, String note) {
        int rows = (panels.size() + columns - 1) / columns;
        String written = sweep.study().asWritten(factor(0)).isPresent()
                        && panels.stream().anyMatch(SweepFigures::isMarked)
                ? "What stands in the files is marked."
                : "";
        return new Figure(
                StudyFigures.file(kind, question),
                (StudyFigures.heading(question) + " " + how).strip(),
                (written + note + failed()).strip(),
                panels,
                columns,
                Figure.PAGE_WIDTH_MM,
                Math.min(1400, rows * height + 8));
    }

    private static boolean isMarked(Panel panel) {
        return !panel.markers().isEmpty() || panel.field().isPresent();
    }

    /** All answers of a question. */
    private double[] all(int q) {
        return IntStream.range(0, tests.size())
                .boxed()
                .flatMapToDouble(t -> Arrays.stream(sweep.values(t, q)).flatMapToDouble(Arrays::stream))
                .toArray();
    }

    private String failed() {
        return sweep.failed() == 0 ? "" : " Gaps are runs that could not be ridden; the table of runs says why.";
    }

    /** Places in order of size. */
    private static double[] order(double[] values) {
        return IntStream.range(0, values.length)
                .boxed()
                .sorted((a, b) -> Double.compare(values[a], values[b]))
                .mapToDouble(Integer::doubleValue)
                .toArray();
    }

    private static double[] picked(double[] values, double[] order) {
        return Arrays.stream(order).map(i -> values[(int) i]).toArray();
    }

    private static double[] nothing(double[] x) {
        double[] none = new double[x.length];
        Arrays.fill(none, Double.NaN);
        return none;
    }

    private static double[] column(double[][] z, int j) {
        return Arrays.stream(z).mapToDouble(row -> row[j]).toArray();
    }

    /** Bars of what has no value have no length. */
    private static double[] zeros(double[] values) {
        return Arrays.stream(values).map(v -> Double.isFinite(v) ? v : 0).toArray();
    }

    /** Places from the top down, and none for what has no value. */
    private static double[] gaps(double[] values, int n) {
        return IntStream.range(0, values.length)
                .mapToDouble(i -> Double.isFinite(values[i]) ? n - 1.0 - i : Double.NaN)
                .toArray();
    }

    private static List<String> reversed(List<String> words) {
        List<String> reversed = new ArrayList<>(words);
        Collections.reverse(reversed);
        return reversed;
    }
}
