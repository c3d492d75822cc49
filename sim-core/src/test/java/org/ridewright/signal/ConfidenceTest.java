package org.ridewright.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ConfidenceTest {
    /** Points of χ² as every book of tables prints them (from memory). */
    @Test
    void factorsAreThoseOfTheTableOfChiSquare() {
        Confidence ten = Confidence.of(0.95, 10);
        assertThat(10 / ten.lower()).isEqualTo(20.483, within(5e-4));
        assertThat(10 / ten.upper()).isEqualTo(3.247, within(5e-4));
        Confidence hundred = Confidence.of(0.9, 100);
        assertThat(100 / hundred.lower()).isEqualTo(124.342, within(5e-4));
        assertThat(100 / hundred.upper()).isEqualTo(77.929, within(5e-4));
    }

    @Test
    void moreFreedomNarrowsTheBand() {
        double before = Double.POSITIVE_INFINITY;
        for (double freedom : new double[] {2, 5, 20, 100, 1000, 1e5}) {
            Confidence c = Confidence.of(0.95, freedom);
            assertThat(c.lower()).isLessThan(1);
            assertThat(c.upper()).isGreaterThan(1);
            assertThat(c.upper() - c.lower()).isLessThan(before);
            before = c.upper() - c.lower();
        }
        assertThat(before).isLessThan(0.02);
    }

    @Test
    void impossibleLevelsAreRefused() {
        assertThatThrownBy(() -> Confidence.of(1, 10)).hasMessageContaining("between 0 and 1");
        assertThatThrownBy(() -> Confidence.of(0.9, 0)).hasMessageContaining("degrees of freedom");
    }
}
