package org.ridewright.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Third octaves of a whole ride: nothing is lost, an event counts wherever it falls, and what a short ride cannot tell is not told. */
class ThirdOctaveMeterTest {
    private static final double RATE = 2000;

    private static Map<ThirdOctave, Double> levels(int samples, DoubleUnaryOperator acceleration) {
        ThirdOctaveMeter meter = new ThirdOctaveMeter(RATE, samples, 0.5, 80);
        for (int i = 0; i < samples; i++) {
            meter.accept(acceleration.applyAsDouble(i / RATE));
        }
        return meter.levels(samples);
    }

    @Test
    void aToneStandsInItsOwnBand() {
        Map<ThirdOctave, Double> levels = levels(40_000, t -> 3 * Math.sin(2 * Math.PI * 4.03 * t));
        assertThat(levels.get(ThirdOctave.containing(4))).isCloseTo(3 / Math.sqrt(2), within(0.02));
        assertThat(levels.get(ThirdOctave.containing(8))).isLessThan(0.06);
    }

    @Test
    void squaresOfAllBandsAddUpToTheMeanSquare() {
        double[] tones = {2.2, 5.1, 9.7, 33};
        Map<ThirdOctave, Double> levels = levels(50_000, t -> {
            double sum = 0;
            for (double f : tones) {
                sum += Math.sin(2 * Math.PI * f * t + f);
            }
            return sum;
        });
        double square = levels.values().stream().mapToDouble(a -> a * a).sum();
        assertThat(square).isCloseTo(tones.length / 2.0, within(0.01));
    }

    @Test
    void anEventCountsAlikeWhereverItFalls() {
        DoubleUnaryOperator early = t -> pulse(t - 1);
        DoubleUnaryOperator late = t -> pulse(t - 18);
        Map<ThirdOctave, Double> first = levels(40_000, early);
        levels(40_000, late).forEach((band, level) -> assertThat(level).isCloseTo(first.get(band), within(1e-9)));
    }

    /** A swing that begins and ends at rest. */
    private static double pulse(double t) {
        return Math.exp(-20 * t * t) * Math.cos(2 * Math.PI * 5 * t);
    }

    @Test
    void whatComesAfterTheRideOnlyTellsHowItDiesAway() {
        ThirdOctaveMeter meter = new ThirdOctaveMeter(RATE, 40_000, 0.5, 80);
        for (int i = 0; i < 40_000; i++) {
            meter.accept(pulse(i / RATE - 1));
        }
        double all = Math.sqrt(
                meter.levels(4_000).values().stream().mapToDouble(a -> a * a).sum());
        Map<ThirdOctave, Double> whole = levels(40_000, t -> pulse(t - 1));
        double of = Math.sqrt(whole.values().stream().mapToDouble(a -> a * a).sum());
        assertThat(all).isCloseTo(of * Math.sqrt(10), within(1e-9));
    }

    @Test
    void aBandNarrowerThanThreeLinesIsLeftOut() {
        // 2 s: lines of 0.5 Hz, three of which are 1.5 Hz, as wide as the band of 6.3 Hz is for the first time (1.45),
        // that of 8 Hz surely
        Map<ThirdOctave, Double> levels = levels(4_000, t -> Math.sin(t));
        assertThat(levels.keySet().iterator().next().nominal()).isEqualTo(8);
        assertThat(levels).hasSize(11);
    }

    @Test
    void aLongRideTakenInPiecesHasTheLevelsOfAShortOne() {
        Random random = new Random(7);
        int samples = 300_000;
        ThirdOctaveMeter meter = new ThirdOctaveMeter(RATE, samples, 0.5, 80);
        double square = 0;
        for (int i = 0; i < samples; i++) {
            double a = random.nextGaussian();
            square += a * a / samples;
            meter.accept(a);
        }
        Map<ThirdOctave, Double> levels = meter.levels(samples);
        // white noise: the mean square of a band is its share of half the sampling rate
        ThirdOctave wide = ThirdOctave.containing(63);
        assertThat(Math.pow(levels.get(wide), 2))
                .isCloseTo(square * wide.width() / (RATE / 2), within(0.1 * wide.width() / (RATE / 2)));
    }
}
