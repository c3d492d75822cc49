package org.ridewright.comfort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hipparchus.complex.Complex;
import org.hipparchus.transform.DftNormalization;
import org.hipparchus.transform.FastFourierTransformer;
import org.hipparchus.transform.TransformType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.ridewright.signal.AnalogueFilter;
import org.ridewright.signal.Butterworth;
import org.ridewright.signal.Channel;
import org.ridewright.signal.Detrend;
import org.ridewright.signal.PowerSpectrum;
import org.ridewright.signal.ThirdOctaveSpectrum;
import org.ridewright.signal.WelchAccumulator;

/** The same weighting by two ways that share no code: the recursion in time, and the Fourier transform times H(f) of annex A. */
class FrequencyRouteTest {
    private static final double FS = 100;

    /** Twenty seconds of noise, from rest to rest, in 328 s: all weightings have died away by the end. */
    private static Channel burst(boolean limited) {
        Random random = new Random(12);
        double[] a = new double[1 << 15];
        for (int i = 2000; i < 4000; i++) {
            a[i] = random.nextGaussian();
        }
        Channel white = new Channel("noise", "m/s²", FS, 0, a);
        return limited ? new AnalogueFilter(1, Butterworth.lowPass(8, 25)).apply(white) : white;
    }

    private static Channel byFourier(Weighting weighting, Channel a) {
        int n = a.size();
        double[][] z = {a.samples(), new double[n]};
        FastFourierTransformer.transformInPlace(z, DftNormalization.STANDARD, TransformType.FORWARD);
        for (int k = 0; k < n; k++) {
            double f = (k <= n / 2 ? k : k - n) * FS / n;
            // at half of the sampling rate the two signs of the frequency fall together
            Complex h = k == n / 2
                    ? new Complex(weighting.filter().response(f).getRealPart())
                    : weighting.filter().response(f);
            Complex y = new Complex(z[0][k], z[1][k]).multiply(h);
            z[0][k] = y.getRealPart();
            z[1][k] = y.getImaginaryPart();
        }
        FastFourierTransformer.transformInPlace(z, DftNormalization.STANDARD, TransformType.INVERSE);
        return a.with("by Fourier", a.unit(), z[0]);
    }

    @ParameterizedTest
    @EnumSource(Weighting.class)
    void everySampleOfBandLimitedNoiseIsTheSameByBothRoutes(Weighting weighting) {
        Channel a = burst(true);
        Channel time = weighting.apply(a);
        Channel frequency = byFourier(weighting, a);
        VibrationMetrics m = VibrationMetrics.of(a, time, new Window(0, 320));
        double worst = 0;
        for (int i = 0; i < a.size() - 20; i++) {
            worst = Math.max(worst, Math.abs(time.sample(i) - frequency.sample(i)));
        }
        assertThat(worst).isLessThan(1e-3 * m.peak());
        VibrationMetrics other = VibrationMetrics.of(a, frequency, new Window(0, 320));
        assertThat(other.rms() / m.rms()).isEqualTo(1, within(2e-4));
        assertThat(other.mtvv() / m.mtvv()).isEqualTo(1, within(2e-4));
        assertThat(other.vdv() / m.vdv()).isEqualTo(1, within(2e-4));
    }

    /** White up to half of the sampling rate: above 0.42 of it the recursion lets less through. Still the measures agree to 1 %. */
    @ParameterizedTest
    @EnumSource(
            value = Weighting.class,
            names = {"WK", "WD", "WB", "WC", "WE", "WF"})
    void measuresOfWhiteNoiseAgreeWithinOnePercent(Weighting weighting) {
        Channel a = burst(false);
        VibrationMetrics time = VibrationMetrics.of(a, weighting.apply(a), new Window(0, 320));
        VibrationMetrics other = VibrationMetrics.of(a, byFourier(weighting, a), new Window(0, 320));
        assertThat(other.rms() / time.rms()).isEqualTo(1, within(0.01));
        assertThat(other.vdv() / time.vdv()).isEqualTo(1, within(0.01));
    }

    /** A steady ride: a_w from the power spectrum and from one-third octaves with the factors at nominal centres (6.4.2). */
    @Test
    void rootMeanSquareFromSpectraIsThatFromTheTimeHistory() {
        Random random = new Random(6);
        double[] noise = random.doubles(1 << 17).map(u -> random.nextGaussian()).toArray();
        double fs = 500;
        Channel a = new AnalogueFilter(1, Butterworth.lowPass(4, 60)).apply(new Channel("ride", "m/s²", fs, 0, noise));
        PowerSpectrum g = WelchAccumulator.of(16_384, Detrend.MEAN, a).power(0);
        for (Weighting weighting : new Weighting[] {Weighting.WK, Weighting.WD, Weighting.WB}) {
            double time = VibrationMetrics.of(a, weighting.apply(a), new Window(3, 262))
                    .rms();
            assertThat(weighting.rms(g) / time).isEqualTo(1, within(0.02));
            double bands =
                    ThirdOctaveSpectrum.of(g, 0.1, 160).times(weighting::factor).total();
            assertThat(bands / time).isEqualTo(1, within(0.03));
        }
    }
}
