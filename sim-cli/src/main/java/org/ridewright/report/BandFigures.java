package org.ridewright.report;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.ridewright.figure.AxisSpec;
import org.ridewright.figure.Figure;
import org.ridewright.figure.LegendPlace;
import org.ridewright.figure.Level;
import org.ridewright.figure.LineStyle;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;
import org.ridewright.figure.Tone;
import org.ridewright.figure.Trace;
import org.ridewright.signal.ThirdOctave;
import org.ridewright.study.BandFamily;
import org.ridewright.study.CompareFindings;
import org.ridewright.study.Estimate;

/** Things side by side in third octaves: what each has in every band, and below it how many times as much as the first. */
final class BandFigures {
    private static final List<Tone> TONES = List.of(Tone.INK, Tone.NAVY, Tone.RUST, Tone.TEAL, Tone.AMBER);
    private static final List<LineStyle> STYLES = List.of(LineStyle.values());
    /** Ride tests side by side in one figure. */
    private static final int COLUMNS = 2;

    private static final double HEIGHT = 125;

    private final CompareFindings findings;
    private final List<BandRatios> all;

    private BandFigures(CompareFindings findings) {
        this.findings = findings;
        all = BandRatios.of(findings);
    }

    static List<FigureGroup> of(CompareFindings findings) {
        BandFigures figures = new BandFigures(findings);
        List<Figure> drawn = new ArrayList<>();
        for (BandFamily family : BandFamily.of(findings.study().questions())) {
            List<BandRatios> tests =
                    figures.all.stream().filter(r -> r.family().equals(family)).toList();
            for (int from = 0; from < tests.size(); from += COLUMNS) {
                drawn.add(figures.figure(
                        family, tests.subList(from, Math.min(tests.size(), from + COLUMNS)), from / COLUMNS));
            }
        }
        return drawn.isEmpty() ? List.of() : List.of(new FigureGroup("At which frequencies", drawn));
    }

    private Figure figure(BandFamily family, List<BandRatios> tests, int number) {
        boolean drawnFrom = findings.method().draws() > 0;
        List<Panel> panels = new ArrayList<>();
        tests.forEach(test -> panels.add(levels(test)));
        tests.forEach(test -> panels.add(ratios(test)));
        String title = RideFigures.upperFirst(family.first().title());
        return new Figure(
                StudyFigures.file("frequencies", family.first().family()) + (number == 0 ? "" : "-" + (number + 1)),
                title,
                "Above, the r.m.s. acceleration in each one-third octave; below, how many times as much as "
                        + findings.things().get(0) + " has. "
                        + (drawnFrom
                                ? "Lines: medians of the draws, shaded: "
                                        + DrawnShare.of(findings, family.questions())
                                                .counted()
                                        + "; the ratio is taken draw by draw. Where the shade holds 1, the two are not told apart."
                                : "As written.")
                        + " Bands that a ride of this length does not resolve are left out.",
                panels,
                tests.size(),
                Figure.PAGE_WIDTH_MM,
                HEIGHT);
    }

    private Panel levels(BandRatios test) {
        List<Series> series = new ArrayList<>();
        for (int th = 0; th < findings.things().size(); th++) {
            int thing = th;
            add(series, th, test.bands(), i -> test.level(thing, i));
        }
        String unit = test.family().first().measure().unit();
        return Panel.of(
                        findings.rows().get(test.test()),
                        frequency(test),
                        shared(test, AxisSpec.of("R.m.s. in the band", unit), 0, BandRatios::level),
                        series.toArray(Series[]::new))
                .withLegend(LegendPlace.SHARED);
    }

    private Panel ratios(BandRatios test) {
        List<Series> series = new ArrayList<>();
        for (int th = 1; th < findings.things().size(); th++) {
            int thing = th;
            add(series, th, test.bands(), i -> test.ratio(thing, i));
        }
        return Panel.of(
                        "",
                        frequency(test),
                        shared(
                                test,
                                AxisSpec.of("Times that of " + findings.things().get(0), ""),
                                1,
                                BandRatios::ratio),
                        series.toArray(Series[]::new))
                .withLevels(List.of(new Level(1, "")))
                .withLegend(LegendPlace.SHARED);
    }

    /** A number of a thing in the i-th band of a ride test. */
    @FunctionalInterface
    private interface Reading {
        Estimate of(BandRatios test, int thing, int i);
    }

    /** A logarithmic axis that holds what all ride tests of a question have. */
    private AxisSpec shared(BandRatios test, AxisSpec axis, int from, Reading of) {
        DoubleSummaryStatistics all = this.all.stream()
                .filter(r -> r.family().equals(test.family()))
                .flatMapToDouble(r -> IntStream.range(from, findings.things().size())
                        .boxed()
                        .flatMapToDouble(th -> IntStream.range(0, r.bands().size())
                                .boxed()
                                .flatMapToDouble(i -> DoubleStream.of(
                                        of.of(r, th, i).low(), of.of(r, th, i).high()))))
                .filter(v -> v > 0 && Double.isFinite(v))
                .summaryStatistics();
        double margin = 1.1;
        return all.getCount() == 0 || all.getMin() == all.getMax()
                ? axis.logarithmic()
                : axis.logarithmic().between(all.getMin() / margin, all.getMax() * margin);
    }

    /** The bands of all tests, so that panels of one figure have one axis. */
    private AxisSpec frequency(BandRatios test) {
        double lowest = all.stream()
                .filter(r -> r.family().equals(test.family()))
                .mapToDouble(r -> r.bands().get(0).lower())
                .min()
                .orElseThrow();
        List<ThirdOctave> bands = test.bands();
        return AxisSpec.of("Frequency", "Hz")
                .logarithmic()
                .between(lowest, bands.get(bands.size() - 1).upper());
    }

    /** The shade of a thing, where there are draws, and its median, each band from its lower end to its upper one. */
    private void add(List<Series> series, int thing, List<ThirdOctave> bands, IntFunction<Estimate> of) {
        int n = bands.size();
        double[] x = new double[2 * n];
        double[] median = new double[2 * n];
        double[] edgeX = new double[4 * n];
        double[] edge = new double[4 * n];
        boolean any = false;
        for (int i = 0; i < n; i++) {
            Estimate e = of.apply(i);
            double[] ends = {bands.get(i).lower(), bands.get(i).upper()};
            for (int k = 0; k < 2; k++) {
                int at = 2 * i + k;
                x[at] = ends[k];
                median[at] = positive(e.value());
                edgeX[at] = ends[k];
                edge[at] = positive(e.high());
                edgeX[4 * n - 1 - at] = ends[k];
                edge[4 * n - 1 - at] = positive(e.low());
            }
            any |= e.low() < e.high();
        }
        Tone tone = TONES.get(thing % TONES.size());
        LineStyle style = STYLES.get(thing % STYLES.size());
        String name = findings.things().get(thing);
        if (any) {
            series.add(new Series(name + ", 90 % of the draws", edgeX, edge, LineStyle.SOLID, tone, Trace.AREA));
        }
        series.add(new Series(name, x, median, style, tone, Trace.LINE));
    }

    /** A logarithmic axis has no nought. */
    private static double positive(double value) {
        return value > 0 ? value : Double.NaN;
    }
}
