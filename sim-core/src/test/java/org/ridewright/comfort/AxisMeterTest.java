package org.ridewright.comfort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ridewright.signal.Channel;
import org.ridewright.signal.FilterStream;
import org.ridewright.signal.Sines;

class AxisMeterTest {
    private static AxisVibration measured(
            Channel channel, Position position, Axis axis, Window window, StartUp startUp) {
        AxisMeter meter = new AxisMeter(position, axis, window, channel.sampleRate(), channel.start(), startUp);
        for (int i = 0; i < channel.size(); i++) {
            meter.accept(channel.sample(i));
        }
        return meter.result();
    }

    private static AxisVibration seat(Channel channel, Window window) {
        return measured(channel, Position.SEAT, Axis.Z, window, StartUp.AT_REST);
    }

    private static Channel noise(double fs, double start, double duration, long seed) {
        double[] a = new Random(seed).doubles((int) (duration * fs), -2, 2).toArray();
        return new Channel("noise", "m/s²", fs, start, a);
    }

    @Property(tries = 40)
    void oneSampleAfterTheOtherGivesTheSameNumbersAsTheWholeChannelBitForBit(
            @ForAll long seed,
            @ForAll @DoubleRange(min = 20, max = 700) double fs,
            @ForAll @DoubleRange(min = -5, max = 5) double start,
            @ForAll @DoubleRange(min = 0, max = 1) double early,
            @ForAll @DoubleRange(min = 0, max = 1) double late) {
        Channel channel = noise(fs, start, 4, seed);
        double from = start + early;
        Window window = new Window(from, from + 1 + late * (channel.end() - from - 1));
        for (Axis axis : new Axis[] {Axis.X, Axis.Z}) {
            AxisVibration meter = measured(channel, Position.SEAT, axis, window, StartUp.AT_REST);
            assertThat(meter.metrics()).isEqualTo(VibrationMetrics.of(channel, Position.SEAT, axis, window));
        }
        assertThat(seat(channel, window).british())
                .isEqualTo(VibrationMetrics.of(channel, Weighting.WB.apply(channel), window));
    }

    @Test
    void whatComesAfterTheWindowChangesNothing() {
        Channel longer = noise(200, 0, 10, 1);
        double[] first = Arrays.copyOf(longer.samples(), 1001 + FilterStream.DELAY);
        Channel shorter = new Channel("noise", "m/s²", 200, 0, first);
        Window window = new Window(1, 5);
        assertThat(seat(shorter, window)).isEqualTo(seat(longer, window));
    }

    @Property(tries = 20)
    void twiceTheMotionIsTwiceAsMuchOfEverything(
            @ForAll long seed, @ForAll @DoubleRange(min = 0.01, max = 90) double factor) {
        Channel one = noise(100, 0, 6, seed);
        Channel other = one.with(
                "more",
                "m/s²",
                Arrays.stream(one.samples()).map(a -> factor * a).toArray());
        Window window = new Window(1, 5.5);
        AxisVibration a = seat(one, window);
        AxisVibration b = seat(other, window);
        assertSame(b.metrics().rms(), factor * a.metrics().rms());
        assertSame(b.metrics().mtvv(), factor * a.metrics().mtvv());
        assertSame(b.metrics().vdv(), factor * a.metrics().vdv());
        assertSame(b.metrics().peak(), factor * a.metrics().peak());
        assertSame(b.british().vdv(), factor * a.british().vdv());
        assertSame(b.jerk().felt().peak(), factor * a.jerk().felt().peak());
        assertSame(b.jerk().sampled(), factor * a.jerk().sampled());
        assertSame(b.bands().jolt().rms(), factor * a.bands().jolt().rms());
        assertSame(b.bands().unaccounted(), a.bands().unaccounted());
        assertSame(b.metrics().crestFactor(), a.metrics().crestFactor());
    }

    @Property(tries = 20)
    void theSameMotionLaterMeasuresTheSame(
            @ForAll long seed, @ForAll @DoubleRange(min = -1e3, max = 1e5) double shift) {
        Channel early = noise(128, 0, 6, seed);
        Channel late = new Channel("late", "m/s²", 128, shift, early.samples());
        AxisVibration a = seat(early, new Window(1, 5.5));
        AxisVibration b = seat(late, new Window(shift + 1, shift + 5.5));
        assertThat(b.metrics().rms()).isEqualTo(a.metrics().rms(), within(1e-6));
        assertThat(b.metrics().mtvv()).isEqualTo(a.metrics().mtvv(), within(1e-6));
        assertThat(b.bands().buzz().rms()).isEqualTo(a.bands().buzz().rms(), within(1e-6));
        assertThat(b.metrics().peak()).isEqualTo(a.metrics().peak());
    }

    private static void assertSame(double actual, double expected) {
        assertThat(actual).isEqualTo(expected, within(1e-9 * Math.abs(expected) + 1e-14));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.8, 3, 5.5, 10, 30})
    void aSineIsDividedAmongHeaveJoltAndBuzzByItsFrequency(double f) {
        // |LP|² = 1/(1 + (f/f0)⁸)
        double below3 = 1 / (1 + Math.pow(f / 3, 8));
        double below10 = 1 / (1 + Math.pow(f / 10, 8));
        MotionBands bands = seat(Sines.sine(500, 40, 1, f), new Window(10, 35)).bands();
        double half = Math.sqrt(0.5);
        assertThat(bands.heave().rms()).isEqualTo(half * Math.sqrt(below3), within(2e-4));
        assertThat(bands.jolt().rms()).isEqualTo(half * Math.sqrt((1 - below3) * below10), within(2e-4));
        assertThat(bands.buzz().rms()).isEqualTo(half * Math.sqrt((1 - below3) * (1 - below10)), within(2e-4));
        assertThat(bands.unaccounted()).isEqualTo(0, within(1e-3));
        assertThat(bands.whole().peak()).isEqualTo(1, within(3e-3));
        assertThat(bands.heave().peak()).isEqualTo(Math.sqrt(2) * bands.heave().rms(), within(5e-3));
    }

    @Test
    void ofAMotionFromRestToRestNothingIsLostBetweenTheBands() {
        Channel bang = Sines.sampled(
                1000, 12, t -> 8 * Math.exp(-Math.pow((t - 4) / 0.02, 2)) + Math.exp(-Math.pow((t - 5) / 0.4, 2)));
        MotionBands bands = seat(bang, new Window(0, 11)).bands();
        // the filters are right to 2e-4
        assertThat(bands.unaccounted()).isEqualTo(0, within(1e-4));
        assertThat(bands.buzz().peak()).isGreaterThan(bands.heave().peak());
    }

    /** The stated bound: about 0.2 s of signal at each end of the window. */
    @Property(tries = 20)
    void ofASteadyMotionTheBandsAddUpButForTheEndsOfTheWindow(@ForAll long seed) {
        double length = 30;
        // 60 tones at random below 24 Hz, 0.4 of the sampling rate
        double[] tone = new Random(seed).doubles(120, 0, 1).toArray();
        Channel channel = Sines.sampled(60, length + 6, t -> {
            double sum = 0;
            for (int i = 0; i < tone.length; i += 2) {
                sum += Math.sin(2 * Math.PI * (0.2 + 23.8 * tone[i]) * t + 2 * Math.PI * tone[i + 1]);
            }
            return sum;
        });
        assertThat(seat(channel, new Window(5, 5 + length)).bands().unaccounted())
                .isEqualTo(0, within(2 * 0.2 / length));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 4, 20})
    void jerkOfASineIsItsAccelerationTimesItsAngularFrequency(double f) {
        Jerk jerk = seat(Sines.sine(2000, 20, 1, f), new Window(8, 18)).jerk();
        double w = 2 * Math.PI * f;
        assertThat(jerk.sampled() / w).isEqualTo(1, within(1e-3));
        double low = 1 / Math.sqrt(1 + Math.pow(f / 10, 8));
        assertThat(jerk.felt().rms() / (w * low * Math.sqrt(0.5))).isEqualTo(1, within(1e-3));
        assertThat(jerk.felt().peak() / (w * low)).isEqualTo(1, within(1e-3));
    }

    /** A jump of 2 m/s² through a fourth-order low pass: its steepest rise is that of the step response, whatever the rate. */
    @Test
    void aJumpHasASampledJerkThatGrowsWithTheRateAndAFeltOneThatDoesNot() {
        DoubleUnaryOperator jump = t -> t < 3 ? 0 : 2;
        Jerk coarse = seat(Sines.sampled(250, 8, jump), new Window(1, 7)).jerk();
        Jerk fine = seat(Sines.sampled(4000, 8, jump), new Window(1, 7)).jerk();
        assertThat(coarse.sampled()).isEqualTo(2 * 250, within(1e-9));
        assertThat(fine.sampled()).isEqualTo(2 * 4000, within(1e-9));
        assertThat(coarse.felt().peak() / fine.felt().peak()).isEqualTo(1, within(0.01));
        assertThat(fine.felt().peak()).isBetween(40.0, 80.0);
    }

    @Test
    void aJumpJustBeforeTheWindowIsNoJerkInIt() {
        Channel channel = Sines.sampled(100, 5, t -> t < 0.995 ? 0 : 2);
        assertThat(seat(channel, new Window(1, 4)).jerk().sampled()).isZero();
        assertThat(seat(channel, new Window(0.99, 4)).jerk().sampled()).isEqualTo(200);
    }

    @ParameterizedTest
    @EnumSource(
            value = Axis.class,
            names = {"X", "Y", "Z"})
    void anOffsetThatIsHeldFromTheStartNeverEntersTheWeighting(Axis axis) {
        Channel clean = Sines.sine(200, 8, 1, 5);
        Channel tilted = Sines.sampled(200, 8, t -> 9.81 + Math.sin(2 * Math.PI * 5 * t));
        Window window = new Window(0, 7);
        VibrationMetrics expected = measured(clean, Position.SEAT, axis, window, StartUp.FIRST_SAMPLE_HELD)
                .metrics();
        VibrationMetrics actual = measured(tilted, Position.SEAT, axis, window, StartUp.FIRST_SAMPLE_HELD)
                .metrics();
        assertThat(actual.rms()).isEqualTo(expected.rms(), within(1e-9));
        assertThat(actual.vdv()).isEqualTo(expected.vdv(), within(1e-9));
        // from rest the same offset is a step, and rules the result
        assertThat(measured(tilted, Position.SEAT, axis, window, StartUp.AT_REST)
                        .metrics()
                        .peak())
                .isGreaterThan(4);
    }

    /** A record begun in mid-ride: after the settling time the start-up error no longer counts. */
    @ParameterizedTest
    @EnumSource(Weighting.class)
    void afterTheSettlingTimeARecordBegunInMidRideMeasuresLikeTheWhole(Weighting weighting) {
        double fs = 50;
        double settling = Math.ceil(weighting.settlingTime());
        Channel whole = Sines.sampled(
                fs, 3 * settling + 60, t -> 2 * Math.cos(2 * Math.PI * 0.37 * t) + Math.cos(2 * Math.PI * 3.1 * t));
        int cut = (int) (settling * fs);
        Channel late = new Channel(
                "late", "m/s²", fs, whole.time(cut), Arrays.copyOfRange(whole.samples(), cut, whole.size()));
        Window window = new Window(2 * settling, 2 * settling + 40);
        double truth =
                VibrationMetrics.of(whole, weighting.apply(whole), window).rms();
        assertThat(VibrationMetrics.of(late, weighting.apply(late), window).rms())
                .isEqualTo(truth, within(0.01 * truth));
    }

    @Test
    void leadInAndSettlingAreTold() {
        Channel channel = noise(100, 10, 8, 1);
        assertThat(seat(channel, new Window(12, 17)).leadIn()).isEqualTo(2);
        assertThat(seat(channel, new Window(12, 17)).isSettled()).isFalse();
        assertThat(seat(channel, new Window(13, 17)).isSettled()).isTrue();
    }

    @Test
    void takingSamplesAllocatesNothing() {
        AxisMeter meter = new AxisMeter(Position.SEAT, Axis.Z, new Window(1, 90), 1000);
        double[] a = noise(1000, 0, 100, 3).samples();
        for (int i = 0; i < 50_000; i++) {
            meter.accept(a[i]);
        }
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = threads.getThreadAllocatedBytes(Thread.currentThread().getId());
        for (int i = 50_000; i < 85_000; i++) {
            meter.accept(a[i]);
        }
        assertThat(threads.getThreadAllocatedBytes(Thread.currentThread().getId()) - before)
                .isLessThan(4096);
    }

    @Test
    void whatCannotBeMeasuredIsRefused() {
        assertThatThrownBy(() -> new AxisMeter(Position.SEAT, Axis.Z, new Window(0, 0.5), 100))
                .hasMessageContaining("window must be ≥ the integration time of 1.0 s, got 0.5 s");
        assertThatThrownBy(() -> new AxisMeter(Position.SEAT, Axis.Z, new Window(-1, 5), 100))
                .hasMessageContaining("window must lie within the samples, which begin at 0.0 s");
        assertThatThrownBy(() -> new AxisMeter(Position.FEET, Axis.ROLL, new Window(0, 5), 100))
                .hasMessageContaining("no weighting for axis ROLL");
        AxisMeter meter = new AxisMeter(Position.SEAT, Axis.Z, new Window(0, 5), 100);
        assertThatThrownBy(() -> meter.accept(Double.NaN)).hasMessageContaining("must be finite");
        meter.accept(1);
        assertThatThrownBy(meter::result).hasMessageContaining("window ends at 5.0 s, but the samples end at 0.0 s");
    }
}
