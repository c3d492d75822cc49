package org.ridewright.comfort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class DailyExposureTest {
    private static final double HOUR = 3600;

    /** A minute of a_w and VDV. */
    private static VibrationMetrics minute(double rms, double vdv) {
        return new VibrationMetrics(new Window(5, 65), rms, rms, vdv, 3 * rms, 4 * rms);
    }

    private static final Map<Axis, VibrationMetrics> RIDE =
            Map.of(Axis.X, minute(0.3, 2), Axis.Y, minute(0.2, 1), Axis.Z, minute(0.4, 3), Axis.ROLL, minute(9, 9));

    @Test
    void eightHoursOfRidingHaveTheMeasuredAccelerationTimesK() {
        DailyExposure day = DailyExposure.of(RIDE, 8 * HOUR);
        assertThat(day.axes()).extracting(DailyExposure.AxisDose::axis).containsExactly(Axis.X, Axis.Y, Axis.Z);
        // 1.4 · 0.3 = 0.42 beats z with 0.4
        assertThat(day.worstByA8().axis()).isEqualTo(Axis.X);
        assertThat(day.worstByA8().a8()).isEqualTo(0.42, within(1e-12));
        // 3 (480)^¼ beats 2.8 (480)^¼
        assertThat(day.worstByVdv().axis()).isEqualTo(Axis.Z);
        assertThat(day.worstByVdv().vdv()).isEqualTo(3 * Math.pow(480, 0.25), within(1e-9));
    }

    @Test
    void aQuarterOfTheTimeIsHalfOfA8() {
        assertThat(DailyExposure.of(RIDE, 2 * HOUR).worstByA8().a8()).isEqualTo(0.21, within(1e-12));
    }

    @Property(tries = 30)
    void timeToReachIsTheTimeAfterWhichTheDayHasTheValue(
            @ForAll @DoubleRange(min = 0.3, max = 3) double rms, @ForAll @DoubleRange(min = 4, max = 12) double vdv) {
        Map<Axis, VibrationMetrics> ride = Map.of(Axis.Y, minute(rms, 0.5 * vdv), Axis.Z, minute(rms, vdv));
        for (ExposureThreshold threshold : ExposureThreshold.values()) {
            double a = DailyExposure.timeToA8(ride, threshold);
            double v = DailyExposure.timeToVdv(ride, threshold);
            if (a <= 24 * HOUR) {
                assertThat(DailyExposure.of(ride, a).worstByA8().a8()).isEqualTo(threshold.eightHours(), within(1e-9));
            }
            if (v <= 24 * HOUR) {
                assertThat(DailyExposure.of(ride, v).worstByVdv().vdv()).isEqualTo(threshold.dose(), within(1e-9));
            }
        }
    }

    /** 1.15 m/s² for 8 h is the limit; twice as much is reached in a quarter of the time, 0.5 m/s² the action value. */
    @Test
    void timesToTheDirectivesValues() {
        Map<Axis, VibrationMetrics> hard = Map.of(Axis.Z, minute(2.3, 10));
        assertThat(DailyExposure.timeToA8(hard, ExposureThreshold.DIRECTIVE_LIMIT))
                .isEqualTo(2 * HOUR, within(1e-6));
        assertThat(DailyExposure.timeToA8(hard, ExposureThreshold.DIRECTIVE_ACTION))
                .isEqualTo(8 * HOUR * Math.pow(0.5 / 2.3, 2), within(1e-6));
        assertThat(DailyExposure.timeToVdv(hard, ExposureThreshold.DIRECTIVE_LIMIT))
                .isEqualTo(60 * Math.pow(2.1, 4), within(1e-6));
        assertThat(DailyExposure.timeToA8(Map.of(Axis.Z, minute(0, 0)), ExposureThreshold.DIRECTIVE_LIMIT))
                .isInfinite();
    }

    @Test
    void partsOfADayAddBySquaresAndFourthPowers() {
        DailyExposure morning = DailyExposure.of(RIDE, HOUR);
        DailyExposure noon = DailyExposure.of(RIDE, 3 * HOUR);
        DailyExposure day = DailyExposure.together(List.of(morning, noon));
        DailyExposure whole = DailyExposure.of(RIDE, 4 * HOUR);
        for (int i = 0; i < 3; i++) {
            assertThat(day.axes().get(i).a8()).isEqualTo(whole.axes().get(i).a8(), within(1e-12));
            assertThat(day.axes().get(i).vdv()).isEqualTo(whole.axes().get(i).vdv(), within(1e-12));
        }
    }

    @Test
    void theCautionSaysWhatItIsNot() {
        assertThat(DailyExposure.CAUTION)
                .contains("no assessment of health")
                .contains("local rules")
                .contains("licensed to practise");
    }

    @Test
    void whatIsNoDayIsRefused() {
        assertThatThrownBy(() -> DailyExposure.of(RIDE, 0)).hasMessageContaining("> 0 s");
        assertThatThrownBy(() -> DailyExposure.of(RIDE, 90_000)).hasMessageContaining("≤ 86400");
        assertThatThrownBy(() -> DailyExposure.of(Map.of(Axis.YAW, minute(1, 1)), HOUR))
                .hasMessageContaining("at least 1 of the axes");
        assertThatThrownBy(() -> DailyExposure.factor(Axis.YAW)).hasMessageContaining("X, Y, Z only");
    }
}
