package org.ridewright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.ridewright.friction.DenHartogAmplitude;

/** The closed form that stands in the friction laboratory's report, beside the reference table, which was simulated by other means. */
class DenHartogAmplitudeTest {
    @Test
    void itHoldsWhereTheMassOfTheTableNeverStopsAndNowhereElse() {
        int moving = 0;
        int stopping = 0;
        for (ReferenceTable.Row row :
                ReferenceTable.read("friction_oscillator_forced.csv").rows()) {
            double r = row.number("r");
            double share = row.number("F_over_F0");
            if (row.given("X_closed").isPresent()) {
                assertThat(DenHartogAmplitude.of(r, share).orElseThrow())
                        .as("r %s, F/F₀ %s", r, share)
                        .isCloseTo(row.number("X_closed"), within(1e-6));
                moving++;
            } else {
                assertThat(DenHartogAmplitude.of(r, share))
                        .as("r %s, F/F₀ %s", r, share)
                        .isEmpty();
                stopping++;
            }
        }
        assertThat(moving).isGreaterThan(10);
        assertThat(stopping).isGreaterThan(3);
    }

    @Test
    void withoutFrictionItIsTheAmplitudeOfAPlainSpring() {
        assertThat(DenHartogAmplitude.of(2, 1e-9).orElseThrow()).isCloseTo(1.0 / 3, within(1e-9));
        assertThat(DenHartogAmplitude.of(1, 0.1)).isEmpty();
    }
}
