package org.ridewright.roughness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ridewright.road.RoughnessClass;
import org.ridewright.road.RoughnessSpectrum;

class RoughnessIndexTest {
    private static double[] heights(int n, double spacing, DoubleUnaryOperator road) {
        double[] y = new double[n];
        for (int i = 0; i < n; i++) {
            y[i] = road.applyAsDouble(i * spacing);
        }
        return y;
    }

    private static double index(double spacing, double[] heights) {
        RoughnessIndex index = RoughnessIndex.standard(spacing);
        index.accept(heights, 0, heights.length);
        return index.value();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.05, 0.1, 0.25, 0.3, 1})
    void aSteadyClimbIsNoRoughness(double spacing) {
        double[] climb = heights((int) (100 / spacing), spacing, x -> 12 + 0.08 * x);
        assertThat(index(spacing, climb)).isLessThan(1e-12);
    }

    @Test
    void twiceTheHeightsAreTwiceTheRoughness() {
        Random random = new Random(1);
        double[] road = random.doubles(4000, -0.01, 0.01).toArray();
        double[] doubled = heights(4000, 1, x -> 2 * road[(int) x]);
        assertThat(index(0.1, doubled)).isCloseTo(2 * index(0.1, road), within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.005, 0.01, 0.05, 0.125, 0.25})
    void aSineHasItsGainTimesThatOfTheMovingAverageAtEverySpacing(double spacing) {
        // 2 m: gain 1.5335396 without the average (iri_gain.csv)
        double n = 0.5;
        double average = Math.sin(Math.PI * n * 0.25) / (Math.PI * n * 0.25);
        double expected = 4 * n * 1e-3 * 1.5335396 * average;
        double[] road = heights((int) (2000 / spacing), spacing, x -> 1e-3 * Math.sin(2 * Math.PI * n * x));
        // slopes held over one spacing: (π n Δ)²/6 of itself
        double held = Math.pow(Math.PI * n * spacing, 2);
        assertThat(index(spacing, road) / expected).isCloseTo(1, within(2e-3 + held));
    }

    @Test
    void theSlopeIsTakenOverTheWholeNumberOfSpacingsNearestToAQuarterMetre() {
        assertThat(RoughnessIndex.standard(0.25).base()).isEqualTo(0.25);
        assertThat(RoughnessIndex.standard(0.01).base()).isCloseTo(0.25, within(1e-12));
        assertThat(RoughnessIndex.standard(0.1).base()).isCloseTo(0.3, within(1e-12));
        assertThat(RoughnessIndex.standard(0.4).base()).isEqualTo(0.4);
    }

    @Test
    void theCarStartsOnTheMeanSlopeOfTheFirstElevenMetres() {
        // a climb that ends at 11 m: the car starts on it and leaves it, like any other
        double[] kinked = heights(4000, 0.05, x -> 0.02 * Math.min(x, 11));
        RoughnessIndex index = RoughnessIndex.unaveraged(0.05);
        index.accept(kinked, 0, (int) (11 / 0.05));
        assertThat(index.isKnown()).isFalse();
        assertThat(index.value()).isNaN();
        index.accept(kinked, 220, 221);
        assertThat(index.value()).isLessThan(1e-14);
        index.accept(kinked, 221, 400);
        assertThat(index.value()).isGreaterThan(1e-4);
    }

    @Test
    void windowsOfAnySizeGiveTheSameBits() {
        double[] road = new Random(7).doubles(30_000, -0.01, 0.01).toArray();
        RoughnessIndex whole = RoughnessIndex.standard(0.02);
        whole.accept(road, 0, road.length);
        RoughnessIndex pieces = RoughnessIndex.standard(0.02);
        Random sizes = new Random(3);
        for (int from = 0; from < road.length; ) {
            int to = Math.min(road.length, from + 1 + sizes.nextInt(700));
            pieces.accept(road, from, to);
            from = to;
        }
        assertThat(pieces.value()).isEqualTo(whole.value());
        assertThat(pieces.sections()).isEqualTo(whole.sections()).hasSize(6);
    }

    @Test
    void eachHundredMetresHaveAnIndexAndTheirMeanIsThatOfTheWhole() {
        double[] road = new Random(7).doubles(4001 + 2, -0.01, 0.01).toArray();
        RoughnessIndex index = RoughnessIndex.standard(0.1);
        index.accept(road, 0, road.length);
        assertThat(index.sections()).hasSize(4);
        double mean = index.sections().stream()
                .mapToDouble(Double::doubleValue)
                .average()
                .orElseThrow();
        assertThat(mean).isCloseTo(index.value(), within(1e-3 * mean));
    }

    /** σ of the suspension's motion is {@code ∫ |H|² Gs dn}; of a Gaussian the mean size is √(2/π) σ. */
    @Test
    void aGaussianRoadOfWhiteSlopeHasTheIndexOfItsSpectrum() {
        double spacing = 0.05;
        double density = RoughnessClass.C.geometricMean() * Math.pow(2 * Math.PI * RoughnessSpectrum.REFERENCE, 2);
        double deviation = Math.sqrt(density / (2 * spacing));
        Random random = new Random(42);
        RoughnessIndex index = RoughnessIndex.unaveraged(spacing);
        double[] height = new double[1];
        int n = 4_000_000;
        for (int i = 0; i < n; i++) {
            index.accept(height, 0, 1);
            height[0] += spacing * deviation * random.nextGaussian();
        }
        double variance = density * gainSquaredIntegral();
        assertThat(index.value()).isCloseTo(Math.sqrt(2 / Math.PI * variance), within(0.01 * index.value()));
    }

    /** ∫ |H|² dn from 0 to ∞ by the residues of the quarter car, worked out as a sum over fine steps. */
    private static double gainSquaredIntegral() {
        double sum = 0;
        double step = 1e-4;
        for (double n = step / 2; n < 10; n += step) {
            double w = 2 * Math.PI * n * 80 / 3.6;
            // suspension motion z_s − z_u over road height, of [−w² + iwc + k2][…] written out
            double re1 = GoldenCar.SPRING_RATE - w * w;
            double im1 = w * GoldenCar.DAMPING;
            double re2 = GoldenCar.SPRING_RATE + GoldenCar.TYRE_RATE - GoldenCar.MASS_RATIO * w * w;
            double re = re1 * re2 - im1 * im1 - (GoldenCar.SPRING_RATE * GoldenCar.SPRING_RATE - im1 * im1);
            double im = re1 * im1 + im1 * re2 - 2 * GoldenCar.SPRING_RATE * im1;
            double gain = GoldenCar.TYRE_RATE * w * w / Math.hypot(re, im);
            sum += gain * gain * step;
        }
        return sum;
    }

    @Test
    void aSpacingThatIsNoneIsRefused() {
        assertThatThrownBy(() -> RoughnessIndex.standard(0)).hasMessageContaining("must be > 0 m");
        assertThatThrownBy(() -> RoughnessIndex.standard(Double.NaN)).hasMessageContaining("must be > 0 m");
    }
}
