package org.ridewright.friction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ridewright.modal.EquivalentFriction;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.FrictionLaw;

/**
 * A slider of limit S and locked rate k_p swings by 2 S over {@code 2 x_s = 2 S/k_p} after each turn and then slides: its loop is a parallelogram of height 2 S and
 * base {@code 2 X − 2 x_s}, area {@code 4 S (X − S/k_p)}. An elastic rate in parallel shears it and adds no area.
 *
 * <p>Source: closed form of the elastic slider (Jenkins), several of which in parallel are W. D. Iwan's model, J. Appl. Mech. 33 (1966) 893; from memory, derived
 * again.
 */
class LoopTest {
    private static final double RATE = 40e3;
    private static final double LIMIT = 200;
    private static final double LOCKED = 100e3;
    private static final ForceLaw SINGLE = ForceLaw.spring(RATE).withFriction(FrictionLaw.single(0, LIMIT, LOCKED));

    @ParameterizedTest
    @ValueSource(doubles = {0.0021, 0.003, 0.01, 0.04})
    void oneSliderLosesFourTimesItsLimitOverTheTravelThatItSlides(double amplitude) {
        Loop loop = Loop.of(SINGLE, 0.05, amplitude);
        assertThat(loop.area()).isCloseTo(4 * LIMIT * (amplitude - LIMIT / LOCKED), withinPercentage(1e-5));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.003, 0.01, 0.04})
    void theSecantThroughTheTipsIsTheRateAndTheLimitOverTheAmplitude(double amplitude) {
        Loop loop = Loop.of(SINGLE, 0.05, amplitude);
        assertThat(loop.range() / (2 * amplitude)).isCloseTo(RATE + LIMIT / amplitude, withinPercentage(1e-5));
    }

    @Test
    void belowItsLimitASpringIsLockedAndLosesNothing() {
        Loop loop = Loop.of(SINGLE, 0.05, 0.0019);
        assertThat(loop.area()).isCloseTo(0, within(1e-9));
        assertThat(loop.inStep()).isCloseTo(RATE + LOCKED, withinPercentage(1e-5));
    }

    @Test
    void slidersInParallelLoseWhatEachWouldLoseAlone() {
        double[] shares = {0.6, 0.4};
        double[] rates = {75e3, 25e3};
        ForceLaw both = ForceLaw.spring(RATE).withFriction(new FrictionLaw(0, LIMIT, shares, rates, 0));
        double sum = 0;
        for (int j = 0; j < shares.length; j++) {
            sum += Loop.of(
                            ForceLaw.spring(RATE).withFriction(FrictionLaw.single(0, shares[j] * LIMIT, rates[j])),
                            0.05,
                            0.01)
                    .area();
        }
        assertThat(Loop.of(both, 0.05, 0.01).area()).isCloseTo(sum, withinPercentage(1e-6));
    }

    @Test
    void anEnvelopeLosesLessByWhatItsLengthRounds() {
        double beta = 0.002;
        double amplitude = 0.008;
        Loop loop = Loop.of(ForceLaw.spring(RATE).withFriction(FrictionLaw.envelope(0, LIMIT, beta)), 0.05, amplitude);
        // the second cycle is the loop but for e^(−2X/β) of what the first one began with
        assertThat(loop.area())
                .isCloseTo(4 * LIMIT * (amplitude - beta * Math.tanh(amplitude / beta)), withinPercentage(0.1));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.001, 0.003, 0.01, 0.04})
    void harmonicBalanceIsExactWhereTheLimitIsTheSameAtEveryLoad(double amplitude) {
        Loop loop = Loop.of(SINGLE, 0.05, amplitude);
        EquivalentFriction balanced = EquivalentFriction.of(SINGLE.friction(), LIMIT, amplitude);
        assertThat(RATE + balanced.rate()).isCloseTo(loop.inStep(), withinPercentage(1e-4));
        assertThat(Math.PI * amplitude * amplitude * balanced.loss()).isCloseTo(loop.area(), within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.004, 0.01, 0.03})
    void harmonicBalanceErrsByAFewPerCentWhereTheLimitGrowsWithTheLoad(double amplitude) {
        ForceLaw law = ForceLaw.spring(RATE).withFriction(FrictionLaw.single(0.1, 0, LOCKED));
        Loop loop = Loop.of(law, 0.05, amplitude);
        EquivalentFriction balanced = EquivalentFriction.of(law.friction(), 0.1 * RATE * 0.05, amplitude);
        assertThat(RATE + balanced.rate()).isCloseTo(loop.inStep(), withinPercentage(2.0));
        assertThat(Math.PI * amplitude * amplitude * balanced.loss()).isCloseTo(loop.area(), withinPercentage(5.0));
    }

    @Test
    void twiceTheLimitAtTwiceTheAmplitudeIsTheSameLoopTwiceAsLarge() {
        Loop once = Loop.of(SINGLE, 0.05, 0.01);
        Loop twice = Loop.of(SINGLE.withFriction(SINGLE.friction().times(2)), 0.05, 0.02);
        assertThat(twice.area()).isCloseTo(4 * once.area(), withinPercentage(1e-5));
    }
}
