package org.ridewright.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BandLimitedFitTest {
    private static final double RATE = 100;

    @Test
    void evenSamplesComeBackAsTheyAre() {
        Random random = new Random(1);
        double[] t = new double[9000];
        double[] y = new double[t.length];
        for (int i = 0; i < t.length; i++) {
            t[i] = i / RATE;
            y[i] = random.nextGaussian();
        }

        double[] u = BandLimitedFit.uniform(t, y, RATE);

        assertThat(u).hasSameSizeAs(y);
        for (int i = 0; i < y.length; i++) {
            assertThat(u[i]).isCloseTo(y[i], within(5e-4));
        }
    }

    /** Instants off by up to a third of an interval; the sine lies at up to 0.42 of the rate. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 5, 12, 25, 33, 42})
    void aSineSampledUnevenlyComesBackWithin01Percent(double frequency) {
        Channel u = uneven(0.33, frequency, t -> Math.sin(2 * Math.PI * frequency * t));

        Complex gain = Sines.gain(u, frequency, 100, u.size() - 100);

        assertThat(gain.subtract(Complex.ONE).norm()).isLessThan(1e-3);
        for (int i = 100; i < u.size() - 100; i++) {
            assertThat(u.sample(i)).isCloseTo(Math.sin(2 * Math.PI * frequency * u.time(i)), within(0.01));
        }
    }

    /** Straight lines, the usual way, would lose this much: the bound of the test above can fail. */
    @Test
    void straightLinesWouldNotDo() {
        double frequency = 33;
        double loss = Math.pow(Math.sin(Math.PI * frequency / RATE) / (Math.PI * frequency / RATE), 2);

        assertThat(loss).isLessThan(0.7);
    }

    @Test
    void gravityComesBackExactly() {
        Channel u = uneven(0.33, 0, t -> 9.80665);

        for (int i = 0; i < u.size(); i++) {
            assertThat(u.sample(i)).isCloseTo(9.80665, within(1e-9));
        }
    }

    /** One of even samples is missing: {@code (2 sin πν)⁸/70} of the sine is wrong there, at whatever phase. */
    @ParameterizedTest
    @ValueSource(doubles = {5, 10, 15, 20})
    void aMissingSampleIsSpannedAsItsFormulaSays(double frequency) {
        double bound = 1.3 * Math.pow(2 * Math.sin(Math.PI * frequency / RATE), 8) / 70 + 5e-4;
        for (double phase = 0; phase < Math.PI; phase += 0.3) {
            double[] t = new double[999];
            double[] y = new double[999];
            for (int i = 0; i < t.length; i++) {
                t[i] = (i < 500 ? i : i + 1) / RATE;
                y[i] = Math.sin(2 * Math.PI * frequency * t[i] + phase);
            }

            double[] u = BandLimitedFit.uniform(t, y, RATE);

            assertThat(u).hasSize(1000);
            assertThat(u[500]).isCloseTo(Math.sin(2 * Math.PI * frequency * 5 + phase), within(bound));
        }
    }

    @Test
    void instantsThatDoNotRiseAreRefused() {
        assertThatThrownBy(() -> BandLimitedFit.uniform(new double[] {0, 1, 1}, new double[] {1, 2, 3}, 1))
                .hasMessageContaining("instants must rise");
    }

    private static Channel uneven(double spread, double seed, DoubleUnaryOperator f) {
        Random random = new Random((long) (100 * seed));
        double[] t = new double[12_000];
        double[] y = new double[t.length];
        for (int i = 0; i < t.length; i++) {
            t[i] = (i + (i == 0 ? 0 : spread * (2 * random.nextDouble() - 1))) / RATE;
            y[i] = f.applyAsDouble(t[i]);
        }
        return new Channel("fit", "m/s²", RATE, 0, BandLimitedFit.uniform(t, y, RATE));
    }

    private static org.assertj.core.data.Offset<Double> within(double bound) {
        return org.assertj.core.data.Offset.offset(bound);
    }
}
