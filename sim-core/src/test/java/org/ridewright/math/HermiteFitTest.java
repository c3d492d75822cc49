package org.ridewright.math;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HermiteFitTest {
    private static final SmoothFunction SINE = new SmoothFunction() {
        @Override
        public double value(double x) {
            return Math.sin(x);
        }

        @Override
        public double slope(double x) {
            return Math.cos(x);
        }

        @Override
        public double curvature(double x) {
            return -Math.sin(x);
        }
    };

    private static PiecewisePolynomial sine(int degree, double tolerance) {
        PieceCollector out = new PieceCollector();
        new HermiteFit(SINE, degree, tolerance, out).fit(0, 6, 0, Math.sin(6));
        return out.build(0, Math.sin(6));
    }

    @ParameterizedTest
    @CsvSource({"3, 1e-4", "3, 1e-8", "5, 1e-4", "5, 1e-10"})
    void theErrorStaysWithinTheToleranceWithoutWaste(int degree, double tolerance) {
        PiecewisePolynomial p = sine(degree, tolerance);
        double worst = 0;
        for (double x = 0; x < 6; x += 0.001) {
            worst = Math.max(worst, Math.abs(p.value(x) - Math.sin(x)));
        }
        assertThat(worst).isBetween(tolerance / 10, tolerance * 1.01);
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 5})
    void fourTimesThePiecesDivideTheErrorByFourToTheOrder(int degree) {
        double coarse = 1e-5;
        double fine = coarse / Math.pow(4, degree + 1);

        assertThat(sine(degree, fine).pieces() / (double) sine(degree, coarse).pieces())
                .isCloseTo(4, within(0.8));
    }

    @Test
    void otherDegreesAreRefused() {
        assertThatThrownBy(() -> new HermiteFit(SINE, 4, 1e-8, new PieceCollector()))
                .hasMessageContaining("must be 3 or 5, got 4");
    }
}
