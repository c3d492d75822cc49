package org.ridewright.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.ridewright.comfort.Axis;
import org.ridewright.comfort.Position;
import org.ridewright.comfort.Weighting;
import org.ridewright.measurement.LogOptions.Forward;
import org.ridewright.measurement.LogOptions.Gravity;

class RecordedRideTest {
    private static final double G = 9.80665;

    /** A sine of r.m.s. 1 m/s² upright, seen by a phone askew, at unsteady instants: a_w is the weighting's factor. */
    @ParameterizedTest
    @CsvSource({"100,1.5", "100,5", "100,12.5", "100,31.5", "50,5", "50,16", "200,63", "400,8"})
    void aVerticalSineComesBackThroughTiltOffsetAndJitterWithin05Percent(double rate, double frequency) {
        Recording recording = askew(jittered(rate, 60, 0.15), t -> 0, t -> 0, sine(frequency));

        LogVibration vibration = LogVibration.of(RecordedRide.of(recording, LogOptions.USUAL));

        assertThat(vibration.vertical().metrics().rms())
                .isCloseTo(Weighting.WK.factor(frequency), Percentage.withPercentage(0.5));
        assertThat(vibration.horizontal().orElseThrow().rms()).isLessThan(0.005);
    }

    @Test
    void horizontalMotionIsOneValueWhicheverWayThePhoneLay() {
        Recording recording = askew(jittered(100, 60, 0.1), sine(3), sine(7), t -> 0);

        LogVibration vibration = LogVibration.of(RecordedRide.of(recording, LogOptions.USUAL));

        double expected = Math.hypot(Weighting.WD.factor(3), Weighting.WD.factor(7));
        assertThat(vibration.horizontal().orElseThrow().rms()).isCloseTo(expected, Percentage.withPercentage(0.5));
        assertThat(vibration.total()).isCloseTo(expected, Percentage.withPercentage(0.5));
        assertThat(vibration.axes()).containsOnlyKeys(Axis.Z);
    }

    @Test
    void theStatedForwardAxisPartsForeAndAftFromLateral() {
        double[][] phone = ExampleLog.turned(0, 0.3, -0.4);
        Recording recording = turned(phone, Logs.even(100, 60), sine(3), t -> 0.5 * sine(7).applyAsDouble(t), t -> 0);

        LogVibration vibration = LogVibration.of(RecordedRide.of(recording, options(Forward.PLUS_X)));

        // with no yaw, the phone's x lies in the vertical plane of forward
        assertThat(vibration.axes().get(Axis.X).metrics().rms())
                .isCloseTo(Weighting.WD.factor(3), Percentage.withPercentage(1));
        assertThat(vibration.axes().get(Axis.Y).metrics().rms())
                .isCloseTo(0.5 * Weighting.WD.factor(7), Percentage.withPercentage(1));
    }

    @Test
    void thePrincipalDirectionIsThatOfTheStrongestShaking() {
        Recording recording = askew(Logs.even(100, 60), sine(3), t -> 0.3 * sine(7).applyAsDouble(t), t -> 0);

        LogVibration vibration = LogVibration.of(RecordedRide.of(recording, options(Forward.PRINCIPAL)));

        assertThat(vibration.axes().get(Axis.X).metrics().rms())
                .isCloseTo(Weighting.WD.factor(3), Percentage.withPercentage(0.5));
        assertThat(vibration.axes().get(Axis.Y).metrics().rms())
                .isCloseTo(0.3 * Weighting.WD.factor(7), Percentage.withPercentage(0.5));
    }

    @Test
    void anUpsideDownSensorAndOneThatGivesGravityDownwardMeasureTheSame() {
        double[] times = Logs.even(100, 30);
        DoubleUnaryOperator z = t -> G + sine(5).applyAsDouble(t) + 0.8 * sine(1).applyAsDouble(t);
        DoubleUnaryOperator nothing = t -> 1e-3 * Math.sin(t);

        LogVibration up = measured(Logs.of(times, nothing, nothing, z));
        LogVibration down = measured(Logs.of(times, nothing, nothing, t -> -z.applyAsDouble(t)));

        assertThat(down.vertical().metrics().rms())
                .isCloseTo(up.vertical().metrics().rms(), within(1e-9));
        assertThat(down.vertical().metrics().peak())
                .isCloseTo(up.vertical().metrics().peak(), within(1e-9));
    }

    @Test
    void aLogWithoutGravityIsTakenAsItIsMarked() {
        RecordedRide ride = RecordedRide.of(Logs.of(Logs.even(100, 30), sine(2), sine(3), sine(5)), LogOptions.USUAL);

        assertThat(ride.mounting().gravityFound()).isFalse();
        assertThat(LogVibration.of(ride).vertical().metrics().rms())
                .isCloseTo(Weighting.WK.factor(5), Percentage.withPercentage(0.2));
    }

    @Test
    void oneVerticalColumnWillDo() {
        RecordedRide ride =
                RecordedRide.of(Logs.vertical(Logs.even(100, 30), t -> G + sine(5).applyAsDouble(t)), LogOptions.USUAL);
        LogVibration vibration = LogVibration.of(ride);

        assertThat(vibration.axes()).containsOnlyKeys(Axis.Z);
        assertThat(vibration.total()).isCloseTo(Weighting.WK.factor(5), Percentage.withPercentage(0.2));
    }

    @Test
    void whiteNoiseOfKnownStrengthComesBack() {
        Random random = new Random(7);
        double[] times = Logs.even(400, 120);
        double[] noise = random.doubles(times.length, -1, 1).toArray();
        Recording recording = Logs.vertical(times, t -> G + noise[(int) Math.rint(400 * t)]);

        LogVibration vibration = measured(recording);

        // density 2·(1/3)/400 up to 200 Hz, through Wk
        double square = IntStream.range(0, 20_000)
                .mapToDouble(i -> Math.pow(Weighting.WK.factor((i + 0.5) / 100), 2) / 100)
                .sum();
        assertThat(vibration.vertical().metrics().rms())
                .isCloseTo(Math.sqrt(square * 2 / 3.0 / 400), Percentage.withPercentage(2));
    }

    /** The dropout parts the log; what lies in it is not made up. */
    @Test
    void aDropoutIsReportedWithPlaceAndLengthAndNotBridged() {
        double[] times = Arrays.stream(Logs.even(100, 60))
                .filter(t -> t < 20 || t > 21.5)
                .toArray();
        RecordedRide ride = RecordedRide.of(Logs.vertical(times, t -> G + sine(5).applyAsDouble(t)), LogOptions.USUAL);

        assertThat(ride.timing().dropouts()).singleElement().satisfies(d -> {
            assertThat(d.line()).isEqualTo(2002);
            assertThat(d.at()).isCloseTo(19.99, within(1e-9));
            assertThat(d.length()).isCloseTo(1.52, within(1e-9));
        });
        assertThat(ride.pieces()).hasSize(2);
        assertThat(ride.pieces().get(0).window().to()).isLessThan(20);
        assertThat(ride.pieces().get(1).window().from()).isGreaterThan(21.5 + ride.startUp() - 0.02);
        assertThat(measured(Logs.vertical(times, t -> G + sine(5).applyAsDouble(t)))
                        .vertical()
                        .metrics()
                        .rms())
                .isCloseTo(Weighting.WK.factor(5), Percentage.withPercentage(0.2));
        assertThat(remarks(ride)).anyMatch(r -> r.contains("1.52 s before line 2002"));
    }

    @Test
    void singleLostRepeatedAndDisorderedRowsAreCountedAndDoNoHarm() {
        double[] even = Logs.even(100, 40);
        double[] times = IntStream.range(0, even.length)
                .filter(i -> i != 1000)
                .mapToDouble(i -> i == 2000 ? even[1999] : i == 3000 ? even[2990] : even[i])
                .toArray();
        RecordedRide ride = RecordedRide.of(Logs.vertical(times, t -> G + sine(5).applyAsDouble(t)), LogOptions.USUAL);

        assertThat(ride.timing().dropouts()).isEmpty();
        assertThat(ride.timing().bridged()).isEqualTo(3);
        assertThat(ride.timing().repeated()).isEqualTo(1);
        assertThat(ride.timing().outOfOrder()).isEqualTo(1);
        assertThat(LogVibration.of(ride).vertical().metrics().rms())
                .isCloseTo(Weighting.WK.factor(5), Percentage.withPercentage(0.3));
    }

    @Test
    void aClockSetBackPartsTheLog() {
        double[] times =
                Arrays.stream(Logs.even(100, 60)).map(t -> t > 30 ? t - 25 : t).toArray();
        RecordedRide ride = RecordedRide.of(Logs.vertical(times, t -> G + sine(5).applyAsDouble(t)), LogOptions.USUAL);

        assertThat(ride.timing().dropouts())
                .singleElement()
                .satisfies(d -> assertThat(d.length()).isNaN());
        assertThat(ride.length()).isCloseTo(60 - 2 * ride.startUp(), Offset.offset(0.5));
    }

    @Test
    void clippingIsReportedWithItsPlace() {
        Recording recording = Logs.vertical(
                Logs.even(100, 30),
                t -> Math.min(G + 2, G + 3 * Math.sin(2 * Math.PI * 1.03 * t) + 0.2 * Math.sin(40 * t)));
        RecordedRide ride = RecordedRide.of(recording, LogOptions.USUAL);

        assertThat(ride.checks().get(0).clipped()).hasSizeGreaterThan(20);
        assertThat(remarks(ride)).first().asString().contains("is clipped").contains("first at line");
    }

    @Test
    void aSineThatIsNotClippedIsNotCalledSo() {
        Recording recording = Logs.vertical(
                Logs.even(100, 30), t -> 0.05 * Math.rint((G + 2 * Math.sin(2 * Math.PI * 0.4 * t)) / 0.05));

        assertThat(RecordedRide.of(recording, LogOptions.USUAL).checks().get(0).clipped())
                .isEmpty();
    }

    @Test
    void theResolutionIsTheSmallestStep() {
        Recording recording =
                Logs.vertical(Logs.even(100, 30), t -> 0.15 * Math.rint((G + sine(5).applyAsDouble(t)) / 0.15));

        assertThat(RecordedRide.of(recording, LogOptions.USUAL).checks().get(0).resolution())
                .isCloseTo(0.15, within(1e-9));
    }

    @ParameterizedTest
    @EnumSource(
            value = Position.class,
            names = {"SEAT", "FEET"})
    void anUnknownForwardDirectionDoesNotMatterAtSeatAndFeet(Position position) {
        Recording recording = askew(Logs.even(100, 60), sine(3), sine(7), t -> 0);
        LogOptions open = new LogOptions(
                position, Forward.UNKNOWN, Gravity.FOUND, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
        LogOptions principal = new LogOptions(
                position, Forward.PRINCIPAL, Gravity.FOUND, Double.NaN, Double.NaN, Double.NaN, Double.NaN);

        assertThat(LogVibration.of(RecordedRide.of(recording, open)).total())
                .isCloseTo(
                        LogVibration.of(RecordedRide.of(recording, principal)).total(), within(1e-9));
    }

    @Test
    void theBackrestNeedsToKnowForward() {
        Recording recording = askew(Logs.even(100, 60), sine(3), sine(7), t -> 0);
        LogOptions open = new LogOptions(
                Position.BACKREST, Forward.UNKNOWN, Gravity.FOUND, Double.NaN, Double.NaN, Double.NaN, Double.NaN);

        UnusableLogException refusal = catchThrowableOfType(
                UnusableLogException.class, () -> LogVibration.of(RecordedRide.of(recording, open)));

        assertThat(refusal.fault().fix()).contains("--forward");
    }

    @Test
    void thirdOctavesAddUpToTheSine() {
        Recording recording = askew(jittered(100, 150, 0.1), t -> 0, t -> 0, sine(8));
        LogSpectra spectra =
                LogSpectra.of(RecordedRide.of(recording, LogOptions.USUAL)).orElseThrow();

        assertThat(spectra.vertical().orElseThrow().total()).isCloseTo(1, Percentage.withPercentage(1));
        assertThat(spectra.vertical().orElseThrow().bands().get(0).nominal()).isLessThanOrEqualTo(1);
    }

    @Test
    void stretchesThatCountTogetherMeasureAsOneOfTheirLength() {
        double[] times =
                Arrays.stream(Logs.even(200, 100)).filter(t -> t < 50 || t > 51).toArray();
        DoubleUnaryOperator growing = t -> G + (t < 50.5 ? 1 : 2) * sine(6.3).applyAsDouble(t);

        LogVibration vibration = measured(Logs.vertical(times, growing));

        double factor = Weighting.WK.factor(6.3);
        assertThat(vibration.vertical().metrics().rms())
                .isCloseTo(factor * Math.sqrt((1 + 4) / 2.0), Percentage.withPercentage(1));
        assertThat(vibration.vertical().metrics().mtvv()).isCloseTo(2 * factor, Percentage.withPercentage(1.5));
    }

    private static List<String> remarks(RecordedRide ride) {
        return LogRemarks.of(ride, LogVibration.of(ride));
    }

    private static LogVibration measured(Recording recording) {
        return LogVibration.of(RecordedRide.of(recording, LogOptions.USUAL));
    }

    private static LogOptions options(Forward forward) {
        return new LogOptions(Position.SEAT, forward, Gravity.FOUND, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
    }

    /** Of r.m.s. 1 m/s². */
    private static DoubleUnaryOperator sine(double frequency) {
        return t -> Math.sqrt(2) * Math.sin(2 * Math.PI * frequency * t);
    }

    private static Recording askew(
            double[] times, DoubleUnaryOperator forward, DoubleUnaryOperator left, DoubleUnaryOperator up) {
        return turned(ExampleLog.turned(1.1, -0.5, 0.7), times, forward, left, up);
    }

    private static Recording turned(
            double[][] phone,
            double[] times,
            DoubleUnaryOperator forward,
            DoubleUnaryOperator left,
            DoubleUnaryOperator up) {
        DoubleUnaryOperator[] columns = new DoubleUnaryOperator[3];
        for (int axis = 0; axis < 3; axis++) {
            double[] row = phone[axis];
            columns[axis] = t -> row[0] * forward.applyAsDouble(t)
                    + row[1] * left.applyAsDouble(t)
                    + row[2] * (G + up.applyAsDouble(t));
        }
        return Logs.of(times, columns[0], columns[1], columns[2]);
    }

    private static double[] jittered(double rate, double duration, double share) {
        Random random = new Random(11);
        return Arrays.stream(Logs.even(rate, duration))
                .map(t -> t == 0 ? 0 : t + share / rate * (2 * random.nextDouble() - 1))
                .toArray();
    }
}
