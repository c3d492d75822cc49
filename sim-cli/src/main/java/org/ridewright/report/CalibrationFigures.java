package org.ridewright.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.ridewright.calibration.CalibratedVehicle;
import org.ridewright.calibration.Calibration;
import org.ridewright.calibration.Posterior;
import org.ridewright.calibration.Residual;
import org.ridewright.calibration.RideOverlay;
import org.ridewright.figure.AxisSpec;
import org.ridewright.figure.Band;
import org.ridewright.figure.Figure;
import org.ridewright.figure.LegendPlace;
import org.ridewright.figure.Level;
import org.ridewright.figure.LineStyle;
import org.ridewright.figure.Marker;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;
import org.ridewright.figure.Tone;
import org.ridewright.figure.Trace;

/** Figures of a calibration: data beside predictions, values before and after, correlations, logged rides. */
public final class CalibrationFigures {
    /** Values that lie farther off are marked here (uncertainties of the datum). */
    private static final int EDGE = 8;
    /** Weaker correlations are not drawn. */
    private static final double LEAST_CORRELATION = 0.1;

    /** More data than this are numbered only. */
    private static final int MOST_NAMED = 20;

    private static final int LONGEST_NAME = 48;

    private CalibrationFigures() {}

    /** All of them, in the order of reading. */
    public static List<Figure> of(CalibratedVehicle calibrated) {
        List<Figure> figures = new ArrayList<>();
        List<Residual> single = single(calibrated.fit());
        if (!single.isEmpty()) {
            figures.add(data(single));
        }
        figures.add(values(calibrated));
        if (calibrated.ofVehicle() > 1) {
            figures.add(correlation(calibrated));
        }
        for (int i = 0; i < calibrated.rides().size(); i++) {
            figures.add(ride(i + 1, calibrated.rides().get(i)));
        }
        return List.copyOf(figures);
    }

    /** Data that stand alone, fitted ones first, as the tables number them. */
    static List<Residual> single(Calibration fit) {
        List<Residual> single = new ArrayList<>(fit.fitted());
        single.addAll(fit.keptBack());
        return single;
    }

    /** With names where they are few enough to stand one below the other; numbered as in the table where not. */
    static Figure data(List<Residual> all) {
        boolean named = all.size() <= MOST_NAMED;
        int n = all.size();
        List<Series> series = new ArrayList<>();
        series.add(segments(
                "predicted by the calibrated vehicle, 90 %",
                n,
                i -> inUncertainties(all.get(i), all.get(i).lower()),
                i -> inUncertainties(all.get(i), all.get(i).upper()),
                Tone.NAVY));
        series.add(points(
                "most probable", n, i -> inside(all.get(i), all.get(i).predicted()), Tone.NAVY, LineStyle.SOLID));
        if (all.stream().anyMatch(r -> Double.isFinite(r.before()))) {
            series.add(points(
                    "by the file as it was",
                    n,
                    i -> inside(all.get(i), all.get(i).before()),
                    Tone.AMBER,
                    LineStyle.DOT));
        }
        beyond(all).ifPresent(series::add);
        double reach = 1.2
                * all.stream()
                        .flatMapToDouble(r -> DoubleStream.of(
                                inUncertainties(r, r.lower()),
                                inUncertainties(r, r.upper()),
                                inUncertainties(r, r.predicted()),
                                inUncertainties(r, r.before())))
                        .filter(Double::isFinite)
                        .map(v -> Math.min(EDGE, Math.abs(v)))
                        .max()
                        .orElse(3);
        AxisSpec off = AxisSpec.of("Predicted less measured", "uncertainties")
                .between(-Math.max(3, reach), Math.max(3, reach));
        Panel panel = named
                ? Panel.of(
                                "",
                                off,
                                AxisSpec.named("", names(all)),
                                series.stream().map(s -> laidDown(s, n)).toArray(Series[]::new))
                        .withMarkers(List.of(new Marker(0, "measured")))
                        .withBands(keptBackBand(all, true))
                : Panel.of("", numbers("datum", n), off, series.toArray(Series[]::new))
                        .withLevels(List.of(new Level(0, "measured")))
                        .withBands(keptBackBand(all, false));
        return Figure.stacked(
                "measured-predicted",
                "What was measured, and what the vehicle shows before and after",
                "Each datum in units of its own standard uncertainty; zero is what was measured. Bars: where the measurement would lie nine times in "
                        + "ten, were it taken once more on the calibrated vehicle."
                        + (beyond(all).isPresent()
                                ? " Squares stand at the edge for what lies farther off than " + EDGE
                                        + " uncertainties; the table has the values."
                                : "")
                        + (all.stream().anyMatch(r -> r.datum().keptBack())
                                ? " Shaded: data that were kept back, predicted only."
                                : ""),
                named ? 50 + 5.0 * n : 95,
                panel);
    }

    /** Numbers as the table has them, and what they are; cut short where too long for the side of a figure. */
    private static List<String> names(List<Residual> all) {
        List<String> names = new ArrayList<>();
        for (int i = all.size() - 1; i >= 0; i--) {
            String label = all.get(i).datum().label();
            names.add((label.length() > LONGEST_NAME
                            ? label.substring(0, LONGEST_NAME - 1).strip() + "…"
                            : label) + "  " + (i + 1));
        }
        return names;
    }

    /** The same from the top down in place of from left to right. */
    private static Series laidDown(Series series, int n) {
        double[] place = Arrays.stream(series.x()).map(x -> n - 1 - x).toArray();
        double[] value = series.y();
        double[] x = new double[value.length];
        for (int i = 0; i < value.length; i++) {
            x[i] = Double.isNaN(value[i]) ? 0 : value[i];
            place[i] = Double.isNaN(value[i]) ? Double.NaN : place[i];
        }
        return new Series(series.name(), x, place, series.style(), series.tone(), series.trace());
    }

    /** Marks at the edge for what lies beyond it, unlike those of values that are where they are drawn. */
    private static Optional<Series> beyond(List<Residual> all) {
        List<double[]> marks = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            for (double value : new double[] {all.get(i).before(), all.get(i).predicted()}) {
                double off = inUncertainties(all.get(i), value);
                if (Math.abs(off) > EDGE) {
                    marks.add(new double[] {i, Math.copySign(EDGE, off)});
                }
            }
        }
        return marks.isEmpty()
                ? Optional.empty()
                : Optional.of(new Series(
                        "farther off than " + EDGE + ", drawn at the edge",
                        marks.stream().mapToDouble(m -> m[0]).toArray(),
                        marks.stream().mapToDouble(m -> m[1]).toArray(),
                        LineStyle.DOT,
                        Tone.RUST,
                        Trace.MARKS));
    }

    /** A value that the figure has room for; a gap in place of one that it has not. */
    private static double inside(Residual residual, double value) {
        double off = inUncertainties(residual, value);
        return Math.abs(off) > EDGE ? Double.NaN : off;
    }

    private static List<Band> keptBackBand(List<Residual> all, boolean down) {
        long fitted = all.stream().filter(r -> !r.datum().keptBack()).count();
        if (fitted == all.size() || fitted == 0) {
            return List.of();
        }
        int n = all.size();
        return List.of(
                down
                        ? new Band(Band.Span.OF_Y, -0.5, n - fitted - 0.5, "kept back")
                        : new Band(Band.Span.OF_X, fitted - 0.5, n - 0.5, "kept back"));
    }

    /** Whole numbers from 1, as the tables have them, at 0, 1, 2 …; thinned out where there are many. */
    private static AxisSpec numbers(String what, int n) {
        int every = n <= 40 ? 1 : n <= 100 ? 5 : 10;
        return AxisSpec.named(
                "Number of the " + what + " in the table",
                IntStream.rangeClosed(1, n)
                        .mapToObj(i -> i == 1 || i % every == 0 ? Integer.toString(i) : "")
                        .toList());
    }

    private static double inUncertainties(Residual residual, double value) {
        return (value - residual.datum().observed()) / residual.datum().uncertainty();
    }

    private static Figure values(CalibratedVehicle calibrated) {
        Calibration fit = calibrated.fit();
        int n = calibrated.ofVehicle();
        double q = Posterior.NINETY_PERCENT;
        Series before = segments("before, 90 %", n, i -> -q, i -> q, Tone.AMBER);
        Series after = shifted(
                "now, 90 %",
                n,
                i -> fit.posterior().z(i) - q * fit.posterior().deviation(i),
                i -> fit.posterior().z(i) + q * fit.posterior().deviation(i),
                Tone.NAVY);
        Series best = new Series(
                "most probable",
                IntStream.range(0, n).mapToDouble(i -> i + 0.25).toArray(),
                IntStream.range(0, n).mapToDouble(fit.posterior()::z).toArray(),
                LineStyle.SOLID,
                Tone.NAVY,
                Trace.MARKS);
        Panel panel = Panel.of(
                        "",
                        numbers("value", n),
                        AxisSpec.of("Departure from the file", "tolerances"),
                        before,
                        after,
                        best)
                .withLevels(List.of(new Level(0, "as in the file")));
        return Figure.stacked(
                "values",
                "What is known of each value, before and after",
                "Each value in units of its tolerance in the file. The shorter the bar beside it, the more the measurements say of it.",
                90,
                panel);
    }

    private static Figure correlation(CalibratedVehicle calibrated) {
        int n = calibrated.ofVehicle();
        Posterior posterior = calibrated.fit().posterior();
        List<Series> series = new ArrayList<>();
        squares("alike: more of one goes with more of the other", n, posterior, 1, LineStyle.SOLID, Tone.NAVY)
                .ifPresent(series::add);
        squares("opposite: more of one goes with less of the other", n, posterior, -1, LineStyle.DASH, Tone.RUST)
                .ifPresent(series::add);
        Panel panel = new Panel(
                "",
                numbers("value", n),
                numbers("value", n),
                series,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                LegendPlace.BELOW,
                true);
        return new Figure(
                "correlation",
                "How the calibrated values hang together",
                "A square to each pair of values: as wide as their room for a correlation of ±1, narrower in proportion; below "
                        + Numbers.of(LEAST_CORRELATION)
                        + " none is drawn. Pairs with large squares are known together better than each by itself.",
                List.of(panel),
                1,
                Figure.PAGE_WIDTH_MM,
                150);
    }

    /** Outlines of squares, each closed, with gaps between. */
    private static Optional<Series> squares(
            String name, int n, Posterior posterior, int sign, LineStyle style, Tone tone) {
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double r = posterior.correlation(i, j) * sign;
                if (r >= LEAST_CORRELATION) {
                    double h = 0.45 * r;
                    points.add(new double[] {i - h, j - h});
                    points.add(new double[] {i + h, j - h});
                    points.add(new double[] {i + h, j + h});
                    points.add(new double[] {i - h, j + h});
                    points.add(new double[] {i - h, j - h});
                    points.add(new double[] {i - h, Double.NaN});
                }
            }
        }
        return points.isEmpty()
                ? Optional.empty()
                : Optional.of(new Series(
                        name,
                        points.stream().mapToDouble(p -> p[0]).toArray(),
                        points.stream().mapToDouble(p -> p[1]).toArray(),
                        style,
                        tone,
                        Trace.LINE));
    }

    private static Figure ride(int number, RideOverlay ride) {
        double[] t = array(ride.times());
        double[] rest = new double[t.length];
        double[] shown = new double[t.length];
        double greatest = 0;
        for (int i = 0; i < t.length; i++) {
            shown[i] = ride.after().get(i) + ride.added().get(i);
            rest[i] = ride.logged().get(i) - shown[i];
            greatest = Math.max(greatest, Math.max(Math.abs(ride.logged().get(i)), Math.abs(shown[i])));
        }
        AxisSpec time = AxisSpec.of("Time", "s").between(t[0], t[t.length - 1]);
        Panel overlay = Panel.of(
                "",
                time,
                AxisSpec.of("Vertical acceleration", "m/s²"),
                Series.line(0, "logged", t, array(ride.logged())),
                Series.line(1, ride.steps() ? "calibrated vehicle and horse" : "calibrated vehicle", t, shown),
                new Series("file as it was", t, array(ride.before()), LineStyle.DOT, Tone.AMBER, Trace.LINE));
        Panel left = Panel.of(
                "What is left: logged less calibrated",
                time,
                AxisSpec.of("Acceleration", "m/s²").between(-1.1 * greatest, 1.1 * greatest),
                Series.line(0, "left", t, rest));
        return Figure.stacked(
                "ride-" + number,
                RideFigures.upperFirst(ride.label()) + (ride.keptBack() ? ", kept back" : ""),
                "Logged at %s and simulated, both below %s Hz; what a constant and the steps of a horse add is in the calibrated curve. Explained: %s of the mean square, %s by the file as it was. Speed %s ± %s km/h."
                        .formatted(
                                ride.sensor().isEmpty() ? "the seat" : ride.sensor(),
                                Numbers.of(RideOverlay.BAND),
                                Numbers.percent(ride.explainedAfter()),
                                Numbers.percent(ride.explainedBefore()),
                                Numbers.of(3.6 * ride.speed()),
                                Numbers.of(3.6 * ride.speedError(), 2)),
                130,
                overlay,
                left);
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(v -> v).toArray();
    }

    private static Series segments(String name, int n, IntToDoubleFunction low, IntToDoubleFunction high, Tone tone) {
        return segments(name, n, low, high, tone, 0);
    }

    private static Series shifted(String name, int n, IntToDoubleFunction low, IntToDoubleFunction high, Tone tone) {
        return segments(name, n, low, high, tone, 0.25);
    }

    private static Series segments(
            String name, int n, IntToDoubleFunction low, IntToDoubleFunction high, Tone tone, double first) {
        double[] x = new double[3 * n];
        double[] y = new double[3 * n];
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < 3; k++) {
                x[3 * i + k] = first + i;
            }
            y[3 * i] = low.applyAsDouble(i);
            y[3 * i + 1] = high.applyAsDouble(i);
            y[3 * i + 2] = Double.NaN;
        }
        return new Series(name, x, y, LineStyle.SOLID, tone, Trace.LINE);
    }

    private static Series points(String name, int n, IntToDoubleFunction value, Tone tone, LineStyle style) {
        return new Series(
                name,
                IntStream.range(0, n).asDoubleStream().toArray(),
                IntStream.range(0, n).mapToDouble(value).toArray(),
                style,
                tone,
                Trace.MARKS);
    }
}
