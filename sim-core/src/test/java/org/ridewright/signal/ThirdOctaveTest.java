package org.ridewright.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ridewright.comfort.Iso2631Tables;

class ThirdOctaveTest {
    static List<List<String>> printed() {
        return Iso2631Tables.rows("weightings.csv");
    }

    /** Nominal frequencies of ISO 266 as ISO 2631-1 prints them with their band numbers. */
    @ParameterizedTest
    @MethodSource("printed")
    void bandNumbersHaveTheNominalFrequenciesOfIso266(List<String> row) {
        ThirdOctave band = new ThirdOctave(Integer.parseInt(row.get(1)));
        double nominal = Double.parseDouble(row.get(2));
        assertThat(band.nominal()).isEqualTo(nominal, within(1e-12 * nominal));
        // rounded to a friendly number: never off by more than 1.1 %
        assertThat(band.exact() / nominal).isEqualTo(1, within(0.011));
        assertThat(ThirdOctave.containing(nominal)).isEqualTo(band);
        assertThat(ThirdOctave.containing(band.exact())).isEqualTo(band);
    }

    @Test
    void tenBandsAreADecadeAndNeighboursMeet() {
        for (int n = -20; n < 30; n++) {
            ThirdOctave band = new ThirdOctave(n);
            assertThat(new ThirdOctave(n + 10).exact() / band.exact()).isEqualTo(10, within(1e-12));
            assertThat(new ThirdOctave(n + 1).lower()).isEqualTo(band.upper());
            assertThat(band.lower() * band.upper()).isEqualTo(band.exact() * band.exact(), within(1e-9 * band.exact()));
        }
        assertThat(ThirdOctave.between(0.5, 80)).hasSize(23);
    }

    /** ∫ c f^−w df over the band: the spectra of roads. */
    @Property(tries = 50)
    void aPowerLawIsIntegratedExactly(@ForAll @DoubleRange(min = -2, max = 5) double slope) {
        ThirdOctave band = new ThirdOctave(-5);
        double a = band.lower();
        double b = band.upper();
        double exact = Math.abs(1 - slope) < 1e-9
                ? Math.log(b / a)
                : (Math.pow(b, 1 - slope) - Math.pow(a, 1 - slope)) / (1 - slope);
        assertThat(band.meanSquare(f -> Math.pow(f, -slope)) / exact).isEqualTo(1, within(1e-12));
    }

    @Test
    void squaresOfTheBandsAddUpToTheMeanSquareBetweenTheirEnds() {
        double[] x = new Random(2).doubles(1 << 15, -1, 1).toArray();
        PowerSpectrum g = WelchAccumulator.of(4096, Detrend.MEAN, new Channel("noise", "m/s²", 256, 0, x))
                .power(0);
        ThirdOctaveSpectrum bands = ThirdOctaveSpectrum.of(g, 0.5, 80);
        double between = g.meanSquare(
                ThirdOctave.containing(0.5).lower(), ThirdOctave.containing(80).upper());
        assertThat(bands.total()).isEqualTo(Math.sqrt(between), within(1e-12));
    }

    /** White noise of variance 1/3 at 256 Hz: G = (1/3)/128, and each band has its width of it. */
    @Test
    void whiteNoiseHasItsWidthInEveryBandWithinTheConfidence() {
        double[] x = new Random(4).doubles(1 << 19, -1, 1).toArray();
        PowerSpectrum g = WelchAccumulator.of(8192, Detrend.NONE, new Channel("noise", "m/s²", 256, 0, x))
                .power(0);
        ThirdOctaveSpectrum bands = ThirdOctaveSpectrum.of(g, 0.5, 80);
        int outside = 0;
        for (int i = 0; i < bands.bands().size(); i++) {
            double truth = bands.bands().get(i).width() / 3 / 128;
            Confidence c = bands.confidence(0.99, i);
            double square = bands.rms(i) * bands.rms(i);
            if (truth < c.lower() * square || truth > c.upper() * square) {
                outside++;
            }
        }
        // 1 % of 23 bands
        assertThat(outside).isLessThanOrEqualTo(1);
    }

    @Test
    void aToneIsInItsOwnBandWhereTheLinesAreFineEnough() {
        PowerSpectrum g = WelchAccumulator.of(2048, Detrend.MEAN, Sines.sine(256, 60, 2, 4))
                .power(0);
        ThirdOctaveSpectrum bands = ThirdOctaveSpectrum.of(g, 0.5, 80);
        int four = bands.bands().indexOf(ThirdOctave.containing(4));
        assertThat(bands.isResolved(four)).isTrue();
        assertThat(bands.rms(four)).isEqualTo(Math.sqrt(2), within(1e-6));
        // lines of 0.125 Hz: the band at 1.25 Hz is 0.29 Hz wide, the one at 1.6 Hz 0.37 Hz
        assertThat(bands.isResolved(bands.bands().indexOf(ThirdOctave.containing(1.25))))
                .isFalse();
        assertThat(bands.isResolved(bands.bands().indexOf(ThirdOctave.containing(1.6))))
                .isFalse();
        assertThat(bands.isResolved(bands.bands().indexOf(ThirdOctave.containing(2))))
                .isTrue();
        assertThat(bands.times(f -> f).rms(four)).isEqualTo(4 * Math.sqrt(2), within(1e-5));
    }

    /** ISO 2631-1 prints its factors at nominal frequencies: that of the band at 10^0.5 Hz at 3.15 Hz. */
    @Test
    void aWeightingIsAskedForAtNominalFrequenciesAlone() {
        PowerSpectrum g = WelchAccumulator.of(2048, Detrend.MEAN, Sines.sine(256, 60, 2, 3.1))
                .power(0);
        ThirdOctaveSpectrum bands = ThirdOctaveSpectrum.of(g, 0.5, 80);
        List<Double> asked = new ArrayList<>();
        bands.times(f -> {
            asked.add(f);
            return 1;
        });
        List<Double> nominal =
                printed().stream().map(row -> Double.parseDouble(row.get(2))).toList();
        assertThat(asked)
                .hasSize(23)
                .allSatisfy(f ->
                        assertThat(nominal).anySatisfy(n -> assertThat(f).isEqualTo(n, within(1e-12 * n))));
    }

    @Test
    void resolvedBandsBeginWhereThreeLinesFit() {
        PowerSpectrum g = WelchAccumulator.of(2048, Detrend.MEAN, Sines.sine(256, 60, 2, 4))
                .power(0);
        ThirdOctaveSpectrum bands = ThirdOctaveSpectrum.resolved(g, 0.5, 80).orElseThrow();
        assertThat(bands.bands().get(0).nominal()).isEqualTo(2, within(1e-12));
        assertThat(bands.isResolved(0)).isTrue();
        assertThat(bands.bands().get(bands.bands().size() - 1).nominal()).isEqualTo(80, within(1e-12));
        PowerSpectrum coarse =
                WelchAccumulator.of(4, Detrend.MEAN, Sines.sine(256, 60, 2, 4)).power(0);
        assertThat(ThirdOctaveSpectrum.resolved(coarse, 0.5, 80)).isEmpty();
    }

    @Test
    void bandsBeyondTheSamplingAreRefused() {
        PowerSpectrum g = WelchAccumulator.of(512, Detrend.MEAN, Sines.sine(100, 10, 1, 4))
                .power(0);
        assertThatThrownBy(() -> ThirdOctaveSpectrum.of(g, 1, 50)).hasMessageContaining("band of 50.0 Hz ends at 56");
        assertThatThrownBy(() -> ThirdOctave.containing(0)).hasMessageContaining("> 0 Hz");
    }
}
