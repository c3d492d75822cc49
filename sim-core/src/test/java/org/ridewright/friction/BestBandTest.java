package org.ridewright.friction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ridewright.friction.BestBand.Verdict;

class BestBandTest {
    private static final double[] FACTORS = {0, 0.5, 1, 2};

    private static BestBand band(double[]... draws) {
        return BestBand.of(new TradeLine(Criterion.WEIGHTED, "gravel", 3, FACTORS, draws));
    }

    private static double[][] same(int count, double... values) {
        double[][] draws = new double[count][];
        Arrays.fill(draws, values);
        return draws;
    }

    @Test
    void theBandEndsWhereStraightLinesPassOneAndATwentiethOfTheLeast() {
        BestBand band = band(same(10, 2, 1.2, 1, 1.5));
        assertThat(band.best().median()).isEqualTo(1);
        assertThat(band.from().median()).isCloseTo(1 - 0.5 * 0.05 / 0.2, within(1e-12));
        assertThat(band.to().median()).isCloseTo(1 + 0.05 / 0.5, within(1e-12));
        assertThat(band.verdict()).isEqualTo(Verdict.BETWEEN);
        assertThat(band.draws(1)).isEqualTo(10);
        assertThat(band.draws(0.5)).isZero();
    }

    @Test
    void whatHardlyChangesHasNoBest() {
        assertThat(band(same(10, 1.04, 1, 1.01, 1.03)).verdict()).isEqualTo(Verdict.FLAT);
    }

    @Test
    void whatOnlyRisesIsBestWithoutFrictionAndWhatOnlyFallsWithTheMost() {
        assertThat(band(same(10, 1, 1.2, 1.4, 1.6)).verdict()).isEqualTo(Verdict.LESS);
        assertThat(band(same(10, 1.6, 1.4, 1.2, 1)).verdict()).isEqualTo(Verdict.MORE);
    }

    @Test
    void drawsThatDisagreeAreSaidToDisagree() {
        double[][] draws = same(10, 1, 1.2, 1.4, 1.6);
        for (int d = 0; d < 5; d++) {
            draws[d] = new double[] {1.6, 1.4, 1.2, 1};
        }
        assertThat(band(draws).verdict()).isEqualTo(Verdict.OPEN);
    }

    @Test
    void aDrawInTenMayBeOtherwise() {
        double[][] draws = same(10, 2, 1.2, 1, 1.5);
        draws[4] = new double[] {1, 1.2, 1.4, 1.6};
        assertThat(band(draws).verdict()).isEqualTo(Verdict.BETWEEN);
        for (int n : new int[] {10, 20, 40, 50}) {
            double[][] rising = same(n, 1, 1.2, 1.4, 1.6);
            double[][] falling = same(n, 1.6, 1.4, 1.2, 1);
            for (int d = 0; d < n / 10; d++) {
                rising[d] = new double[] {2, 1.2, 1, 1.5};
                falling[d] = new double[] {2, 1.2, 1, 1.5};
            }
            assertThat(band(rising).verdict()).isEqualTo(Verdict.LESS);
            assertThat(band(falling).verdict()).isEqualTo(Verdict.MORE);
        }
    }

    @Test
    void timeLockedIsNoGoodOrIllInItself() {
        TradeLine line = new TradeLine(Criterion.LOCKED, "gravel", 3, FACTORS, same(2, 0, 0.3, 0.5, 0.7));
        assertThatThrownBy(() -> BestBand.of(line)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void cyclesAreAsGoodAsTheFewestWithinHalfOfOne() {
        BestBand band = BestBand.of(new TradeLine(Criterion.CYCLES, "plank", 3, FACTORS, same(10, 5, 0.5, 0, 0.5)));
        assertThat(band.from().median()).isEqualTo(0.5);
        assertThat(band.to().median()).isEqualTo(2);
    }

    @Test
    void aFrictionInTheMiddleOfTheMediansNeedNotBeGoodInMostDraws() {
        // bands of the draws: about 0 in five of them, about 2 in the other five, and none about 1
        double[][] draws = same(10, 1, 1.5, 2, 3);
        for (int d = 0; d < 5; d++) {
            draws[d] = new double[] {3, 2, 1.5, 1};
        }
        BestBand band = band(draws);
        assertThat(band.from().median()).isLessThan(1);
        assertThat(band.to().median()).isGreaterThan(1);
        assertThat(band.draws(1)).isZero();
    }

    @Test
    void whatServesTwoCriteriaIsCountedDrawByDraw() {
        BestBand low = band(same(4, 1, 1.04, 1.2, 1.5));
        BestBand high = band(same(4, 1.5, 1.04, 1, 1.2));
        assertThat(BestBand.draws(List.of(low, high), 0)).isZero();
        assertThat(BestBand.draws(List.of(low, high), 1)).isZero();
        BestBand.Shared shared = BestBand.shared(List.of(low, high));
        assertThat(shared.draws()).isEqualTo(4);
        assertThat(shared.factor()).isCloseTo(0.51, within(0.03));
    }

    @Test
    void aFurtherDrawLiesInTheIntervalNineTimesInTen() {
        // one more than n draws of any distribution is as likely in each of the n + 1 places between them
        Random random = new Random(7);
        for (int n : new int[] {19, 40}) {
            int inside = 0;
            int trials = 20_000;
            for (int trial = 0; trial < trials; trial++) {
                double[] drawn = random.doubles(n).map(u -> -Math.log(u)).toArray();
                TradeLine.Spread spread = TradeLine.Spread.of(drawn);
                double next = -Math.log(random.nextDouble());
                inside += next >= spread.low() && next <= spread.high() ? 1 : 0;
            }
            assertThat((double) inside / trials).isCloseTo(TradeLine.Spread.coverage(n), within(0.01));
            assertThat(TradeLine.Spread.coverage(n)).isBetween(0.9, 0.91);
        }
        assertThat(TradeLine.Spread.coverage(10)).isCloseTo(9.0 / 11, within(1e-12));
    }
}
