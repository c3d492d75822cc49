package org.ridewright.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleFunction;
import org.ridewright.comfort.Axis;
import org.ridewright.comfort.RunningRms;
import org.ridewright.comfort.TrustedBand;
import org.ridewright.comfort.Weighting;
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
import org.ridewright.measurement.LogAxis;
import org.ridewright.measurement.LogSpectra;
import org.ridewright.measurement.Piece;
import org.ridewright.signal.Channel;
import org.ridewright.signal.PowerSpectrum;
import org.ridewright.signal.ThirdOctave;
import org.ridewright.signal.ThirdOctaveSpectrum;

/** Figures of a log: acceleration with its running r.m.s., one-third octaves with the weighting, spectrum. */
public final class LogFigures {
    private static final double LOWEST = 0.25;
    private static final double CONFIDENCE = 0.95;

    private LogFigures() {}

    /** All that the log is long enough for. */
    public static List<Figure> of(LogResult result) {
        List<Figure> figures = new ArrayList<>();
        figures.add(traces(result));
        result.spectra().flatMap(LogSpectra::vertical).ifPresent(octaves -> figures.add(octaves(result, octaves)));
        result.spectra().ifPresent(spectra -> figures.add(spectrum(result, spectra)));
        return List.copyOf(figures);
    }

    private static Weighting weighting(LogResult result) {
        return result.vibration().position().weighting(Axis.Z);
    }

    private static Figure traces(LogResult result) {
        AxisSpec time = AxisSpec.of("Time from the first row", "s");
        List<Band> counted = new ArrayList<>();
        for (Piece piece : result.ride().pieces()) {
            counted.add(new Band(
                    Band.Span.OF_X, piece.window().from(), piece.window().to(), counted.isEmpty() ? "counted" : ""));
        }
        List<Piece> pieces = result.ride().pieces();
        List<Panel> panels = new ArrayList<>();
        Series raw = joined("vertical", 0, pieces, Piece::vertical);
        panels.add(Panel.of("", time, AxisSpec.of("Vertical, unweighted", "m/s²"), raw)
                .withLevels(List.of(new Level(0, "")))
                .withBands(counted));
        List<Series> running = new ArrayList<>();
        running.add(joined("vertical, " + weighting(result).symbol(), 0, pieces, p -> running(result, p, LogAxis.Z)));
        if (result.ride().recording().columns().size() > 1) {
            running.add(joined(
                    "horizontal, "
                            + result.vibration().position().weighting(Axis.Y).symbol(),
                    1,
                    pieces,
                    p -> horizontal(result, p)));
        }
        panels.add(
                Panel.of("", time, AxisSpec.of("Running r.m.s. of 1 s", "m/s²").from(0), running.toArray(Series[]::new))
                        .withBands(counted));
        String caption = String.format(
                Locale.ROOT,
                "Acceleration %s of %s, gravity taken off: vertical and unweighted above, below it the running r.m.s. of the weighted acceleration, whose greatest value is"
                        + " MTVV. What counts is shaded; the start-up of the filters%s is left out.",
                result.place(),
                result.name(),
                result.ride().timing().dropouts().isEmpty() ? "" : " and what follows on each dropout");
        return Figure.stacked(
                "acceleration", "Recorded acceleration " + result.place(), caption, 132, panels.toArray(Panel[]::new));
    }

    /** Pieces in one line, with gaps between. */
    private static Series joined(String name, int order, List<Piece> pieces, ToChannel channel) {
        List<double[]> xs = new ArrayList<>();
        List<double[]> ys = new ArrayList<>();
        for (Piece piece : pieces) {
            Channel c = channel.of(piece);
            int n = c.size();
            double[] x = new double[n + 1];
            double[] y = new double[n + 1];
            for (int i = 0; i < n; i++) {
                x[i] = c.time(i);
                y[i] = c.sample(i);
            }
            x[n] = c.end();
            y[n] = Double.NaN;
            xs.add(x);
            ys.add(y);
        }
        return Series.line(order, name, flat(xs), flat(ys));
    }

    private interface ToChannel {
        Channel of(Piece piece);
    }

    private static double[] flat(List<double[]> parts) {
        return parts.stream().flatMapToDouble(Arrays::stream).toArray();
    }

    private static Channel running(LogResult result, Piece piece, LogAxis axis) {
        Weighting own = result.vibration()
                .position()
                .weighting(axis == LogAxis.Z ? Axis.Z : axis == LogAxis.X ? Axis.X : Axis.Y);
        return new RunningRms(own.apply(piece.channels().get(axis))).channel();
    }

    private static Channel horizontal(LogResult result, Piece piece) {
        double[] sum = new double[piece.vertical().size()];
        for (LogAxis axis : List.of(LogAxis.X, LogAxis.Y)) {
            if (piece.channels().containsKey(axis)) {
                double[] part = running(result, piece, axis).samples();
                for (int i = 0; i < sum.length; i++) {
                    sum[i] = Math.hypot(sum[i], part[i]);
                }
            }
        }
        return piece.vertical().with("horizontal", "m/s²", sum);
    }

    private static Figure octaves(LogResult result, ThirdOctaveSpectrum raw) {
        Weighting weighting = weighting(result);
        ThirdOctaveSpectrum weighted = raw.times(weighting::factor);
        List<ThirdOctave> bands = raw.bands();
        double[] edges = new double[bands.size() + 1];
        for (int i = 0; i < bands.size(); i++) {
            edges[i] = bands.get(i).lower();
        }
        edges[bands.size()] = bands.get(bands.size() - 1).upper();
        AxisSpec frequency = AxisSpec.of("Frequency", "Hz").logarithmic().between(edges[0], edges[bands.size()]);
        Panel bars = Panel.of(
                        "",
                        frequency,
                        AxisSpec.of("R.m.s. in one-third octave", "m/s²").from(0),
                        steps("unweighted", LineStyle.SOLID, Tone.INK, edges, raw::rms),
                        steps("weighted by " + weighting.symbol(), LineStyle.DASH, Tone.RUST, edges, weighted::rms))
                .withLegend(LegendPlace.SHARED);
        double[] f = logSpaced(edges[0], edges[bands.size()], 300);
        double[] factor = Arrays.stream(f).map(weighting::factor).toArray();
        Panel curve = Panel.of(
                "",
                frequency,
                AxisSpec.of("Factor " + weighting.symbol(), "").from(0),
                Series.line(0, weighting.symbol(), f, factor));
        int strongest = strongest(weighted, bands.size());
        String caption = String.format(
                Locale.ROOT,
                "Vertical acceleration %s in one-third octaves, as it is and weighted, with the weighting beneath; the band at %s Hz counts most, %s m/s²"
                        + " (95 %% confidence %s to %s, for a ride that goes on like this). Bands up to %s Hz lie within what %s Hz sampling can show; the lowest that a log of this length resolves is that of %s Hz.",
                result.place(),
                Numbers.of(bands.get(strongest).nominal()),
                Numbers.of(weighted.rms(strongest)),
                Numbers.of(weighted.rms(strongest)
                        * Math.sqrt(weighted.confidence(CONFIDENCE, strongest).lower())),
                Numbers.of(weighted.rms(strongest)
                        * Math.sqrt(weighted.confidence(CONFIDENCE, strongest).upper())),
                Numbers.of(bands.get(bands.size() - 1).nominal()),
                Numbers.of(result.ride().rate(), 4),
                Numbers.of(bands.get(0).nominal()));
        return Figure.stacked(
                "third-octaves", "Which frequencies are felt " + result.place(), caption, 128, bars, curve);
    }

    private static int strongest(ThirdOctaveSpectrum spectrum, int count) {
        int strongest = 0;
        for (int i = 1; i < count; i++) {
            strongest = spectrum.rms(i) > spectrum.rms(strongest) ? i : strongest;
        }
        return strongest;
    }

    /** A bar's top from edge to edge. */
    private static Series steps(String name, LineStyle style, Tone tone, double[] edges, IntToDoubleFunction value) {
        double[] y = new double[edges.length];
        for (int i = 0; i < y.length; i++) {
            y[i] = value.applyAsDouble(Math.min(i, y.length - 2));
        }
        return new Series(name, edges, y, style, tone, Trace.STEP);
    }

    private static double[] logSpaced(double from, double to, int count) {
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = from * Math.pow(to / from, i / (count - 1.0));
        }
        values[count - 1] = to;
        return values;
    }

    private static Figure spectrum(LogResult result, LogSpectra spectra) {
        PowerSpectrum z = spectra.power().get(LogAxis.Z);
        double trusted = new TrustedBand(result.ride().rate()).upper();
        double from = z.resolution() * Math.ceil(Math.max(LOWEST / z.resolution(), 1.5));
        AxisSpec frequency = AxisSpec.of("Frequency", "Hz").logarithmic().between(from, z.highestFrequency());
        List<Series> lines = new ArrayList<>();
        lines.add(line(0, "vertical", spectra, List.of(LogAxis.Z), from));
        List<LogAxis> level = spectra.power().keySet().stream()
                .filter(a -> a != LogAxis.Z)
                .sorted()
                .toList();
        if (!level.isEmpty()) {
            lines.add(line(1, level.size() == 2 ? "horizontal, both directions" : "horizontal", spectra, level, from));
        }
        Panel panel = Panel.of(
                        "",
                        frequency,
                        AxisSpec.of("Power spectral density", "(m/s²)²/Hz").logarithmic(),
                        lines.toArray(Series[]::new))
                .withBands(List.of(new Band(Band.Span.OF_X, trusted, z.highestFrequency(), "not trusted")));
        String caption = String.format(
                Locale.ROOT,
                "Power spectrum of the unweighted acceleration %s: %d half-overlapping segments under Hann's window, lines %s Hz apart; the true density lies within %s to %s"
                        + " times what is drawn, with 95 %% confidence. Above %s Hz, 0.4 of the sampling rate, nothing is claimed.",
                result.place(),
                z.averages(),
                Numbers.of(z.resolution(), 2),
                Numbers.of(z.confidence(CONFIDENCE).lower(), 2),
                Numbers.of(z.confidence(CONFIDENCE).upper(), 2),
                Numbers.of(trusted));
        return Figure.stacked("spectrum", "Power spectrum " + result.place(), caption, 92, panel);
    }

    private static Series line(int order, String name, LogSpectra spectra, List<LogAxis> axes, double from) {
        PowerSpectrum first = spectra.power().get(axes.get(0));
        int begin = (int) Math.rint(from / first.resolution());
        double[] f = new double[first.size() - begin];
        double[] g = new double[f.length];
        for (int i = 0; i < f.length; i++) {
            f[i] = first.frequency(begin + i);
            int k = begin + i;
            ToDoubleFunction<LogAxis> density =
                    axis -> spectra.power().get(axis).density(k);
            double sum = axes.stream().mapToDouble(density).sum();
            g[i] = sum > 0 ? sum : Double.NaN;
        }
        return Series.line(order, name, f, g);
    }
}
