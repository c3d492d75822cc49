package org.ridewright.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class FilterSectionTest {
    @Test
    void gainAtTheCornerIsTheQualityFactor() {
        assertThat(FilterSection.lowPass(5, 0.8).response(5).norm()).isEqualTo(0.8, within(1e-12));
        assertThat(FilterSection.highPass(5, 3).response(5).norm()).isEqualTo(3, within(1e-12));
    }

    @Test
    void butterworthPairFollowsItsClosedForm() {
        // |LP|² = 1/(1 + (f/f2)⁴), |HP|² = 1/(1 + (f1/f)⁴)
        for (double ratio : new double[] {0.1, 0.7, 1, 3, 20}) {
            double r4 = Math.pow(ratio, 4);
            assertThat(FilterSection.lowPass(2, Math.sqrt(0.5))
                            .response(2 * ratio)
                            .norm())
                    .isEqualTo(1 / Math.sqrt(1 + r4), within(1e-12));
            assertThat(FilterSection.highPass(2, Math.sqrt(0.5))
                            .response(2 * ratio)
                            .norm())
                    .isEqualTo(1 / Math.sqrt(1 + 1 / r4), within(1e-12));
        }
    }

    @Test
    void stepGoesFromTheSquaredRatioToOne() {
        FilterSection step = FilterSection.step(2, 0.9, 4, 0.95);
        assertThat(step.response(0).norm()).isEqualTo(0.25, within(1e-12));
        assertThat(step.response(1e6).norm()).isEqualTo(1, within(1e-9));
    }

    @Test
    void slowerPoleRulesSettling() {
        // (1 + s)(1 + s/100): decay rates 1 and 100
        assertThat(new FilterSection(1, 0, 0, 1, 1.01, 0.01).decayRate()).isEqualTo(1, within(1e-12));
        // Butterworth: ω/√2
        FilterSection pair = FilterSection.lowPass(1 / (2 * Math.PI), Math.sqrt(0.5));
        assertThat(pair.decayRate()).isEqualTo(Math.sqrt(0.5), within(1e-12));
        assertThat(new AnalogueFilter(1, List.of(pair, FilterSection.lowPass(50, 1))).settlingTime(Math.exp(-1)))
                .isEqualTo(Math.sqrt(2), within(1e-12));
    }

    @Test
    void unstableOrEmptyFiltersAreRefused() {
        assertThatThrownBy(() -> new FilterSection(1, 0, 0, 1, -1, 1)).hasMessageContaining("s^1 must be > 0");
        assertThatThrownBy(() -> FilterSection.lowPass(0, 1)).hasMessageContaining("frequency must be > 0");
        assertThatThrownBy(() -> FilterSection.step(1, 0, 1, 1)).hasMessageContaining("quality factor");
        assertThatThrownBy(() -> new AnalogueFilter(1, List.of())).hasMessageContaining("at least 1 filter section");
    }
}
