package org.ridewright.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.ridewright.comfort.MotionBands;
import org.ridewright.comfort.Weighting;
import org.ridewright.figure.AxisSpec;
import org.ridewright.figure.Figure;
import org.ridewright.figure.Marker;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;
import org.ridewright.figure.Trace;
import org.ridewright.ride.RideResult;
import org.ridewright.ride.RideSpectra;
import org.ridewright.signal.Confidence;
import org.ridewright.signal.PowerSpectrum;
import org.ridewright.signal.ThirdOctave;
import org.ridewright.signal.ThirdOctaveSpectrum;
import org.ridewright.signal.TransferFunction;

/** What a ride on a rough road is made of: spectra, one-third octaves and transmissibilities at the roughest place. */
final class SpectrumFigures {
    private static final double LOWEST = 0.4;
    private static final double HIGHEST = 200;
    private static final double LOWEST_BAND = 0.5;
    private static final double HIGHEST_BAND = 80;
    private static final double CONFIDENCE = 0.95;
    /** Decades of a logarithmic vertical axis; the rest is round-off of the estimate. */
    private static final double DECADES = 6;
    /** Points of a curve to a decade. */
    private static final int DENSITY = 60;

    private SpectrumFigures() {}

    /** None of a ride too short for spectra. */
    static List<Figure> of(RideName name, RideResult result) {
        Optional<RideSpectra> roughest = roughest(result);
        return roughest.map(spectra ->
                        List.of(powers(name, spectra), bands(name, spectra), transmissibilities(name, spectra)))
                .orElse(List.of());
    }

    private static Optional<RideSpectra> roughest(RideResult result) {
        return result.spectra().stream().max(Comparator.comparingDouble(s -> Weighting.WK.rms(top(s))));
    }

    /** On the seat, or the body under a rigid one. */
    private static PowerSpectrum top(RideSpectra spectra) {
        int seat = spectra.links().indexOf("seat");
        return spectra.acceleration(seat >= 0 ? seat : spectra.links().indexOf("body"));
    }

    private static AxisSpec frequency(double to) {
        return AxisSpec.of("Frequency", "Hz").logarithmic().between(LOWEST, to);
    }

    /** Limits between heave, jolt and buzz. */
    private static List<Marker> kinds() {
        return List.of(
                new Marker(MotionBands.HEAVE_TO_JOLT, "heave | jolt"),
                new Marker(MotionBands.JOLT_TO_BUZZ, "jolt | buzz"));
    }

    private static Figure powers(RideName name, RideSpectra spectra) {
        List<Series> lines = new ArrayList<>();
        double greatest = 0;
        for (int i = 0; i < spectra.links().size(); i++) {
            PowerSpectrum power = spectra.acceleration(i);
            Curve curve = Curve.of(power, power::density);
            lines.add(Series.line(i, spectra.links().get(i), curve.x, curve.y));
            greatest = Math.max(greatest, curve.greatest());
        }
        double top = Math.pow(10, Math.ceil(Math.log10(greatest)));
        PowerSpectrum felt = top(spectra);
        String caption =
                "Power spectral density of the vertical acceleration from the road up to %s, %s; Welch's estimate from %d half-overlapping segments, lines %s Hz apart. Where one curve lies below the one before, the link between them keeps that frequency from the rider. Weighted by Wk, the r.m.s. from this spectrum, on the seat or on the body under a rigid one, is %s m/s²; tables give it from the motion itself."
                        .formatted(
                                spectra.place(),
                                name.words(),
                                felt.averages(),
                                Numbers.of(felt.resolution()),
                                Numbers.of(Weighting.WK.rms(felt)));
        Panel panel = Panel.of(
                        "",
                        frequency(HIGHEST),
                        AxisSpec.of("Density of acceleration", "(m/s²)²/Hz")
                                .logarithmic()
                                .between(top * Math.pow(10, -DECADES), top),
                        lines.toArray(Series[]::new))
                .withMarkers(kinds());
        return Figure.stacked(
                name.slug() + "-spectra",
                "%s: spectra from the road to %s, on %s at %s"
                        .formatted(name.subject(), spectra.place(), name.road(), name.speed()),
                caption,
                92,
                panel);
    }

    private static Figure bands(RideName name, RideSpectra spectra) {
        ThirdOctaveSpectrum raw = spectra.thirdOctaves(LOWEST_BAND, HIGHEST_BAND);
        ThirdOctaveSpectrum weighted = raw.times(Weighting.WK::factor);
        int greatest = IntStream.range(0, weighted.bands().size())
                .boxed()
                .max(Comparator.comparingDouble(weighted::rms))
                .orElseThrow();
        Confidence within = weighted.confidence(CONFIDENCE, greatest);
        double[] centres = raw.bands().stream().mapToDouble(ThirdOctave::exact).toArray();
        Panel levels = Panel.of(
                        "",
                        frequency(HIGHEST_BAND * 1.2),
                        AxisSpec.of("R.m.s. in the band", "m/s²").from(0),
                        steps(0, "as it is", raw),
                        steps(1, "weighted by Wk", weighted))
                .withMarkers(kinds());
        Panel factor = Panel.of(
                "",
                frequency(HIGHEST_BAND * 1.2),
                AxisSpec.of("Weighting factor Wk", "").from(0),
                Series.line(
                        2,
                        "weighting Wk",
                        centres,
                        raw.bands().stream()
                                .mapToDouble(band -> Weighting.WK.factor(band.nominal()))
                                .toArray()));
        String caption =
                "Vertical acceleration of %s in one-third octaves (ISO 266), %s: as it is, and as ISO 2631-1 weights it. The band of %s Hz counts most, with %s m/s² weighted (95 %% confidence %s to %s, for a ride that goes on like this); all bands drawn together make %s m/s². The lowest that a ride of this length resolves is that of %s Hz; lower ones are left out."
                        .formatted(
                                spectra.place(),
                                name.words(),
                                Numbers.of(weighted.bands().get(greatest).nominal()),
                                Numbers.of(weighted.rms(greatest)),
                                Numbers.of(weighted.rms(greatest) * Math.sqrt(within.lower())),
                                Numbers.of(weighted.rms(greatest) * Math.sqrt(within.upper())),
                                Numbers.of(weighted.total()),
                                Numbers.of(raw.bands().get(0).nominal()));
        return Figure.stacked(
                name.slug() + "-bands",
                "%s: one-third octaves at %s, on %s at %s"
                        .formatted(name.subject(), spectra.place(), name.road(), name.speed()),
                caption,
                125,
                levels,
                factor);
    }

    /** From the lower edge of each band to the upper. */
    private static Series steps(int order, String name, ThirdOctaveSpectrum spectrum) {
        int n = spectrum.bands().size();
        double[] x = new double[n + 1];
        double[] y = new double[n + 1];
        for (int i = 0; i < n; i++) {
            x[i] = spectrum.bands().get(i).lower();
            y[i] = spectrum.rms(i);
        }
        x[n] = spectrum.bands().get(n - 1).upper();
        y[n] = y[n - 1];
        return Series.line(order, name, x, y).as(Trace.STEP);
    }

    private static Figure transmissibilities(RideName name, RideSpectra spectra) {
        List<Series> gains = new ArrayList<>();
        List<Series> coherences = new ArrayList<>();
        for (int i = 1; i < spectra.links().size(); i++) {
            TransferFunction transfer = spectra.transfer(0, i);
            Curve gain = Curve.of(transfer.output(), transfer::magnitude);
            Curve coherence = Curve.of(transfer.output(), transfer::coherence);
            gains.add(Series.line(i, spectra.links().get(i), gain.x, gain.y));
            coherences.add(Series.line(i, spectra.links().get(i), coherence.x, coherence.y));
        }
        String caption =
                "How much of the motion of the road under the nearest wheel (%s) arrives further up, for %s, %s, and below it how much of what arrives comes from there (coherence). Other wheels, friction and lift-off bring in motion of their own: where coherence is low, the curve above it says little."
                        .formatted(spectra.wheel(), spectra.place(), name.words());
        return Figure.stacked(
                name.slug() + "-transmissibility",
                "%s: what arrives at %s, on %s at %s"
                        .formatted(name.subject(), spectra.place(), name.road(), name.speed()),
                caption,
                130,
                Panel.of(
                        "",
                        frequency(HIGHEST),
                        AxisSpec.of("Transmissibility", "").logarithmic().between(1e-3, 10),
                        gains.toArray(Series[]::new)),
                Panel.of(
                        "",
                        frequency(HIGHEST),
                        AxisSpec.of("Coherence", "").between(0, 1),
                        coherences.toArray(Series[]::new)));
    }

    /** A function of frequency, lines of high frequency taken together so that they are as dense as the low ones in print. */
    private record Curve(double[] x, double[] y) {
        static Curve of(PowerSpectrum lines, IntToDoubleFunction value) {
            List<double[]> points = new ArrayList<>();
            int k = 1;
            while (k < lines.size() && lines.frequency(k) < LOWEST) {
                k++;
            }
            while (k < lines.size() && lines.frequency(k) <= HIGHEST) {
                double end = Math.max(
                        lines.frequency(k) + lines.resolution() / 2, lines.frequency(k) * Math.pow(10, 1.0 / DENSITY));
                double sumX = 0;
                double sumY = 0;
                int n = 0;
                while (k < lines.size() && lines.frequency(k) < end) {
                    sumX += Math.log(lines.frequency(k));
                    sumY += value.applyAsDouble(k);
                    n++;
                    k++;
                }
                points.add(new double[] {Math.exp(sumX / n), sumY / n});
            }
            return new Curve(
                    points.stream().mapToDouble(p -> p[0]).toArray(),
                    points.stream()
                            .mapToDouble(p -> p[1] > 0 ? p[1] : Double.NaN)
                            .toArray());
        }

        double greatest() {
            double greatest = 0;
            for (double v : y) {
                greatest = Double.isNaN(v) ? greatest : Math.max(greatest, v);
            }
            return greatest;
        }
    }
}
