package org.ridewright.solver;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TimeWithErrorTest {
    @Test
    void errorsAreWrittenOutInTheUnitOfTheTime() {
        TimeWithError step = new TimeWithError(1338.2, 292.4, "ns");
        assertThat(step.timeText()).isEqualTo("1340 ns");
        assertThat(step.errorText()).isEqualTo("± 290 ns (22 %), worthless");
    }

    @Test
    void aTimeIsNoFinerThanItsError() {
        assertThat(new TimeWithError(48.3049, 2.512, "ns").timeText()).isEqualTo("48.3 ns");
        assertThat(new TimeWithError(3.39127, 0.0221, "ns").timeText()).isEqualTo("3.391 ns");
        assertThat(new TimeWithError(48.3049, 2.512, "ns").errorText()).isEqualTo("± 2.5 ns (5.2 %)");
    }

    @Test
    void anErrorBeyondAFifthLeavesNothing() {
        assertThat(new TimeWithError(10, 1.99, "ms").tells()).isTrue();
        assertThat(new TimeWithError(10, 2.01, "ms").tells()).isFalse();
        assertThat(new TimeWithError(10, Double.NaN, "ms").tells()).isFalse();
    }
}
