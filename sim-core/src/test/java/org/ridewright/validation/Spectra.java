package org.ridewright.validation;

import java.util.List;
import java.util.Random;
import org.hipparchus.complex.Complex;
import org.ridewright.signal.Channel;
import org.ridewright.signal.Confidence;
import org.ridewright.signal.Detrend;
import org.ridewright.signal.PowerSpectrum;
import org.ridewright.signal.Sines;
import org.ridewright.signal.ThirdOctave;
import org.ridewright.signal.ThirdOctaveSpectrum;
import org.ridewright.signal.TransferFunction;
import org.ridewright.signal.WelchAccumulator;

/**
 * Spectra of signals whose spectra are known. A sine of amplitude A has the mean square A²/2; white noise of variance σ² sampled at fs has
 * {@code G = 2σ²/fs}; a first-order autoregression {@code x_n = φ x_{n−1} + e_n} has {@code G = (2/fs)/|1 − φ e^{−iω}|²}; a density c/f²
 * has {@code c (1/f₁ − 1/f₂)} between f₁ and f₂; {@code y_n = x_n/2 + x_{n−3}/4 + noise} has the gain {@code ½ + ¼ e^{−3iω}}.
 */
final class Spectra implements ReferenceProblem {
    private static final Source FORM = Source.closedForm("Fourier transform of the signal");
    private static final Source TABLE = Source.book("table of χ² (from memory)");
    private static final double FS = 100;
    private static final int LENGTH = 1 << 18;

    @Override
    public String title() {
        return "Spectra and one-third octaves";
    }

    @Override
    public String statement() {
        return "Welch's estimate under Hann's window, half overlapping; noise of fixed seeds, 2¹⁸ samples at 100 Hz in segments of 512. "
                + "Tolerances of noise are those of the scatter (1023 averages).";
    }

    @Override
    public List<Check> checks() {
        Rows rows = new Rows(this);
        PowerSpectrum tone = WelchAccumulator.of(512, Detrend.NONE, Sines.sine(256, 20, 3, 20))
                .power(0);
        rows.relative(FORM, "mean square of a sine of 3 m/s²", "m²/s⁴", 4.5, tone.meanSquare(19, 21), 1e-10);
        addNoise(rows);
        addGain(rows);
        addBands(rows);
        Confidence ten = Confidence.of(0.95, 10);
        return rows.relative(TABLE, "χ² of 10 degrees exceeded by 2.5 %", "1", 20.483, 10 / ten.lower(), 5e-5)
                .relative(TABLE, "χ² of 10 degrees exceeded by 97.5 %", "1", 3.247, 10 / ten.upper(), 2e-4)
                .list();
    }

    private static double[] gaussian(long seed) {
        Random random = new Random(seed);
        double[] x = new double[LENGTH];
        for (int i = 0; i < LENGTH; i++) {
            x[i] = random.nextGaussian();
        }
        return x;
    }

    private static Channel channel(double[] x) {
        return new Channel("noise", "m/s²", FS, 0, x);
    }

    private static void addNoise(Rows rows) {
        double[] x = gaussian(41);
        double[] y = x.clone();
        for (int i = 1; i < LENGTH; i++) {
            y[i] += 0.8 * y[i - 1];
        }
        PowerSpectrum white = WelchAccumulator.of(512, Detrend.NONE, channel(x)).power(0);
        PowerSpectrum red = WelchAccumulator.of(512, Detrend.NONE, channel(y)).power(0);
        rows.relative(FORM, "white noise, 5 to 45 Hz", "m²/s⁴", 0.8, white.meanSquare(5, 45), 0.02);
        for (double f : new double[] {2.5, 10, 40}) {
            int k = (int) Math.round(f / red.resolution());
            double mean = 0;
            double exact = 0;
            for (int i = k - 4; i <= k + 4; i++) {
                mean += red.density(i) / 9;
                double w = 2 * Math.PI * red.frequency(i) / FS;
                exact += 2 / FS / (1.64 - 1.6 * Math.cos(w)) / 9;
            }
            rows.relative(FORM, "autoregression of 0.8 about " + f + " Hz, nine lines", "m²/s³", exact, mean, 0.04);
        }
    }

    private static void addGain(Rows rows) {
        double[] x = gaussian(43);
        double[] e = gaussian(44);
        double[] y = new double[LENGTH];
        for (int i = 0; i < LENGTH; i++) {
            y[i] = 0.5 * x[i] + (i >= 3 ? 0.25 * x[i - 3] : 0) + 0.3 * e[i];
        }
        TransferFunction h =
                WelchAccumulator.of(512, Detrend.NONE, channel(x), channel(y)).transfer(0, 1);
        for (double f : new double[] {5, 25, 40}) {
            int k = (int) Math.round(f / h.input().resolution());
            double w = 2 * Math.PI * h.frequency(k) / FS;
            Complex exact = new Complex(0.5 + 0.25 * Math.cos(3 * w), -0.25 * Math.sin(3 * w));
            double power = exact.norm() * exact.norm();
            rows.relative(FORM, "gain at " + f + " Hz under noise", "1", exact.norm(), h.magnitude(k), 0.09)
                    .absolute(FORM, "coherence at " + f + " Hz", "1", power / (power + 0.09), h.coherence(k), 0.06);
        }
    }

    private static void addBands(Rows rows) {
        ThirdOctave band = ThirdOctave.containing(8);
        rows.relative(
                Source.standard("ISO 266, base ten (from memory)"),
                "exact middle of the band 8 Hz",
                "Hz",
                7.943282347,
                band.exact(),
                1e-9);
        rows.relative(
                FORM,
                "density 1/f² over the band 8 Hz",
                "m²/s⁴",
                1 / band.lower() - 1 / band.upper(),
                band.meanSquare(f -> 1 / (f * f)),
                1e-12);
        PowerSpectrum white =
                WelchAccumulator.of(4096, Detrend.NONE, channel(gaussian(45))).power(0);
        ThirdOctaveSpectrum octaves = ThirdOctaveSpectrum.of(white, 1, 31.5);
        int eight = octaves.bands().indexOf(band);
        rows.relative(
                FORM,
                "white noise in the band 8 Hz",
                "m/s²",
                Math.sqrt(band.width() * 2 / FS),
                octaves.rms(eight),
                0.03);
        // BT = 25: 108 s at 1 Hz, 227 s at 0.5 Hz
        Confidence c = Confidence.of(0.9, 2 * 108 * ThirdOctave.containing(1).width());
        rows.absolute(
                Source.standard("ISO 2631-1:1997 5.5 (from memory)"),
                "width of the 90 % band at 1 Hz after 108 s",
                "dB",
                3,
                10 * Math.log10(c.upper() / c.lower()),
                0.2);
    }
}
