package org.ridewright.roughness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ridewright.road.RoughnessClass;
import org.ridewright.road.RoughnessSpectrum;

class StraightFitTest {
    private static final double SPACING = 0.02;

    /** Heights whose slope is white: {@code Gs = 2 σ² Δ}, so that Gd(n₀) = Gs/(2π n₀)². */
    private static HeightSpectrum whiteSlope(double atReference, int n, long seed) {
        double density = atReference * Math.pow(2 * Math.PI * RoughnessSpectrum.REFERENCE, 2);
        double deviation = Math.sqrt(density / (2 * SPACING));
        Random random = new Random(seed);
        HeightSpectrumAccumulator spectrum = new HeightSpectrumAccumulator(SPACING, n);
        double[] height = new double[1];
        for (int i = 0; i < n; i++) {
            spectrum.accept(height, 0, 1);
            height[0] += SPACING * deviation * random.nextGaussian();
        }
        return spectrum.result().orElseThrow();
    }

    @ParameterizedTest
    @EnumSource
    void aRoadOfAClassIsFoundToBeOfIt(RoughnessClass roadClass) {
        StraightFit fit = StraightFit.of(whiteSlope(roadClass.geometricMean(), 100_000, 5))
                .orElseThrow();
        assertThat(fit.roadClass()).isEqualTo(roadClass);
        assertThat(fit.confidence(roadClass)).isGreaterThan(0.999);
        assertThat(fit.from()).isCloseTo(0.011, within(1e-4));
        assertThat(fit.to()).isCloseTo(2.83, within(2e-3));
    }

    @Test
    void theStatedConfidenceIsKeptOverManyRoads() {
        int held = 0;
        int wavinessHeld = 0;
        int roads = 200;
        double sum = 0;
        for (int seed = 0; seed < roads; seed++) {
            StraightFit fit =
                    StraightFit.of(whiteSlope(256e-6, 50_000, 100 + seed)).orElseThrow();
            held += fit.lower() <= 256e-6 && 256e-6 <= fit.upper() ? 1 : 0;
            wavinessHeld += Math.abs(fit.waviness() - 2) <= 1.96 * fit.wavinessError() ? 1 : 0;
            sum += Math.log(fit.atReference() / 256e-6);
        }
        // 95 % of 200 with five standard deviations of a count
        assertThat(held).isGreaterThanOrEqualTo(190 - 16);
        assertThat(wavinessHeld).isGreaterThanOrEqualTo(190 - 16);
        // without bias: a road's standard error is about 0.05
        assertThat(sum / roads).isCloseTo(0, within(0.02));
    }

    /** Slopes filtered once, {@code s(i) = ρ s(i−1) + e(i)} with ρ near 1, fall like n^−2: heights like n^−4. */
    @Test
    void aSteeperRoadShowsInItsWaviness() {
        int n = 200_000;
        Random random = new Random(11);
        HeightSpectrumAccumulator spectrum = new HeightSpectrumAccumulator(SPACING, n);
        double[] height = new double[1];
        double slope = 0;
        for (int i = 0; i < n; i++) {
            spectrum.accept(height, 0, 1);
            slope = 0.9999 * slope + 1e-4 * random.nextGaussian();
            height[0] += SPACING * slope;
        }
        StraightFit fit = StraightFit.of(spectrum.result().orElseThrow()).orElseThrow();
        assertThat(fit.waviness()).isCloseTo(4, within(0.1));
        assertThat(fit.wavinessError()).isLessThan(0.1);
    }

    @Test
    void aSineHasItsMeanSquareInItsBandAndNowhereElse() {
        int n = 60_000;
        HeightSpectrumAccumulator spectrum = new HeightSpectrumAccumulator(SPACING, n);
        double[] heights = new double[n];
        for (int i = 0; i < n; i++) {
            heights[i] = 3 + 0.01 * i * SPACING + 2e-3 * Math.sin(2 * Math.PI * 0.5 * i * SPACING);
        }
        spectrum.accept(heights, 0, n);
        HeightSpectrum found = spectrum.result().orElseThrow();
        double slope = found.rmsSlope(0.4, 0.6);
        assertThat(slope).isCloseTo(2e-3 * 2 * Math.PI * 0.5 / Math.sqrt(2), within(1e-6));
        assertThat(found.rmsSlope(0.6, 5)).isLessThan(1e-3 * slope);
        assertThat(found.rmsSlope(0.01, 0.4)).isLessThan(1e-3 * slope);
    }

    @ParameterizedTest
    @ValueSource(ints = {10, 25})
    void aRoadTooShortToShowTheReferenceWavenumberHasNoClass(int metres) {
        HeightSpectrumAccumulator spectrum = new HeightSpectrumAccumulator(0.05, 20L * metres);
        spectrum.accept(new Random(1).doubles(20L * metres).toArray(), 0, 20 * metres);
        assertThat(spectrum.result().flatMap(StraightFit::of)).isEmpty();
    }

    @Test
    void aLevelRoadHasNoClass() {
        HeightSpectrumAccumulator spectrum = new HeightSpectrumAccumulator(0.05, 20_000);
        spectrum.accept(new double[20_000], 0, 20_000);
        assertThat(StraightFit.of(spectrum.result().orElseThrow())).isEmpty();
    }

    @Test
    void smoothingBandsFollowOneAnotherWithoutGapOverTheRangeOfTheFit() {
        List<Band> bands = Band.smoothing(Band.FIT_FROM, Band.FIT_TO);
        assertThat(bands).hasSize(2 + 8 + 40);
        assertThat(bands.get(0).from()).isCloseTo(Band.FIT_FROM, within(1e-12));
        assertThat(bands.get(49).to()).isCloseTo(Band.FIT_TO, within(1e-12));
        for (int i = 1; i < bands.size(); i++) {
            assertThat(bands.get(i).from()).isEqualTo(bands.get(i - 1).to());
        }
        assertThat(Band.smoothing(0.003, 3).get(0).centre()).isCloseTo(Math.pow(2, -7), within(1e-9));
    }

    @Test
    void overlappingOctavesLieWithinTheirEndsAThirdOfAnOctaveApart() {
        List<Band> bands = Band.overlapping(0.05, 20);
        assertThat(bands.get(0).from()).isGreaterThanOrEqualTo(0.05).isLessThan(0.05 * 1.26);
        assertThat(bands.get(bands.size() - 1).to()).isLessThanOrEqualTo(20).isGreaterThan(20 / 1.26);
        for (int i = 1; i < bands.size(); i++) {
            assertThat(bands.get(i).octaves()).isCloseTo(1, within(1e-12));
            assertThat(bands.get(i).centre() / bands.get(i - 1).centre()).isCloseTo(Math.cbrt(2), within(1e-12));
        }
    }
}
