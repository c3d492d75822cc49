package org.ridewright.ringdown;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RingDownTest {
    private static final double NOISE = 0.03;

    private interface Motion {
        double acceleration(double t);
    }

    private static Stretch recorded(Motion motion, double length, double rate) {
        return recorded(motion, length, rate, 11);
    }

    private static Stretch recorded(Motion motion, double length, double rate, long seed) {
        Random random = new Random(seed);
        int n = (int) (length * rate);
        double[] times = new double[n];
        double[] values = new double[n];
        for (int i = 0; i < n; i++) {
            times[i] = i / rate;
            values[i] = motion.acceleration(times[i]) + NOISE * random.nextGaussian();
        }
        return new Stretch(times, values);
    }

    private static RingDowns found(Motion motion, double length) {
        return RingDowns.of(List.of(recorded(motion, length, 100)), List.of(), RingDownOptions.USUAL);
    }

    private static final SwingingMass DRY = new SwingingMass(1.8, 0, 0.004, -0.05);
    private static final SwingingMass VISCOUS = new SwingingMass(2.1, 0.06, 0, -0.04);
    private static final SwingingMass MIXED = new SwingingMass(1.6, 0.03, 0.002, -0.06);

    @Test
    void threeReleasesAreFoundEachWithItsKindOfDecay() {
        List<RingDown> releases = found(
                        t -> MIXED.acceleration(t - 3.3) + DRY.acceleration(t - 10) + VISCOUS.acceleration(t - 16), 24)
                .releases();

        assertThat(releases)
                .extracting(RingDown::kind)
                .containsExactly(DampingKind.MIXED, DampingKind.DRY, DampingKind.VISCOUS);
        assertThat(releases.get(0).at()).isCloseTo(3.3, within(0.01));
        assertThat(releases.get(1).at()).isCloseTo(10, within(0.01));
        assertThat(releases.get(2).at()).isCloseTo(16, within(0.01));
        assertThat(releases.get(1).frequency().value()).isCloseTo(1.8, within(0.005));
        assertThat(releases.get(2).frequency().value()).isCloseTo(2.1 * Math.sqrt(1 - 0.06 * 0.06), within(0.005));
    }

    @Test
    void dryFrictionStopsItAfterAsManyHalfCyclesAsTheRecursionSays() {
        // from 50 mm the turns lie at 42, 34, 26, 18, 10, 2 mm, where 4 mm hold it
        RingDown release = found(t -> DRY.acceleration(t - 3), 10).releases().get(0);

        assertThat(release.halfCycles()).isEqualTo(6);
        assertThat(release.counted()).isCloseTo(3 / 1.8, within(0.01));
    }

    @Test
    void halvesOfEachKindAloneFitWorseThanWhatItIs() {
        RingDown dry = found(t -> DRY.acceleration(t - 3), 10).releases().get(0);
        RingDown viscous =
                found(t -> VISCOUS.acceleration(t - 3), 10).releases().get(0);

        assertThat(dry.viscousOnly().noise()).isGreaterThan(3 * dry.dryOnly().noise());
        assertThat(viscous.dryOnly().noise())
                .isGreaterThan(3 * viscous.viscousOnly().noise());
    }

    @Test
    void frictionThatTurnsOverGraduallyIsToldFromThatWhichJumps() {
        PressedMass leaf = new PressedMass(1.8, 0.03, 0.004, 0.5, 12).pressed(0.05, 3);
        RingDown release = found(leaf::acceleration, 12).releases().get(0);

        assertThat(release.softness()).isPresent();
        assertThat(release.softness().get().value()).isCloseTo(0.5, within(0.02));
        assertThat(release.naturalFrequency().value()).isCloseTo(1.8, within(0.01));
        assertThat(release.dampingRatio().value()).isCloseTo(0.03, within(0.002));
        assertThat(release.frictionLength().value()).isCloseTo(0.004, within(0.00008));
        // the locked parts make it count faster than the sliding spring would
        assertThat(release.frequency().value()).isGreaterThan(1.85);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.5, 1})
    void depthAndSwingsOfASoftSliderAreThoseOfTheMassItself(double softness) {
        PressedMass leaf = new PressedMass(1.8, 0.02, 0.004, softness, 12).pressed(0.05, 3);
        RingDown release = found(leaf::acceleration, 12).releases().get(0);
        List<Double> turns = leaf.turns();

        assertThat(release.depth()).isCloseTo(0.05, within(0.0004));
        for (int j = 0; j < release.halfCycles(); j++) {
            double swing = Math.abs(turns.get(j + 1) - turns.get(j));
            double left = swing / Math.abs(turns.get(1) - turns.get(0));
            Estimate found = release.amplitudes().get(j).left();
            assertThat(found.value()).isCloseTo(left, within(0.006));
            assertThat(Math.abs(found.value() - left)).isLessThan(4 * found.standardError() + 1e-9);
        }
    }

    @Test
    void depthAndSwingsOfAStiffSliderAreThoseOfTheRecursion() {
        // from 50 mm the turns lie at 42, 34, 26 mm to either side
        RingDown release = found(t -> DRY.acceleration(t - 3), 10).releases().get(0);

        assertThat(release.depth()).isCloseTo(0.05, within(0.0003));
        assertThat(release.amplitudes().get(2).left().value()).isCloseTo((34 + 26) / (50.0 + 42), within(0.003));
    }

    /** The turns of a soft slider depend on friction and softness too, by which ω√(1 − ζ²) is off. */
    @Test
    void theFrequencyOfASoftSliderScattersAsItsErrorSays() {
        PressedMass leaf = new PressedMass(1.8, 0.03, 0.004, 0.5, 9).pressed(0.05, 2.5);
        List<RingDown> releases = IntStream.range(0, 60)
                .mapToObj(seed -> RingDowns.of(
                                List.of(recorded(leaf::acceleration, 9, 100, seed)), List.of(), RingDownOptions.USUAL)
                        .releases()
                        .get(0))
                .filter(release -> release.softness().isPresent())
                .toList();
        double mean = releases.stream()
                .mapToDouble(r -> r.frequency().value())
                .average()
                .orElseThrow();
        double scatter = Math.sqrt(releases.stream()
                .mapToDouble(r -> Math.pow(r.frequency().value() - mean, 2))
                .average()
                .orElseThrow());
        double told = releases.stream()
                .mapToDouble(r -> r.frequency().standardError())
                .average()
                .orElseThrow();
        assertThat(releases).hasSizeGreaterThan(50);
        // a standard deviation of 60 is known within 10 %
        assertThat(told / scatter).isBetween(0.7, 1.4);
    }

    @Test
    void bothFrequenciesOfABeatAreFound() {
        Motion beat = t -> t < 3 ? 0 : damped(2, 1.7, 0.04, 0, t - 3) + damped(1.2, 2.3, 0.05, -0.4, t - 3);
        RingDown release = found(beat, 12).releases().get(0);

        assertThat(release.second()).isPresent();
        assertThat(release.frequency().value()).isCloseTo(1.7, within(0.01));
        assertThat(release.second().get().frequency().value()).isCloseTo(2.3, within(0.01));
    }

    private static double damped(double size, double frequency, double zeta, double phase, double t) {
        double omega = 2 * Math.PI * frequency;
        return size * Math.exp(-zeta * omega * t) * Math.cos(omega * Math.sqrt(1 - zeta * zeta) * t + phase);
    }

    @Test
    void aDriftOfTheSensorIsNoFriction() {
        RingDown release = found(t -> VISCOUS.acceleration(t - 3) + 0.1 * Math.sin(2 * Math.PI * t / 25), 12)
                .releases()
                .get(0);

        assertThat(release.kind()).isEqualTo(DampingKind.VISCOUS);
    }

    @Test
    void aHalfCycleWithHandsStillOnIsLeftOut() {
        // the hands go away over a quarter of a second
        Motion held = t -> Math.max(0, Math.min(1, (t - 3.3) / 0.25)) * MIXED.acceleration(t - 3.3);
        RingDown release = found(held, 12).releases().get(0);

        assertThat(release.at()).isGreaterThan(3.4);
        assertThat(release.frequency().value()).isCloseTo(1.6, within(0.01));
    }

    @Test
    void alikeReleasesAreTakenTogetherAndUnlikeOnesAreNot() {
        RingDowns alike = found(t -> MIXED.acceleration(t - 3) + MIXED.acceleration(t - 10), 18);
        RingDowns unlike = found(t -> MIXED.acceleration(t - 3) + VISCOUS.acceleration(t - 10), 18);

        assertThat(alike.together()).isPresent();
        Estimate both = alike.together().get().frictionLength();
        assertThat(both.standardError())
                .isLessThan(alike.releases().get(0).frictionLength().standardError());
        assertThat(unlike.together()).isEmpty();
    }

    @Test
    void recordsWithoutNoiseHaveErrorsAboveZeroAndAMean() {
        SwingingMass exact = new SwingingMass(1.75, 0.05, 0, -0.05);
        double[] times = IntStream.range(0, 1800).mapToDouble(i -> i / 100.0).toArray();
        double[] values = Arrays.stream(times)
                .map(t -> exact.acceleration(t - 2.5) + exact.acceleration(t - 11.5))
                .toArray();
        for (double step : new double[] {0, 0.02}) {
            double[] written = Arrays.stream(values)
                    .map(v -> step > 0 ? step * Math.rint(v / step) : v)
                    .toArray();
            RingDowns found = RingDowns.of(List.of(new Stretch(times, written)), List.of(), RingDownOptions.USUAL);

            assertThat(found.releases()).hasSize(2);
            for (RingDown release : found.releases()) {
                assertThat(release.frequency().standardError()).isFinite().isPositive();
                assertThat(release.noise()).isGreaterThan(step / 4);
            }
            Together together = found.together().orElseThrow();
            assertThat(together.frequency().value()).isCloseTo(1.75 * Math.sqrt(1 - 0.05 * 0.05), within(0.002));
            assertThat(together.frequency().standardError()).isFinite().isPositive();
            assertThat(together.friction().standardError()).isFinite().isPositive();
        }
    }

    /** A line written without a fault: 0/0 would make every error NaN. */
    @Test
    void aCurveThatFitsExactlyStillHasAnError() {
        CurveFit.Curve level = new CurveFit.Curve() {
            @Override
            public double[] values(double[] parameters) {
                double[] values = new double[40];
                Arrays.fill(values, parameters[0]);
                return values;
            }

            @Override
            public double unit(int k) {
                return 1;
            }

            @Override
            public double[] allowed(double[] parameters) {
                return parameters;
            }
        };
        double[] samples = level.values(new double[] {2});
        boolean[] all = new boolean[40];
        Arrays.fill(all, true);

        CurveFit fit = CurveFit.at(level, samples, all, new double[] {2}, 5);

        assertThat(fit.standardError(0)).isPositive().isLessThan(1e-8);
        assertThat(fit.quantile()).isFinite();
    }

    @Test
    void twoSensorsGiveUpAndDownAndTurningApart() {
        SwingingMass bounce = new SwingingMass(1.7, 0.05, 0, -0.04);
        SwingingMass pitch = new SwingingMass(2.4, 0.06, 0, -0.03);
        Stretch front = recorded(t -> bounce.acceleration(t - 3) + pitch.acceleration(t - 3), 12, 100);
        Stretch rear = recorded(t -> bounce.acceleration(t - 3.13) - pitch.acceleration(t - 3.13), 12, 100);

        SensorPair pair = SensorPair.aligned(List.of(front), List.of(rear));

        assertThat(pair.shift()).isCloseTo(-0.13, within(0.01));
        assertThat(frequency(pair.mean())).isCloseTo(1.7, within(0.02));
        assertThat(frequency(pair.halfDifference())).isCloseTo(2.4, within(0.02));
    }

    private static double frequency(List<Stretch> stretches) {
        return RingDowns.of(stretches, List.of(), RingDownOptions.USUAL)
                .releases()
                .get(0)
                .frequency()
                .value();
    }

    @Test
    void aQuietLogIsRefused() {
        assertThatThrownBy(() -> found(t -> 0, 10))
                .isInstanceOf(NoRingDownException.class)
                .hasMessageContaining("no release is found")
                .hasMessageContaining("let go at once");
    }

    @Test
    void lessThanACycleAndAHalfIsRefused() {
        assertThatThrownBy(() -> found(t -> new SwingingMass(1.8, 0, 0.02, -0.05).acceleration(t - 3), 10))
                .isInstanceOf(NoRingDownException.class)
                .hasMessageContaining("too soon to tell");
    }

    @Test
    void tooFewSamplesInACycleAreRefused() {
        Stretch coarse = recorded(t -> VISCOUS.acceleration(t - 3.02), 14, 7);

        assertThatThrownBy(() -> RingDowns.of(List.of(coarse), List.of(), new RingDownOptions(0.6, 3)))
                .isInstanceOf(NoRingDownException.class);
    }

    @Test
    void aFlawInTheDecayIsNamed() {
        Stretch stretch = recorded(t -> VISCOUS.acceleration(t - 3), 10, 100);
        RingDowns.Flaw clipped = new RingDowns.Flaw(3.1, 3.15, "column 'z' is clipped");

        assertThatThrownBy(() -> RingDowns.of(List.of(stretch), List.of(clipped), RingDownOptions.USUAL))
                .isInstanceOf(NoRingDownException.class)
                .hasMessageContaining("column 'z' is clipped")
                .hasMessageContaining("wider range");
    }

    @Test
    void rowsMissingInTheDecayAreNamed() {
        Stretch whole = recorded(t -> VISCOUS.acceleration(t - 3), 10, 100);
        Stretch before = part(whole, 0, 380);
        Stretch after = part(whole, 450, 1000);

        RingDowns found = RingDowns.of(List.of(before, after), List.of(), RingDownOptions.USUAL);

        assertThat(found.leftOut()).anyMatch(words -> words.contains("rows are missing from 3.79 s on"));
        // what follows the gap is a free decay of its own
        assertThat(found.releases().get(0).at()).isGreaterThan(4.4);
    }

    private static Stretch part(Stretch whole, int from, int to) {
        return new Stretch(Arrays.copyOfRange(whole.times(), from, to), Arrays.copyOfRange(whole.values(), from, to));
    }
}
