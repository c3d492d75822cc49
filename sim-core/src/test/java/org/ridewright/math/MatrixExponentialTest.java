package org.ridewright.math;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MatrixExponentialTest {
    @ParameterizedTest
    @ValueSource(doubles = {1e-6, 1, 5.3, 5.4, 10.5, 21.4, 60, 100})
    void aRotationTurnsByItsAngleHoweverLarge(double angle) {
        double[][] turned = MatrixExponential.of(new double[][] {{0, -angle}, {angle, 0}});
        assertThat(turned[0][0]).isCloseTo(Math.cos(angle), within(1e-13));
        assertThat(turned[1][0]).isCloseTo(Math.sin(angle), within(1e-13));
        assertThat(turned[0][1]).isCloseTo(-Math.sin(angle), within(1e-13));
    }

    @Test
    void aNilpotentMatrixGivesItsShortSeries() {
        double[][] power = MatrixExponential.of(new double[][] {{0, 40, 0}, {0, 0, 40}, {0, 0, 0}});
        assertThat(power[0]).containsExactly(new double[] {1, 40, 800}, within(1e-10));
        assertThat(power[1]).containsExactly(new double[] {0, 1, 40}, within(1e-11));
    }

    @Test
    void whatIsNotFiniteIsRefused() {
        assertThatThrownBy(() -> MatrixExponential.of(new double[][] {{Double.NaN}}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("finite");
    }
}
