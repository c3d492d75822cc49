package org.ridewright.math;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class MovingMeanTest {
    private static final PiecewisePolynomial BOX =
            new PiecewisePolynomial(new double[] {0, 1, 2}, new double[][] {{0}, {1}}, 0);

    @Test
    void theMeanOfABoxIsATrapezium() {
        PiecewisePolynomial m = MovingMean.of(BOX, 0.25);

        assertThat(m.pieces()).isEqualTo(3);
        assertThat(m.value(1)).isCloseTo(0.5, within(1e-15));
        assertThat(m.coefficients(m.pieceAt(1.5))).containsExactly(1);
        assertThat(m.value(2.125)).isCloseTo(0.25, within(1e-15));
        assertThat(m.joint(0)).isEqualTo(0.75);
        assertThat(m.joint(3)).isEqualTo(2.25);
    }

    @Test
    void theMeanOfACubicFollowsFromItsCurvature() {
        double a = 0.3;
        PiecewisePolynomial p = new PiecewisePolynomial(new double[] {-5, 5}, new double[][] {{1, 2, -0.5, 0.25}}, 0);
        PiecewisePolynomial m = MovingMean.of(p, a);
        for (double x = -4; x < 4; x += 0.37) {
            // of a cubic, mean − value = p″ a² / 6
            assertThat(m.value(x)).isCloseTo(p.value(x) + p.derivative(x, 2) * a * a / 6, within(1e-12));
        }
    }

    @Test
    void aMeanNeedsALength() {
        assertThatThrownBy(() -> MovingMean.of(BOX, 0)).hasMessageContaining("must be > 0, got 0.0");
    }
}
