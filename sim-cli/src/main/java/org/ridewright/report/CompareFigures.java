package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.figure.AxisSpec;
import org.ridewright.figure.Figure;
import org.ridewright.figure.LegendPlace;
import org.ridewright.figure.LineStyle;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;
import org.ridewright.figure.Tone;
import org.ridewright.figure.Trace;
import org.ridewright.study.CompareFindings;
import org.ridewright.study.QuantileSketch;
import org.ridewright.study.Question;

/** Things side by side: a small panel for each test, all on the same axes. */
final class CompareFigures {
    /** Panels of one figure. */
    private static final int PANELS = 12;

    private CompareFigures() {}

    static List<FigureGroup> of(CompareFindings findings) {
        List<Figure> figures = new ArrayList<>();
        for (int q = 0; q < findings.study().questions().size(); q++) {
            Question question = findings.study().questions().get(q);
            if (question.band().isEmpty()) {
                for (int from = 0; from < findings.rows().size(); from += PANELS) {
                    figures.add(figure(findings, question, q, from));
                }
            }
        }
        return figures.isEmpty() ? List.of() : List.of(new FigureGroup("Side by side", figures));
    }

    private static Figure figure(CompareFindings findings, Question question, int q, int from) {
        double most = 0;
        double least = 0;
        for (int r = 0; r < findings.rows().size(); r++) {
            for (int th = 0; th < findings.things().size(); th++) {
                QuantileSketch spread = findings.spread(th, r, q);
                for (double v : new double[] {findings.value(th, r, q), spread.quantile(0.05), spread.quantile(0.95)}) {
                    most = Double.isFinite(v) ? Math.max(most, v) : most;
                    least = Double.isFinite(v) ? Math.min(least, v) : least;
                }
            }
        }
        AxisSpec axis = StudyFigures.axis(question).between(1.05 * least, most > least ? 1.05 * most : 1);
        List<Panel> panels = new ArrayList<>();
        for (int r = from; r < Math.min(findings.rows().size(), from + PANELS); r++) {
            panels.add(panel(findings, q, r, axis));
        }
        int columns = Math.min(2, panels.size());
        int rows = (panels.size() + columns - 1) / columns;
        boolean drawn = findings.method().draws() > 0;
        String title = StudyFigures.heading(question);
        return new Figure(
                StudyFigures.file("compare", question) + (from == 0 ? "" : "-" + (from / PANELS + 1)),
                title,
                drawn
                        ? "Bars and numbers: as written. Lines: "
                                + DrawnShare.of(findings, q).counted()
                                + ", with their median, by which the best is told; it is in another colour where the draws tell it from all others."
                        : "The best is in another colour.",
                panels,
                columns,
                Figure.PAGE_WIDTH_MM,
                Math.min(1400, rows * (16 + 6.5 * findings.things().size()) + 26));
    }

    private static Panel panel(CompareFindings findings, int q, int r, AxisSpec axis) {
        int n = findings.things().size();
        double[] x = new double[n];
        double[] y = new double[n];
        double[] bestY = new double[n];
        Across intervals = new Across();
        List<String> names = new ArrayList<>();
        Across medians = new Across();
        int best = findings.isClear(r, q) ? findings.best(r, q) : -1;
        for (int th = 0; th < n; th++) {
            double value = findings.value(th, r, q);
            double at = n - 1.0 - th;
            x[th] = Double.isFinite(value) ? value : 0;
            y[th] = Double.isFinite(value) && th != best ? at : Double.NaN;
            bestY[th] = th == best ? at : Double.NaN;
            QuantileSketch spread = findings.spread(th, r, q);
            intervals.whisker(spread.quantile(0.05), spread.quantile(0.95), at);
            medians.mark(spread.quantile(0.5), at);
            names.add(0, StudyFigures.numbered(findings.things().get(th), value));
        }
        List<Series> series = new ArrayList<>();
        // both kinds of bars lie in one row: a series of its own would share the row's height
        series.add(new Series("as written", x, y, LineStyle.SOLID, Tone.NAVY, Trace.BARS_ACROSS));
        if (best >= 0) {
            double half = 0.38;
            Across box = new Across().box(0, x[best], bestY[best], half);
            series.add(box.series("the best", Tone.TEAL, Trace.DEEP_AREA));
        }
        if (!intervals.isEmpty()) {
            series.add(intervals.series(DrawnShare.of(findings, q).words(), Tone.INK, Trace.LINE));
            series.add(medians.series("their median", Tone.INK, Trace.MARKS));
        }
        return Panel.of(findings.rows().get(r), axis, AxisSpec.named("", names), series.toArray(Series[]::new))
                .withLegend(LegendPlace.SHARED);
    }
}
