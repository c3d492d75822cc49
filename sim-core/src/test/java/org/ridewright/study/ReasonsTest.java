package org.ridewright.study;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Of many runs that failed, why most of them did, once. */
class ReasonsTest {
    @Test
    void reasonsThatDifferInTheirNumbersAreOne() {
        Reasons reasons = new Reasons();
        reasons.add("it tips");
        reasons.add("axles[0]: pitch is 1.6712345 rad");
        reasons.add("axles[0]: pitch is 1.5 rad");

        assertThat(reasons.commonest(3))
                .containsExactly("2 times, for instance: axles[0]: pitch is 1.67 rad", "once: it tips");
    }

    @Test
    void numbersKeepThreeFiguresAndAllBeforeThePoint() {
        assertThat(Reasons.rounded("12345.678 N, 0.012345 m, 2.5 s, 0.0200 m, 8 km/h"))
                .isEqualTo("12346 N, 0.0123 m, 2.5 s, 0.0200 m, 8 km/h");
    }
}
