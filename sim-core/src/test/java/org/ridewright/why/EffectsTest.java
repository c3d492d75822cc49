package org.ridewright.why;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class EffectsTest {
    private static final double[] A = {3, -1, 0.5, 2};

    /** {@code 10 + Σ aᵢ}: ingredients that know nothing of each other. */
    private static double[] additive() {
        double[] y = new double[16];
        for (int s = 0; s < 16; s++) {
            y[s] = 10;
            for (int i = 0; i < 4; i++) {
                y[s] += (s & 1 << i) != 0 ? A[i] : 0;
            }
        }
        return y;
    }

    private static double[] random(int k) {
        return new Random(5).doubles(1 << k, -1, 1).toArray();
    }

    @Test
    void ingredientsThatAddUpContributeExactlyWhatEachDoesAlone() {
        Effects effects = new Effects(4, additive());
        for (int i = 0; i < 4; i++) {
            assertThat(effects.alone(i)).isEqualTo(A[i]);
            assertThat(effects.share(i)).isEqualTo(A[i], within(1e-14));
            for (int j = 0; j < 4; j++) {
                if (i != j) {
                    assertThat(effects.interaction(i, j)).isEqualTo(0, within(1e-14));
                }
            }
        }
    }

    @Test
    void sharesAddUpToWhatAllDoTogether() {
        for (int k = 1; k <= 7; k++) {
            Effects effects = new Effects(k, random(k));
            double sum = 0;
            for (int i = 0; i < k; i++) {
                sum += effects.share(i);
            }
            assertThat(sum).isEqualTo(effects.together(), within(1e-12));
        }
    }

    @Test
    void anInteractionIsThatOfThePairWhicheverIsNamedFirst() {
        Effects effects = new Effects(5, random(5));
        for (int i = 0; i < 5; i++) {
            for (int j = 0; j < i; j++) {
                assertThat(effects.interaction(i, j)).isEqualTo(effects.interaction(j, i));
            }
        }
    }

    /** {@code y = x₀ x₁} of two factors that are 1 or doubled: alone each adds 1, both 3, so they share 3 by halves. */
    @Test
    void twoThatMultiplyShareTheirInteractionByHalves() {
        Effects effects = new Effects(2, new double[] {1, 2, 2, 4});
        assertThat(effects.interaction(0, 1)).isEqualTo(1);
        assertThat(effects.share(0)).isEqualTo(1.5);
        assertThat(effects.share(1)).isEqualTo(1.5);
    }

    /** The glove game, whose shares are known: one left glove and two right ones, a pair is worth 1. Shapley: 2/3, 1/6, 1/6. */
    @Test
    void theSharesOfTheGloveGameAreThoseOfTheTextbook() {
        double[] y = new double[8];
        for (int s = 0; s < 8; s++) {
            y[s] = (s & 1) != 0 && (s & 6) != 0 ? 1 : 0;
        }
        Effects effects = new Effects(3, y);
        assertThat(effects.share(0)).isEqualTo(2 / 3.0, within(1e-15));
        assertThat(effects.share(1)).isEqualTo(1 / 6.0, within(1e-15));
        assertThat(effects.share(2)).isEqualTo(1 / 6.0, within(1e-15));
    }

    @Test
    void whatWasNotRiddenHasNoShare() {
        double[] y = additive();
        y[7] = Double.NaN;
        Effects effects = new Effects(4, y);
        assertThat(effects.share(0)).isNaN();
        assertThat(effects.alone(0)).isEqualTo(3);
    }

    @Test
    void aContributionIsToldOnlyWhereItsIntervalLeavesOutZero() {
        assertThat(new Contribution(-0.1, new double[] {-0.2, -0.15, -0.1}).verdict())
                .isEqualTo(Contribution.Verdict.LOWERS);
        assertThat(new Contribution(0.1, new double[] {0.2, 0.15, 0.1}).verdict())
                .isEqualTo(Contribution.Verdict.RAISES);
        assertThat(new Contribution(0.1, new double[] {-0.2, 0.15, 0.1}).verdict())
                .isEqualTo(Contribution.Verdict.UNTOLD);
        assertThat(new Contribution(0, new double[] {1e-4, -1e-4, 0}).verdict())
                .isEqualTo(Contribution.Verdict.NOTHING);
        assertThat(new Contribution(0.3, new double[] {Double.NaN, 0.2}).verdict())
                .isEqualTo(Contribution.Verdict.UNTOLD);
    }

    /** Of 20 draws the quantiles of definition 7 would hold 82 % of further draws. */
    @Test
    void anIntervalOfFewDrawsHoldsNineTenthsOfAllFurtherOnes() {
        Random random = new Random(3);
        long held = 0;
        int trials = 40_000;
        for (int i = 0; i < trials; i++) {
            double[] draws = random.doubles(20).toArray();
            var interval = new Contribution(0, draws).interval();
            double further = random.nextDouble();
            held += further > interval.low() && further < interval.high() ? 1 : 0;
        }
        assertThat(held / (double) trials).isEqualTo(0.9, within(0.006));
    }
}
