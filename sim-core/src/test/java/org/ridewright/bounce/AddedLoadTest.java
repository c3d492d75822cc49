package org.ridewright.bounce;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ridewright.bounce.AddedLoad.Uncertain;

/** 120 kg on 20 kN/m, and 75 kg more. */
class AddedLoadTest {
    private static final double RATE = 20_000;
    private static final double MASS = 120;
    private static final double LOAD = 75;

    private static double frequency(double mass) {
        return Math.sqrt(RATE / mass) / (2 * Math.PI);
    }

    private static Uncertain value(double value, double uncertainty) {
        return new Uncertain(value, uncertainty);
    }

    @Test
    void twoCountsGiveRateAndMass() {
        AddedLoad found = AddedLoad.of(value(frequency(MASS), 0), value(frequency(MASS + LOAD), 0), value(LOAD, 0));
        assertThat(found.rate().value()).isCloseTo(RATE, within(1e-6));
        assertThat(found.mass().value()).isCloseTo(MASS, within(1e-9));
        assertThat(found.rate().low()).isCloseTo(RATE, within(1e-6));
        assertThat(found.rate().high()).isCloseTo(RATE, within(1e-6));
    }

    /** Counts with 2 % of error and a load known to 2 kg: nine intervals in ten hold the truth. */
    @Test
    void theIntervalsHoldTheTruthAsOftenAsTheySay() {
        Random random = new Random(5);
        int draws = 20_000;
        int rates = 0;
        int masses = 0;
        for (int i = 0; i < draws; i++) {
            double f1 = frequency(MASS) * (1 + 0.02 * random.nextGaussian());
            double f2 = frequency(MASS + LOAD) * (1 + 0.02 * random.nextGaussian());
            double load = LOAD + 2 * random.nextGaussian();
            AddedLoad found = AddedLoad.of(value(f1, 0.02 * f1), value(f2, 0.02 * f2), value(load, 2));
            rates += found.rate().holds(RATE) ? 1 : 0;
            masses += found.mass().holds(MASS) ? 1 : 0;
        }
        assertThat((double) rates / draws).isBetween(0.88, 0.92);
        assertThat((double) masses / draws).isBetween(0.88, 0.92);
    }

    @Test
    void countsThatDifferByLessThanTheirErrorsBoundNothing() {
        AddedLoad found = AddedLoad.of(value(2, 0.1), value(1.9, 0.1), value(75, 1));
        assertThat(found.isTold()).isFalse();
        assertThat(found.rate().high()).isInfinite();
        assertThat(found.rate().low()).isGreaterThan(0);
    }

    @Test
    void aFrequencyThatRisesWithTheLoadGivesNoRate() {
        assertThat(AddedLoad.of(value(1.8, 0.01), value(2, 0.01), value(75, 1))
                        .rate()
                        .value())
                .isNaN();
    }

    @Test
    void aFrequencyOfNoughtIsRefused() {
        assertThatThrownBy(() -> value(0, 0.1)).isInstanceOf(IllegalArgumentException.class);
    }
}
