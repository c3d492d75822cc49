package org.ridewright.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WelchAccumulatorTest {
    private static double[] noise(long seed, int n) {
        return new Random(seed).doubles(n, -1, 1).toArray();
    }

    private static Channel channel(double fs, double[] samples) {
        return new Channel("noise", "m/s²", fs, 0, samples);
    }

    private static PowerSpectrum spectrum(double fs, int segment, double... samples) {
        return WelchAccumulator.of(segment, Detrend.NONE, channel(fs, samples)).power(0);
    }

    /** Parseval: the lines hold the mean square of the samples, each weighted by the windows that lie over it. */
    @Property(tries = 40)
    void linesAddUpToTheMeanSquareUnderTheWindows(
            @ForAll long seed, @ForAll @IntRange(min = 2, max = 8) int log, @ForAll @IntRange(max = 300) int more) {
        int segment = 1 << log;
        double[] x = noise(seed, segment + more);
        double sum = 0;
        double weight = 0;
        for (int from = 0; from + segment <= x.length; from += segment / 2) {
            for (int n = 0; n < segment; n++) {
                double w = 0.5 * (1 - Math.cos(2 * Math.PI * n / segment));
                sum += w * w * x[from + n] * x[from + n];
                weight += w * w;
            }
        }
        assertThat(spectrum(37, segment, x).meanSquare()).isEqualTo(sum / weight, within(1e-12));
    }

    @Property(tries = 20)
    void bandsThatMeetAddUpToTheWhole(
            @ForAll long seed,
            @ForAll @DoubleRange(min = 0, max = 50) double one,
            @ForAll @DoubleRange(min = 0, max = 50) double two) {
        PowerSpectrum g = spectrum(100, 64, noise(seed, 500));
        double a = Math.min(one, two);
        double b = Math.max(one, two);
        assertThat(g.meanSquare(0, a) + g.meanSquare(a, b) + g.meanSquare(b, 50))
                .isEqualTo(g.meanSquare(), within(1e-12));
        assertThat(g.meanSquare(b, 1e6)).isEqualTo(g.meanSquare(b, 50), within(1e-15));
    }

    @Property(tries = 20)
    void twiceTheMotionHasFourTimesTheDensity(
            @ForAll long seed, @ForAll @DoubleRange(min = -8, max = 8) double factor) {
        double[] x = noise(seed, 300);
        double[] y = Arrays.stream(x).map(v -> factor * v).toArray();
        PowerSpectrum gx = spectrum(50, 64, x);
        PowerSpectrum gy = spectrum(50, 64, y);
        for (int k = 0; k < gx.size(); k++) {
            assertThat(gy.density(k)).isEqualTo(factor * factor * gx.density(k), within(1e-12 * gx.density(k) * 64));
        }
    }

    /** Tones four lines apart or more share no line, whatever their phases: a later beginning changes no density. */
    @Property(tries = 20)
    void aSteadyMotionHasTheSameSpectrumWheneverLookedAt(
            @ForAll @DoubleRange(min = 0, max = 1) double shift, @ForAll long seed) {
        double[] phase = noise(seed, 8);
        double fs = 128;
        PowerSpectrum early = tones(fs, 0, phase);
        PowerSpectrum late = tones(fs, shift, phase);
        for (int k = 0; k < early.size(); k++) {
            assertThat(late.density(k)).isEqualTo(early.density(k), within(1e-10));
        }
    }

    private static PowerSpectrum tones(double fs, double from, double[] phase) {
        double[] x = new double[1024];
        for (int i = 0; i < x.length; i++) {
            for (int j = 0; j < phase.length; j++) {
                // lines of 0.5 Hz
                x[i] += Math.cos(2 * Math.PI * (3 + 4 * j) * (i / fs + from) + Math.PI * phase[j]);
            }
        }
        return spectrum(fs, 256, x);
    }

    @Test
    void aSineOnALineIsSpreadOverThreeWithItsWholeMeanSquare() {
        PowerSpectrum g = WelchAccumulator.of(512, Detrend.NONE, Sines.sine(256, 20, 3, 20))
                .power(0);
        assertThat(g.resolution()).isEqualTo(0.5);
        assertThat(g.meanSquare(19.25, 20.75)).isEqualTo(4.5, within(1e-10));
        assertThat(g.density(40) * 0.5).isEqualTo(4.5 * 2 / 3, within(1e-10));
        assertThat(g.density(39) * 0.5).isEqualTo(4.5 / 6, within(1e-10));
    }

    @Test
    void aSineBetweenLinesKeepsItsMeanSquare() {
        PowerSpectrum g = WelchAccumulator.of(512, Detrend.NONE, Sines.sine(256, 60, 3, 20.17))
                .power(0);
        assertThat(g.meanSquare(17, 23)).isEqualTo(4.5, within(1e-3 * 4.5));
    }

    @ParameterizedTest
    @EnumSource(Detrend.class)
    void whatIsTakenOffIsGoneAndTheRestStays(Detrend detrend) {
        Channel drifting = Sines.sampled(64, 64, t -> 9.81 + 0.1 * t + Math.sin(2 * Math.PI * 8 * t));
        PowerSpectrum g = WelchAccumulator.of(512, detrend, drifting).power(0);
        assertThat(g.meanSquare(7, 9)).isEqualTo(0.5, within(2e-3));
        double slow = g.meanSquare(0, 4);
        switch (detrend) {
            case NONE -> assertThat(slow).isGreaterThan(96);
            // a ramp of 0.1 · 8 s has the variance 0.8²/12, less than half of it under Hann's window
            case MEAN -> assertThat(slow).isBetween(0.005, 0.8 * 0.8 / 12);
            case LINE -> assertThat(slow).isLessThan(1e-4);
        }
    }

    @Test
    void whiteNoiseIsFlatFromEndToEndWithinItsConfidence() {
        double fs = 200;
        int n = 1 << 17;
        Random random = new Random(5);
        WelchAccumulator welch = new WelchAccumulator(fs, 256, 1, Detrend.NONE);
        for (int i = 0; i < n; i++) {
            welch.accept(random.nextGaussian());
        }
        PowerSpectrum g = welch.result().power(0);
        assertThat(g.averages()).isEqualTo(1023);
        Confidence c = g.confidence(0.95);
        int outside = 0;
        for (int k = 1; k < g.size() - 1; k++) {
            double truth = 2 / fs;
            if (truth < c.lower() * g.density(k) || truth > c.upper() * g.density(k)) {
                outside++;
            }
        }
        // 5 % of 127 lines are 6; more than 15 have a probability of about 1e-3
        assertThat(outside).isBetween(1, 15);
        // the two ends have twice the variance
        assertThat(g.density(0)).isEqualTo(2 / fs, within(0.15 * 2 / fs));
        assertThat(g.density(g.size() - 1)).isEqualTo(2 / fs, within(0.15 * 2 / fs));
    }

    /** Relative variance of an estimate is 2/ν: what 3000 spectra of five segments show. */
    @Test
    void degreesOfFreedomAreThoseOfTheScatterOfManySpectra() {
        int trials = 3000;
        Random random = new Random(11);
        double[] line = new double[trials];
        double[] band = new double[trials];
        PowerSpectrum g = null;
        for (int i = 0; i < trials; i++) {
            double[] x = random.doubles(192).map(u -> random.nextGaussian()).toArray();
            g = spectrum(64, 64, x);
            line[i] = g.density(10);
            band[i] = g.meanSquare(7.5, 15.5);
        }
        assertThat(g.averages()).isEqualTo(5);
        assertThat(freedom(line)).isEqualTo(g.degreesOfFreedom(), within(0.08 * g.degreesOfFreedom()));
        double expected = g.degreesOfFreedom(7.5, 15.5);
        assertThat(freedom(band)).isEqualTo(expected, within(0.12 * expected));
    }

    private static double freedom(double[] values) {
        double mean = Arrays.stream(values).average().orElseThrow();
        double square = Arrays.stream(values)
                .map(v -> (v - mean) * (v - mean))
                .average()
                .orElseThrow();
        return 2 * mean * mean / square;
    }

    /** y_n = x_n/2 + x_{n−3}/4 + noise of a known share. */
    @Test
    void gainAndCoherenceAreThoseOfTheSystemAndItsNoise() {
        int n = 1 << 16;
        Random random = new Random(3);
        double[] x = new double[n];
        double[] y = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = random.nextGaussian();
            y[i] = 0.5 * x[i] + (i >= 3 ? 0.25 * x[i - 3] : 0) + 0.3 * random.nextGaussian();
        }
        WelchSpectra spectra = WelchAccumulator.of(256, Detrend.NONE, channel(100, x), channel(100, y));
        TransferFunction h = spectra.transfer(0, 1);
        TransferFunction back = spectra.transfer(1, 0);
        for (int k = 4; k < h.size() - 4; k += 5) {
            double w = 2 * Math.PI * h.frequency(k) / 100;
            Complex exact = new Complex(0.5 + 0.25 * Math.cos(3 * w), -0.25 * Math.sin(3 * w));
            double error = h.gain(k).subtract(exact).norm() / exact.norm();
            assertThat(error).isLessThan(4.5 * h.relativeError(k));
            double power = exact.norm() * exact.norm();
            assertThat(h.coherence(k)).isEqualTo(power / (power + 0.09), within(0.06));
            // the same pair read the other way round
            assertThat(back.crossDensity(k)).isEqualTo(h.crossDensity(k).conjugate());
            assertThat(back.coherence(k)).isEqualTo(h.coherence(k), within(1e-12));
        }
    }

    /** White noise that comes a tenth of a segment later: Hann's window meets itself to 1 − (2π²/3)/100 or so. */
    @Test
    void aDelayLowersTheGainByWhatTheWindowLosesOfItself() {
        int late = 26;
        double[] x = new Random(8).doubles((1 << 17) + late, -1, 1).toArray();
        Channel early = channel(100, Arrays.copyOfRange(x, late, x.length));
        Channel delayed = channel(100, Arrays.copyOf(x, x.length - late));
        TransferFunction h =
                WelchAccumulator.of(256, Detrend.NONE, early, delayed).transfer(0, 1);
        double sum = 0;
        double phase = 0;
        for (int k = 1; k < h.size() - 1; k++) {
            Complex advanced = h.gain(k)
                    .multiply(Complex.I
                            .multiply(2 * Math.PI * h.frequency(k) * late / 100)
                            .exp());
            sum += advanced.getRealPart();
            phase += advanced.getImaginaryPart();
        }
        double delta = late / 256.0;
        double own = 1 - 2 * Math.PI * Math.PI / 3 * delta * delta;
        assertThat(sum / (h.size() - 2)).isEqualTo(own, within(0.01));
        assertThat(phase / (h.size() - 2)).isEqualTo(0, within(0.01));
    }

    @Test
    void aSignalFollowsItselfExactly() {
        WelchSpectra spectra = WelchAccumulator.of(64, Detrend.NONE, channel(100, noise(1, 400)));
        assertThat(spectra.transfer(0, 0).gain(5)).isEqualTo(Complex.ONE);
        assertThat(spectra.transfer(0, 0).coherence(5)).isEqualTo(1, within(1e-12));
    }

    /** In 4000 pairs of unrelated signals one in twenty passes the threshold for 95 %. */
    @Test
    void unrelatedSignalsRarelyPassTheCoherenceThreshold() {
        Random random = new Random(17);
        int passed = 0;
        int lines = 0;
        for (int trial = 0; trial < 400; trial++) {
            double[] x = random.doubles(64 * 6).map(u -> random.nextGaussian()).toArray();
            double[] y = random.doubles(64 * 6).map(u -> random.nextGaussian()).toArray();
            TransferFunction h = WelchAccumulator.of(64, Detrend.NONE, channel(1, x), channel(1, y))
                    .transfer(0, 1);
            for (int k = 2; k < 31; k += 3) {
                passed += h.coherence(k) > h.coherenceThreshold(0.95) ? 1 : 0;
                lines++;
            }
        }
        assertThat((double) passed / lines).isEqualTo(0.05, within(0.015));
    }

    @Test
    void resultsMayBeTakenOnTheWayAndTheRestBelongsToTheNext() {
        double[] x = noise(9, 640);
        WelchAccumulator welch = new WelchAccumulator(100, 128, 1, Detrend.MEAN);
        for (int i = 0; i < 300; i++) {
            welch.accept(x[i]);
        }
        double[] early = welch.result().power(0).densities();
        for (int i = 300; i < x.length; i++) {
            welch.accept(x[i]);
        }
        assertThat(early)
                .containsExactly(WelchAccumulator.of(128, Detrend.MEAN, channel(100, Arrays.copyOf(x, 300)))
                        .power(0)
                        .densities());
        assertThat(welch.result().power(0).densities())
                .containsExactly(WelchAccumulator.of(128, Detrend.MEAN, channel(100, x))
                        .power(0)
                        .densities());
    }

    @Test
    void filteringASpectrumIsFilteringTheSignal() {
        Channel x = channel(500, noise(21, 1 << 16));
        AnalogueFilter filter = new AnalogueFilter(1, List.of(FilterSection.lowPass(20, 0.8)));
        double rms = Math.sqrt(WelchAccumulator.of(2048, Detrend.NONE, filter.apply(x))
                .power(0)
                .meanSquare());
        PowerSpectrum raw = WelchAccumulator.of(2048, Detrend.NONE, x).power(0);
        assertThat(Math.sqrt(raw.filtered(filter::magnitude).meanSquare())).isEqualTo(rms, within(5e-3 * rms));
    }

    @ParameterizedTest
    @EnumSource(Detrend.class)
    void takingSamplesAllocatesNothing(Detrend detrend) {
        WelchAccumulator welch = new WelchAccumulator(100, 256, 2, detrend);
        double[] sample = {1, 2};
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long id = Thread.currentThread().getId();
        long before = 0;
        for (int i = 0; i < 60_000; i++) {
            if (i == 40_000) {
                before = threads.getThreadAllocatedBytes(id);
            }
            sample[0] = i % 17;
            welch.accept(sample);
        }
        assertThat(threads.getThreadAllocatedBytes(id) - before).isLessThan(4096);
    }

    @Test
    void segmentsAreTheSmallestThatResolve() {
        assertThat(WelchAccumulator.segmentFor(2000, 0.1)).isEqualTo(32768);
        assertThat(WelchAccumulator.segmentFor(128, 0.125)).isEqualTo(1024);
        assertThat(WelchAccumulator.segmentFor(10, 100)).isEqualTo(4);
    }

    @Test
    void whatCannotBeEstimatedIsRefused() {
        assertThatThrownBy(() -> new WelchAccumulator(100, 100, 1, Detrend.NONE))
                .hasMessageContaining("power of two");
        assertThatThrownBy(() -> new WelchAccumulator(0, 64, 1, Detrend.NONE)).hasMessageContaining("> 0 Hz");
        assertThatThrownBy(() -> new WelchAccumulator(100, 64, 2, Detrend.NONE).accept(1))
                .hasMessageContaining("need 2 samples, got 1");
        assertThatThrownBy(() -> new WelchAccumulator(100, 64, 1, Detrend.NONE).accept(Double.NaN))
                .hasMessageContaining("must be finite");
        assertThatThrownBy(() -> new WelchAccumulator(100, 64, 1, Detrend.NONE).result())
                .hasMessageContaining("at least one segment of 64 samples");
        assertThatThrownBy(() -> spectrum(10, 64, new double[63])).hasMessageContaining("got 63");
        assertThatThrownBy(() -> WelchAccumulator.segmentFor(100, 0)).hasMessageContaining("resolution must be");
    }
}
