package org.ridewright.math;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** An interval of so many draws holds the next draw as often as it says. */
class QuantilesTest {
    private static final int TRIALS = 40_000;

    private static double covered(int n, ToDoubleFunction<Random> draw) {
        Random chance = new Random(n);
        int within = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            double[] sample = new double[n];
            for (int i = 0; i < n; i++) {
                sample[i] = draw.applyAsDouble(chance);
            }
            double[] sorted = Quantiles.sorted(sample);
            double next = draw.applyAsDouble(chance);
            within += next >= Quantiles.low(sorted) && next <= Quantiles.high(sorted) ? 1 : 0;
        }
        return within / (double) TRIALS;
    }

    /** Share of 40 000 trials: standard deviation 0.0015. */
    @ParameterizedTest
    @ValueSource(ints = {2, 4, 8, 16, 19, 24, 32, 64, 128})
    void theNextDrawLiesWithinAsOftenAsIsSaid(int n) {
        assertThat(covered(n, Random::nextDouble)).isEqualTo(Quantiles.coverage(n), within(0.006));
    }

    /** Between two ranks the numbers in between are straight, the distribution is not: off by a little where few draws bound a long tail. */
    @ParameterizedTest
    @ValueSource(ints = {19, 32, 64, 128})
    void soItIsOfDrawsOfOtherDistributions(int n) {
        assertThat(covered(n, Random::nextGaussian)).isEqualTo(0.9, within(0.01));
        assertThat(covered(n, chance -> Math.exp(chance.nextGaussian()))).isEqualTo(0.9, within(0.01));
    }

    @Test
    void nineteenAreTheFewestOfWhichAnIntervalHoldsNineTenths() {
        assertThat(Quantiles.coverage(Quantiles.FEWEST)).isEqualTo(0.9, within(1e-12));
        assertThat(Quantiles.coverage(Quantiles.FEWEST - 1)).isLessThan(0.9);
    }

    @Test
    void theKthOfNStandsAtItsShare() {
        double[] sorted = {1, 2, 4, 8, 16, 32, 64, 128, 256};
        for (int k = 1; k <= 9; k++) {
            assertThat(Quantiles.of(sorted, k / 10.0)).isEqualTo(sorted[k - 1], within(1e-12 * sorted[k - 1]));
        }
        assertThat(Quantiles.of(sorted, 0.25)).isEqualTo(3, within(1e-12));
        assertThat(Quantiles.low(sorted)).isEqualTo(1);
        assertThat(Quantiles.high(sorted)).isEqualTo(256);
    }

    @Test
    void whatIsBeyondEveryDrawStaysInfinite() {
        double[] sorted = {1, 2, 3, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};

        assertThat(Quantiles.median(sorted)).isEqualTo(3);
        assertThat(Quantiles.high(sorted)).isInfinite();
    }

    @Test
    void ofNothingThereIsNoQuantile() {
        assertThat(Quantiles.median(new double[0])).isNaN();
        assertThat(Quantiles.median(new double[] {5})).isEqualTo(5);
    }
}
