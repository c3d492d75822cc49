package org.ridewright.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
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
import org.ridewright.report.BounceLogResult.Motion;
import org.ridewright.ringdown.RingDown;
import org.ridewright.ringdown.RingDown.Amplitude;
import org.ridewright.ringdown.Stretch;

/** Figures of bounce tests: the log with its releases; each release with fit and envelope, and its half cycles beside straight and exponential decay. */
public final class BounceLogFigures {
    private static final String ACCELERATION = "m/s²";

    private BounceLogFigures() {}

    /** Those of one motion. */
    static List<Figure> of(BounceLogResult result, Motion motion, String prefix) {
        List<Figure> figures = new ArrayList<>();
        figures.add(log(result, motion, prefix));
        int number = 1;
        for (RingDown release : motion.ringDowns().releases()) {
            figures.add(release(motion, release, number, prefix));
            number++;
        }
        return List.copyOf(figures);
    }

    /** Groups with headings, one a motion. */
    static List<FigureGroup> groups(BounceLogResult result) {
        List<FigureGroup> groups = new ArrayList<>();
        for (int m = 0; m < result.motions().size(); m++) {
            Motion motion = result.motions().get(m);
            String prefix = m == 0 ? "" : "turning-";
            groups.add(new FigureGroup(RideFigures.upperFirst(motion.name()), of(result, motion, prefix)));
        }
        return List.copyOf(groups);
    }

    /** All figures. */
    public static List<Figure> of(BounceLogResult result) {
        return groups(result).stream().flatMap(g -> g.figures().stream()).toList();
    }

    private static Figure log(BounceLogResult result, Motion motion, String prefix) {
        List<double[]> xs = new ArrayList<>();
        List<double[]> ys = new ArrayList<>();
        for (Stretch stretch : motion.stretches()) {
            int n = stretch.times().length;
            double[] x = Arrays.copyOf(stretch.times(), n + 1);
            double[] y = Arrays.copyOf(stretch.values(), n + 1);
            x[n] = x[n - 1];
            y[n] = Double.NaN;
            xs.add(x);
            ys.add(y);
        }
        List<Marker> markers = new ArrayList<>();
        List<Band> bands = new ArrayList<>();
        for (RingDown release : motion.ringDowns().releases()) {
            markers.add(new Marker(release.at(), String.valueOf(markers.size() + 1)));
            bands.add(new Band(Band.Span.OF_X, release.at(), release.end(), ""));
        }
        Series line = new Series("recorded", flat(xs), flat(ys), LineStyle.SOLID, Tone.INK, Trace.LINE);
        Panel panel = Panel.of(
                        "",
                        AxisSpec.of("Time from the first row", "s"),
                        AxisSpec.of(RideFigures.upperFirst(result.direction().word()) + " acceleration", ACCELERATION),
                        line)
                .withLevels(List.of(new Level(0, "")))
                .withMarkers(markers)
                .withBands(bands);
        String caption = String.format(
                Locale.ROOT,
                "%s in %s, gravity taken off. The line with a number is where a release was found; what was fitted is shaded.",
                motion.name().equals(result.direction().word())
                        ? RideFigures.upperFirst(motion.name()) + " acceleration"
                        : "Acceleration of " + motion.name(),
                result.name());
        return Figure.stacked(prefix + "log", "Releases found", caption, 78, panel);
    }

    private static Figure release(Motion motion, RingDown release, int number, String prefix) {
        RingDown.Curve curve = release.curve();
        int from = 0;
        while (from + 1 < curve.times().length && curve.times()[from + 1] < release.at()) {
            from++;
        }
        double[] t = relative(curve.times(), 0, release.at());
        double[] fittedTimes = Arrays.copyOfRange(t, from, t.length);
        List<Series> lines = new ArrayList<>();
        lines.add(new Series("recorded", t, curve.recorded(), LineStyle.SOLID, Tone.INK, Trace.LINE));
        lines.add(new Series(
                "fitted",
                fittedTimes,
                Arrays.copyOfRange(curve.fitted(), from, t.length),
                LineStyle.DASH,
                Tone.RUST,
                Trace.LINE));
        if (release.amplitudes().size() > 1) {
            lines.add(envelope(release));
        }
        Panel record = Panel.of(
                        "",
                        AxisSpec.of("Time from the release", "s"),
                        AxisSpec.of("Acceleration", ACCELERATION),
                        lines.toArray(Series[]::new))
                .withLevels(List.of(new Level(0, "")))
                .withLegend(LegendPlace.BELOW);
        Panel sizes = sizes(release);
        String caption = String.format(
                Locale.ROOT,
                "Release %d, at %.2f s of the log. Above: the record, less the sensor's zero, with the motion fitted to it. Below: the size of each half cycle, that is the"
                        + " acceleration just after its turn. A straight decay means dry friction, an exponential one viscous damping. %s",
                number,
                release.at(),
                BounceLogWords.of(motion, release, number));
        return Figure.stacked(
                prefix + "release-" + number,
                "Release " + number + ": " + verdict(release),
                caption,
                150,
                record,
                sizes);
    }

    private static String verdict(RingDown release) {
        String frequency = BounceLogWords.plusMinus(release.frequency()) + " Hz, ";
        return switch (release.kind()) {
            case DRY -> frequency + "straight decay of dry friction";
            case VISCOUS -> frequency + "exponential decay of viscous damping";
            case MIXED -> frequency + "decay of both friction and damping";
            case UNCLEAR -> frequency + "kind of decay cannot be told";
        };
    }

    /** Both sides in one line, the lower run back. */
    private static Series envelope(RingDown release) {
        List<Amplitude> sizes = release.amplitudes();
        int n = sizes.size();
        double[] x = new double[2 * n + 1];
        double[] y = new double[2 * n + 1];
        for (int j = 0; j < n; j++) {
            x[j] = sizes.get(j).time() - release.at();
            y[j] = sizes.get(j).fitted();
            x[2 * n - j] = x[j];
            y[2 * n - j] = -y[j];
        }
        x[n] = x[n - 1];
        y[n] = Double.NaN;
        return new Series("envelope fitted", x, y, LineStyle.LONG_DASH, Tone.TEAL, Trace.LINE);
    }

    private static Panel sizes(RingDown release) {
        double highest = release.amplitudes().stream()
                .mapToDouble(a -> Math.max(a.fitted(), Double.isNaN(a.recorded()) ? 0 : a.recorded()))
                .max()
                .orElse(1);
        return Panel.of(
                        "",
                        AxisSpec.of("Cycles from the release", ""),
                        AxisSpec.of("Size of the half cycle", ACCELERATION).between(0, 1.12 * highest),
                        new Series(
                                "recorded",
                                cycles(release),
                                values(release, Amplitude::recorded),
                                LineStyle.SOLID,
                                Tone.INK,
                                Trace.MARKS),
                        new Series(
                                "fitted to the record",
                                cycles(release),
                                values(release, Amplitude::fitted),
                                LineStyle.SOLID,
                                Tone.RUST,
                                Trace.LINE),
                        new Series(
                                "closest straight line: dry friction",
                                cycles(release),
                                values(release, Amplitude::straight),
                                LineStyle.DASH_DOT,
                                Tone.NAVY,
                                Trace.LINE),
                        new Series(
                                "closest exponential: viscous",
                                cycles(release),
                                values(release, Amplitude::exponential),
                                LineStyle.LONG_DASH,
                                Tone.TEAL,
                                Trace.LINE))
                .withLegend(LegendPlace.BELOW);
    }

    private static double[] cycles(RingDown release) {
        double[] cycles = new double[Math.max(1, release.amplitudes().size())];
        for (int j = 0; j < cycles.length; j++) {
            cycles[j] = j / 2.0;
        }
        return cycles;
    }

    private static double[] values(RingDown release, ToDoubleFunction<Amplitude> of) {
        return release.amplitudes().isEmpty()
                ? new double[] {Double.NaN}
                : release.amplitudes().stream().mapToDouble(of).toArray();
    }

    private static double[] relative(double[] times, int from, double zero) {
        double[] shifted = Arrays.copyOfRange(times, from, times.length);
        for (int i = 0; i < shifted.length; i++) {
            shifted[i] -= zero;
        }
        return shifted;
    }

    private static double[] flat(List<double[]> parts) {
        return parts.stream().flatMapToDouble(Arrays::stream).toArray();
    }
}
