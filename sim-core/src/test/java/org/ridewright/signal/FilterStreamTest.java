package org.ridewright.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FilterStreamTest {
    private static final AnalogueFilter BAND = new AnalogueFilter(
            0.8,
            List.of(
                    FilterSection.highPass(0.5, 0.7),
                    FilterSection.lowPass(40, 0.7),
                    FilterSection.step(2, 0.9, 3, 1)));

    private static List<Double> run(FilterStream stream, double[] samples) {
        List<Double> out = new ArrayList<>();
        for (double sample : samples) {
            if (stream.accept(sample)) {
                out.add(stream.output());
            }
        }
        while (stream.drain()) {
            out.add(stream.output());
        }
        return out;
    }

    /** What a channel's filtering was before it went through the stream: padded with zeros and the last value. */
    private static double[] inOnePiece(SampledFilter filter, double[] samples) {
        int before = InterpolationKernel.HALF_WIDTH - 1;
        double[] u = new double[samples.length + InterpolationKernel.TAPS];
        Arrays.fill(u, samples[samples.length - 1]);
        Arrays.fill(u, 0, before, 0);
        System.arraycopy(samples, 0, u, before, samples.length);
        double[] x = new double[6];
        double[] next = new double[6];
        double[] y = new double[samples.length];
        for (int n = 0; n < y.length; n++) {
            y[n] = filter.read(u[n + before], x);
            filter.advance(u, n, x, next);
            System.arraycopy(next, 0, x, 0, 6);
        }
        return y;
    }

    @Property(tries = 60)
    void aStreamGivesTheSameNumbersBitForBit(@ForAll long seed, @ForAll @IntRange(min = 1, max = 200) int length) {
        double[] u = new Random(seed).doubles(length, -3, 3).toArray();
        SampledFilter filter = BAND.at(100);
        double[] whole = inOnePiece(filter, u);
        assertThat(run(filter.stream(), u).stream().mapToDouble(v -> v).toArray())
                .containsExactly(whole);
        assertThat(filter.apply(new Channel("noise", "1", 100, 0, u)).samples()).containsExactly(whole);
    }

    @Test
    void outputsComeTheStatedNumberOfSamplesLate() {
        FilterStream stream = BAND.at(100).stream();
        for (int i = 0; i < FilterStream.DELAY; i++) {
            assertThat(stream.accept(1)).isFalse();
        }
        assertThat(stream.accept(1)).isTrue();
        assertThat(stream.given()).isEqualTo(1);
        for (int i = 0; i < FilterStream.DELAY; i++) {
            assertThat(stream.drain()).isTrue();
        }
        assertThat(stream.drain()).isFalse();
        assertThat(stream.given()).isEqualTo(FilterStream.DELAY + 1);
        assertThatThrownBy(() -> stream.accept(1)).hasMessageContaining("last sample");
        assertThat(BAND.at(100).stream().drain()).isFalse();
    }

    @Test
    void aStreamAfterAConstantKnowsNoStep() {
        double[] constant = new double[300];
        Arrays.fill(constant, 9.81);
        // the high pass lets nothing of it through; a stream from rest would see a step of 9.81
        for (double y : run(BAND.at(100).streamAfter(9.81), constant)) {
            assertThat(y).isEqualTo(0, within(1e-11));
        }
        AnalogueFilter low = new AnalogueFilter(2, List.of(FilterSection.lowPass(3, 2), FilterSection.lowPass(5, 1)));
        for (double y : run(low.at(100).streamAfter(9.81), constant)) {
            assertThat(y).isEqualTo(2 * 9.81, within(1e-10));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {50, 333, 20_000})
    void theStatedGainIsWhatASineReceives(double fs) {
        SampledFilter filter = BAND.at(fs);
        for (double ratio : new double[] {0.004, 0.1, 0.3, 0.44}) {
            double f = ratio * fs;
            Channel y = filter.apply(Sines.sine(fs, 8 + 300 / fs, 1, f));
            Complex read = Sines.gain(y, f, (int) (8 * fs), y.size() - 20);
            assertThat(read.subtract(filter.response(f)).norm())
                    .isLessThan(1e-6 * filter.response(f).norm() + 1e-9);
        }
        assertThat(BAND.at(fs).response(0).norm()).isLessThan(1e-9);
    }

    @Test
    void theTwoSidesOfAButterworthCrossingShareThePower() {
        for (int order : new int[] {2, 4, 8}) {
            AnalogueFilter low = new AnalogueFilter(1, Butterworth.lowPass(order, 3));
            AnalogueFilter high = new AnalogueFilter(1, Butterworth.highPass(order, 3));
            AnalogueFilter rate = new AnalogueFilter(1, Butterworth.derivative(order, 3));
            for (double f = 0.01; f < 1000; f *= 1.7) {
                double l = low.magnitude(f);
                double h = high.magnitude(f);
                assertThat(l * l + h * h).isEqualTo(1, within(1e-12));
                assertThat(l * l).isEqualTo(1 / (1 + Math.pow(f / 3, 2 * order)), within(1e-12));
                assertThat(rate.magnitude(f)).isEqualTo(2 * Math.PI * f * l, within(1e-9));
            }
        }
        assertThatThrownBy(() -> Butterworth.lowPass(3, 1)).hasMessageContaining("even");
    }
}
