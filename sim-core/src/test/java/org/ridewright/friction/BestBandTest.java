package org.ridewright.friction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
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
        assertThat(band.holds(1)).isTrue();
        assertThat(band.holds(0.5)).isFalse();
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
    }

    @Test
    void timeLockedIsNoGoodOrIllInItself() {
        TradeLine line = new TradeLine(Criterion.LOCKED, "gravel", 3, FACTORS, same(2, 0, 0.3, 0.5, 0.7));
        assertThatThrownBy(() -> BestBand.of(line)).isInstanceOf(IllegalArgumentException.class);
    }
}
