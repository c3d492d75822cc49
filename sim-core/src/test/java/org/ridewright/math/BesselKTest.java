package org.ridewright.math;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class BesselKTest {
    /** {@code K_½(x) = √(π/2x) e^−x} and {@code K_(3/2)(x) = K_½(x)(1 + 1/x)}. */
    @Property(tries = 300)
    void ofHalfOrderIsAnExponential(@ForAll @DoubleRange(min = 0.01, max = 500) double root) {
        double x = root * root / 500;
        double half = Math.sqrt(Math.PI / (2 * x)) * Math.exp(-x);

        assertThat(BesselK.value(0.5, x) / half).isCloseTo(1, within(1e-12));
        assertThat(BesselK.value(1.5, x) / (half * (1 + 1 / x))).isCloseTo(1, within(1e-12));
    }

    /** {@code K_(v+1)(x) = K_(v−1)(x) + 2v/x K_v(x)}. */
    @Property(tries = 300)
    void ordersFollowTheirRecurrence(
            @ForAll @DoubleRange(min = 1, max = 2) double v, @ForAll @DoubleRange(min = 0.01, max = 100) double x) {
        double next = BesselK.value(v - 1, x) + 2 * v / x * BesselK.value(v, x);

        assertThat(BesselK.value(v + 1, x) / next).isCloseTo(1, within(1e-12));
    }

    /** Source: tables of Bessel functions (from memory), confirmed by the recurrence above. */
    @Test
    void atOneItHasItsTabulatedValues() {
        assertThat(BesselK.value(0, 1)).isCloseTo(0.42102443824070834, within(1e-15));
        assertThat(BesselK.value(1, 1)).isCloseTo(0.6019072301972346, within(1e-15));
    }

    @Property(tries = 200)
    void theCorrelationFallsFromOneToNothing(
            @ForAll @DoubleRange(min = 0.5, max = 2) double v, @ForAll @DoubleRange(min = 0, max = 60) double x) {
        double here = BesselK.correlation(v, x);

        assertThat(here).isBetween(0.0, 1.0);
        assertThat(BesselK.correlation(v, x + 0.1)).isLessThanOrEqualTo(here);
    }

    @Test
    void theCorrelationIsOneWhereNothingLiesBetween() {
        assertThat(BesselK.correlation(1, 0)).isEqualTo(1);
        assertThat(BesselK.correlation(1, 1e-9)).isCloseTo(1, within(1e-12));
    }

    @Test
    void refusesWhatItIsNotDefinedFor() {
        assertThatThrownBy(() -> BesselK.value(-1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> BesselK.value(1, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
