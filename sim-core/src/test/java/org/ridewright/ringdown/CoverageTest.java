package org.ridewright.ringdown;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whether the 90 % intervals hold the truth in 84 to 95 % of 200 records (168 to 190). The records are made of {@link SwingingMass}, in displacement,
 * and of two damped cosines, not of what the fit uses; the whole way is gone, from finding the release on.
 */
class CoverageTest {
    private static final int SEEDS = 200;
    private static final double RELEASE = 2.5;
    private static final double LENGTH = 9;
    private static final int FEWEST = 168;
    private static final int MOST = 190;

    /** What a logger makes of a motion. */
    private record Logger(double rate, double noise, double step, double stampJitter, double hiddenJitter) {
        Stretch record(Motion motion, long seed) {
            Random random = new Random(seed);
            double phase = random.nextDouble();
            int n = (int) (LENGTH * rate);
            double[] times = new double[n];
            double[] values = new double[n];
            for (int i = 0; i < n; i++) {
                double stamped = (i + phase + bounded(stampJitter * random.nextGaussian())) / rate;
                double sampled = stamped + bounded(hiddenJitter * random.nextGaussian()) / rate;
                double value = motion.acceleration(sampled - RELEASE) + noise * random.nextGaussian() + 0.013;
                times[i] = stamped;
                values[i] = step > 0 ? step * Math.rint(value / step) : value;
            }
            return new Stretch(times, values);
        }

        private static double bounded(double jitter) {
            return Math.max(-0.45, Math.min(0.45, jitter));
        }
    }

    private interface Motion {
        double acceleration(double sinceRelease);
    }

    /** Eight bits over ±1 g. */
    private static final double EIGHT_BITS = 2 * 9.80665 / 256;

    static Stream<Arguments> records() {
        SwingingMass dry = new SwingingMass(1.8, 0, 0.004, -0.05);
        SwingingMass viscous = new SwingingMass(2.2, 0.06, 0, -0.03);
        SwingingMass mixed = new SwingingMass(1.5, 0.03, 0.0025, -0.06);
        SwingingMass stiff = new SwingingMass(2.4, 0.1, 0.001, 0.04);
        return Stream.of(
                arguments("dry friction, 100 Hz, white noise", dry, new Logger(100, 0.05, 0, 0, 0)),
                arguments("dry friction, 50 Hz, unsteady stamps", dry, new Logger(50, 0.05, 0, 0.15, 0)),
                arguments("viscous, 50 Hz, white noise", viscous, new Logger(50, 0.05, 0, 0, 0)),
                arguments("viscous, 100 Hz, eight bits", viscous, new Logger(100, 0.03, EIGHT_BITS, 0, 0)),
                arguments("mixed, 200 Hz, white noise", mixed, new Logger(200, 0.05, 0, 0, 0)),
                arguments(
                        "mixed, 100 Hz, eight bits, unsteady stamps", mixed, new Logger(100, 0.04, EIGHT_BITS, 0.1, 0)),
                arguments("mixed, 100 Hz, samples taken beside their stamps", mixed, new Logger(100, 0.05, 0, 0, 0.05)),
                arguments("much damped, 100 Hz, white noise", stiff, new Logger(100, 0.05, 0, 0, 0)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("records")
    void theIntervalsHoldTheTruthAsOftenAsTheySay(String name, SwingingMass mass, Logger logger) {
        int[] held = held(mass::acceleration, logger, mass.friction(), mass.zeta(), mass.frictionLength());

        assertThat(held)
                .as("%s: friction, damping ratio, F/k held of %d: %s", name, SEEDS, Arrays.toString(held))
                .satisfies(counts -> assertThat(counts[0]).isBetween(FEWEST, MOST))
                .satisfies(counts -> assertThat(counts[1]).isBetween(FEWEST, MOST))
                .satisfies(counts -> assertThat(counts[2]).isBetween(FEWEST, MOST));
    }

    /** Pitch and bounce, both viscous: no friction is the truth, and the damping is that of the greater one. */
    @ParameterizedTest(name = "second mode of {0} Hz")
    @MethodSource("secondModes")
    void intervalsHoldWhereTwoModesBeat(double second, double damping, double share) {
        double omega = 2 * Math.PI * 1.7;
        double other = 2 * Math.PI * second;
        Motion motion = t -> t < 0
                ? 0
                : 2.5 * Math.exp(-0.05 * omega * t) * Math.cos(omega * Math.sqrt(1 - 0.05 * 0.05) * t)
                        + 2.5
                                * share
                                * Math.exp(-damping * other * t)
                                * Math.cos(other * Math.sqrt(1 - damping * damping) * t - 0.4);

        int[] held = held(motion, new Logger(100, 0.05, 0, 0, 0), 0, 0.05, 0);

        assertThat(held)
                .as("friction, damping ratio, F/k held of %d: %s", SEEDS, Arrays.toString(held))
                .satisfies(counts -> assertThat(counts[0]).isBetween(FEWEST, MOST))
                .satisfies(counts -> assertThat(counts[1]).isBetween(FEWEST, MOST))
                .satisfies(counts -> assertThat(counts[2]).isBetween(FEWEST, MOST));
    }

    static Stream<Arguments> secondModes() {
        return Stream.of(arguments(2.4, 0.06, 0.5), arguments(1.2, 0.04, 0.3));
    }

    private static int[] held(Motion motion, Logger logger, double friction, double zeta, double length) {
        boolean[][] held = IntStream.range(0, SEEDS)
                .parallel()
                .mapToObj(seed -> {
                    List<RingDown> found = RingDowns.of(
                                    List.of(logger.record(motion, seed)), List.of(), RingDownOptions.USUAL)
                            .releases();
                    assertThat(found).hasSize(1);
                    RingDown release = found.get(0);
                    return new boolean[] {
                        holds(release.friction(), friction),
                        holds(release.dampingRatio(), zeta),
                        holds(release.frictionLength(), length)
                    };
                })
                .toArray(boolean[][]::new);
        int[] counts = new int[3];
        for (boolean[] one : held) {
            for (int k = 0; k < counts.length; k++) {
                counts[k] += one[k] ? 1 : 0;
            }
        }
        return counts;
    }

    private static boolean holds(Estimate estimate, double truth) {
        return estimate.lower() <= truth && truth <= estimate.upper();
    }
}
