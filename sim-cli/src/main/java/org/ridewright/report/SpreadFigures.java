package org.ridewright.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.ridewright.figure.AxisSpec;
import org.ridewright.figure.Figure;
import org.ridewright.figure.LegendPlace;
import org.ridewright.figure.LineStyle;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;
import org.ridewright.figure.Tone;
import org.ridewright.figure.Trace;
import org.ridewright.study.Factor;
import org.ridewright.study.Method;
import org.ridewright.study.QuantileSketch;
import org.ridewright.study.Question;
import org.ridewright.study.UncertaintyFindings;

/** How far tolerances let an answer be known: bands of quantiles along a value, or boxes of the ride tests. */
final class SpreadFigures {
    private static final String NARROW = "half of the draws";
    private static final String MEDIAN = "median";
    private static final String AS_WRITTEN = "as written";

    private final UncertaintyFindings findings;

    private SpreadFigures(UncertaintyFindings findings) {
        this.findings = findings;
    }

    private String wide(int q) {
        return DrawnShare.of(findings, q).words();
    }

    static List<FigureGroup> of(UncertaintyFindings findings) {
        SpreadFigures figures = new SpreadFigures(findings);
        List<Figure> all = new ArrayList<>();
        for (int q = 0; q < findings.study().questions().size(); q++) {
            Question question = findings.study().questions().get(q);
            int asked = q;
            all.add(findings.method()
                    .along()
                    .map(along -> along.factor().unit().isEmpty()
                            ? figures.words(question, asked, along.factor())
                            : figures.bands(question, asked, along))
                    .orElseGet(() -> figures.boxes(question, asked)));
        }
        return List.of(new FigureGroup("As far as tolerances let it be known", all));
    }

    private Figure bands(Question question, int q, Method.Swept along) {
        double[] x = findings.axis();
        Factor factor = along.factor();
        AxisSpec axis = StudyFigures.axis(factor);
        double[] ends = ends(q);
        List<Panel> panels = new ArrayList<>();
        for (int t = 0; t < findings.tests().size(); t++) {
            boolean last = t == findings.tests().size() - 1;
            if (isBlank(t, q) && !(last && panels.isEmpty())) {
                continue;
            }
            List<Series> series = new ArrayList<>();
            series.add(band(wide(q), x, t, q, 0.05, 0.95, Trace.AREA));
            series.add(band(NARROW, x, t, q, 0.25, 0.75, Trace.DEEP_AREA));
            double[] median = quantiles(t, q, 0.5);
            series.add(new Series(MEDIAN, x, median, LineStyle.SOLID, Tone.NAVY, Trace.LINE));
            OptionalDouble base = findings.study().asWritten(factor);
            if (base.isPresent() && Double.isFinite(findings.asWritten(t, q))) {
                series.add(new Series(
                        AS_WRITTEN,
                        new double[] {base.getAsDouble()},
                        new double[] {findings.asWritten(t, q)},
                        LineStyle.SOLID,
                        Tone.RUST,
                        Trace.MARKS));
            }
            panels.add(Panel.of(
                            findings.tests().size() > 1 ? findings.tests().get(t) : "",
                            axis,
                            StudyFigures.axis(question).between(ends[0], ends[1]),
                            series.toArray(Series[]::new))
                    .withLegend(LegendPlace.SHARED));
        }
        int columns = panels.size() > 1 ? 2 : 1;
        int rows = (panels.size() + columns - 1) / columns;
        String title = StudyFigures.heading(question) + ", against " + factor.name();
        return new Figure(
                StudyFigures.file("bands", question),
                title,
                findings.method().draws() + " draws at each of " + x.length + " values. Wide band: "
                        + DrawnShare.of(findings, q).counted() + "." + (ends[0] > 0 ? StudyFigures.cut(ends) : ""),
                panels,
                columns,
                Figure.PAGE_WIDTH_MM,
                Math.min(1400, rows * (columns == 1 ? 80.0 : 62.0) + 16));
    }

    /** Whether a ride test has no such answer, as an endless road has no coming to rest. */
    private boolean isBlank(int t, int q) {
        return IntStream.range(0, findings.axis().length)
                .allMatch(slot -> findings.spread(slot, t, q).count() == 0);
    }

    /** Ends of the vertical axis that all panels share, with the zero where it is near. */
    private double[] ends(int q) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int t = 0; t < findings.tests().size(); t++) {
            for (int slot = 0; slot < findings.axis().length; slot++) {
                QuantileSketch spread = findings.spread(slot, t, q);
                if (spread.count() > 0) {
                    least = Math.min(least, spread.quantile(0.05));
                    most = Math.max(most, spread.quantile(0.95));
                }
            }
            if (Double.isFinite(findings.asWritten(t, q))) {
                least = Math.min(least, findings.asWritten(t, q));
                most = Math.max(most, findings.asWritten(t, q));
            }
        }
        if (!(most > least)) {
            double only = Double.isFinite(least) ? least : 0;
            return new double[] {only - 1, only + 1};
        }
        double room = 0.06 * (most - least);
        return new double[] {
            StudyFigures.isCut(new double[] {least, most}) ? least - room : 0, most + room,
        };
    }

    private double[] quantiles(int t, int q, double share) {
        double[] all = new double[findings.axis().length];
        for (int slot = 0; slot < all.length; slot++) {
            all[slot] = findings.spread(slot, t, q).quantile(share);
        }
        return all;
    }

    /** The edge of a band: forward along its upper side, back along its lower. */
    private Series band(String name, double[] x, int t, int q, double low, double high, Trace trace) {
        double[] below = quantiles(t, q, low);
        double[] above = quantiles(t, q, high);
        int n = x.length;
        double[] edgeX = new double[2 * n];
        double[] edgeY = new double[2 * n];
        for (int i = 0; i < n; i++) {
            edgeX[i] = x[i];
            edgeY[i] = above[i];
            edgeX[2 * n - 1 - i] = x[i];
            edgeY[2 * n - 1 - i] = below[i];
        }
        if (Arrays.stream(edgeY).anyMatch(Double::isNaN)) {
            // a level at which nothing could be ridden is left out of the edge
            int[] kept = IntStream.range(0, 2 * n)
                    .filter(i -> !Double.isNaN(edgeY[i]))
                    .toArray();
            if (kept.length > 0) {
                return new Series(
                        name,
                        Arrays.stream(kept).mapToDouble(i -> edgeX[i]).toArray(),
                        Arrays.stream(kept).mapToDouble(i -> edgeY[i]).toArray(),
                        LineStyle.SOLID,
                        Tone.NAVY,
                        trace);
            }
        }
        return new Series(name, edgeX, edgeY, LineStyle.SOLID, Tone.NAVY, trace);
    }

    /** A row for each ride test. */
    private Figure boxes(Question question, int q) {
        int n = findings.tests().size();
        Rows rows = new Rows(n);
        for (int t = 0; t < n; t++) {
            rows.add(findings.tests().get(t), findings.spread(0, t, q), findings.asWritten(t, q));
        }
        Panel panel = rows.panel("", "", StudyFigures.axis(question), wide(q)).withLegend(LegendPlace.BELOW);
        return new Figure(
                StudyFigures.file("spread", question),
                StudyFigures.heading(question),
                "Wide bar: " + DrawnShare.of(findings, q).counted() + ".",
                List.of(panel),
                1,
                Figure.PAGE_WIDTH_MM,
                34 + 9.0 * n);
    }

    /** A row for each word that was put in, a panel for each ride test; words have no order, and nothing lies between them. */
    private Figure words(Question question, int q, Factor factor) {
        int n = findings.axis().length;
        double[] ends = ends(q);
        AxisSpec axis = StudyFigures.axis(question).between(ends[0], ends[1]);
        List<Panel> panels = new ArrayList<>();
        for (int t = 0; t < findings.tests().size(); t++) {
            Rows rows = new Rows(n);
            for (int slot = 0; slot < n; slot++) {
                rows.add(factor.level(findings.axis()[slot]), findings.spread(slot, t, q), Double.NaN);
            }
            String title = findings.tests().size() > 1 ? findings.tests().get(t) : "";
            panels.add(rows.panel(title, RideFigures.upperFirst(factor.name()), axis, wide(q))
                    .withLegend(LegendPlace.SHARED));
        }
        int columns = Math.min(2, panels.size());
        int down = (panels.size() + columns - 1) / columns;
        return new Figure(
                StudyFigures.file("spread", question),
                StudyFigures.heading(question) + ", for each " + factor.name(),
                findings.method().draws() + " draws for each. Wide bar: "
                        + DrawnShare.of(findings, q).counted() + ".",
                panels,
                columns,
                Figure.PAGE_WIDTH_MM,
                Math.min(1400, down * (16 + 9.0 * n) + 26));
    }

    /** Bars of quantiles one below the other, with the median's number beside each. */
    private static final class Rows {
        private final int n;
        private final Across wide = new Across();
        private final Across narrow = new Across();
        private final double[] median;
        private final double[] written;
        private final double[] at;
        private final List<String> names = new ArrayList<>();

        Rows(int n) {
            this.n = n;
            median = new double[n];
            written = new double[n];
            at = new double[n];
        }

        void add(String name, QuantileSketch spread, double asWritten) {
            int row = names.size();
            at[row] = n - 1.0 - row;
            wide.box(spread.low(), spread.high(), at[row], 0.3);
            narrow.box(spread.quantile(0.25), spread.quantile(0.75), at[row], 0.3);
            median[row] = spread.quantile(0.5);
            written[row] = asWritten;
            names.add(0, StudyFigures.numbered(name, median[row]));
        }

        Panel panel(String title, String called, AxisSpec axis, String held) {
            List<Series> series = new ArrayList<>();
            if (!wide.isEmpty()) {
                series.add(wide.series(held, Tone.NAVY, Trace.AREA));
                series.add(narrow.series(NARROW, Tone.NAVY, Trace.DEEP_AREA));
            }
            addMarks(series, MEDIAN, median, at, Tone.NAVY);
            addMarks(series, AS_WRITTEN, written, at, Tone.RUST);
            if (series.isEmpty()) {
                series.add(new Series(
                        "no ride",
                        new double[] {0},
                        new double[] {Double.NaN},
                        LineStyle.SOLID,
                        Tone.INK,
                        Trace.MARKS));
            }
            return Panel.of(title, axis, AxisSpec.named(called, names), series.toArray(Series[]::new));
        }
    }

    private static void addMarks(List<Series> series, String name, double[] x, double[] y, Tone tone) {
        int[] kept =
                IntStream.range(0, x.length).filter(i -> Double.isFinite(x[i])).toArray();
        if (kept.length > 0) {
            series.add(new Series(
                    name,
                    Arrays.stream(kept).mapToDouble(i -> x[i]).toArray(),
                    Arrays.stream(kept).mapToDouble(i -> y[i]).toArray(),
                    LineStyle.SOLID,
                    tone,
                    Trace.MARKS));
        }
    }
}
