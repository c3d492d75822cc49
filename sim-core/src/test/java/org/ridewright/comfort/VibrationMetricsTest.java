package org.ridewright.comfort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ridewright.signal.Channel;
import org.ridewright.signal.Sines;

class VibrationMetricsTest {
    /** Metrics of a channel taken as weighted already. */
    private static VibrationMetrics plain(Channel channel, Window window) {
        return VibrationMetrics.of(channel, channel, window);
    }

    @ParameterizedTest
    @ValueSource(doubles = {100, 240, 4000})
    void aSineHasItsClosedForms(double fs) {
        VibrationMetrics m = plain(Sines.sine(fs, 10, 2, 5), new Window(1, 9));
        assertThat(m.rms()).isEqualTo(Math.sqrt(2), within(1e-12));
        assertThat(m.mtvv()).isEqualTo(Math.sqrt(2), within(1e-12));
        // ∫ sin⁴ over whole periods is 3T/8
        assertThat(m.vdv()).isEqualTo(2 * Math.pow(3.0 / 8 * 8, 0.25), within(1e-12));
        assertThat(m.peak()).isEqualTo(2, within(1e-9));
        assertThat(m.crestFactor()).isEqualTo(Math.sqrt(2), within(1e-9));
        assertThat(m.estimatedVdv()).isEqualTo(1.4 * Math.sqrt(2) * Math.pow(8, 0.25), within(1e-12));
        // (3/8)^¼ √2 = 1.107, below 1.4: a sine needs no further evaluation
        assertThat(m.vdvRatio()).isEqualTo(Math.pow(1.5, 0.25), within(1e-12));
        assertThat(m.vdvRatioExceeded() || m.mtvvRatioExceeded() || m.crestFactorExceeded())
                .isFalse();
    }

    @Test
    void aRectangularBurstHasItsClosedForms() {
        // 0.05 s of 3 m/s² in 10 s
        double[] a = new double[10_001];
        Arrays.fill(a, 4000, 4050, -3);
        Channel burst = new Channel("burst", "m/s²", 1000, 20, a);
        VibrationMetrics m = plain(burst, Window.of(burst));
        double share = 0.05 / 10;
        assertThat(m.rms()).isEqualTo(3 * Math.sqrt(share), within(1e-12));
        assertThat(m.mtvv()).isEqualTo(3 * Math.sqrt(0.05), within(1e-12));
        assertThat(m.vdv()).isEqualTo(3 * Math.pow(0.05, 0.25), within(1e-12));
        assertThat(m.crestFactor()).isEqualTo(1 / Math.sqrt(share), within(1e-9));
        assertThat(m.mtvvRatio()).isEqualTo(Math.sqrt(10), within(1e-9));
        assertThat(m.vdvRatio()).isEqualTo(Math.pow(share, -0.25), within(1e-9));
        assertThat(m.crestFactorExceeded()).isTrue();
        assertThat(m.mtvvRatioExceeded()).isTrue();
        assertThat(m.vdvRatioExceeded()).isTrue();
    }

    @Test
    void onlyTheWindowCounts() {
        Channel channel = Sines.sampled(500, 20, t -> (t < 10 ? 1 : 5) * Math.sin(2 * Math.PI * 4 * t));
        VibrationMetrics calm = plain(channel, new Window(2, 10));
        assertThat(calm.rms()).isEqualTo(Math.sqrt(0.5), within(1e-12));
        assertThat(calm.mtvv()).isEqualTo(Math.sqrt(0.5), within(1e-12));
        assertThat(calm.peak()).isEqualTo(1, within(1e-4));
        assertThat(plain(channel, new Window(10, 20)).rms()).isEqualTo(5 * Math.sqrt(0.5), within(1e-12));
    }

    @Test
    void windowEndsBetweenSamplesCountInPart() {
        // a² = 4 everywhere: the integral is 4T whatever the ends
        Channel channel = Sines.sampled(100, 5, t -> 2);
        VibrationMetrics m = plain(channel, new Window(1.0037, 3.1119));
        assertThat(m.rms()).isEqualTo(2, within(1e-9));
        assertThat(m.vdv()).isEqualTo(2 * Math.pow(3.1119 - 1.0037, 0.25), within(1e-9));
    }

    @Test
    void doseOfTwoPartsIsTheFourthRootOfSummedFourthPowers() {
        Channel channel = Sines.sampled(500, 20, t -> t * Math.sin(31 * t));
        double first = plain(channel, new Window(0, 7.3)).vdv();
        double second = plain(channel, new Window(7.3, 20)).vdv();
        double whole = plain(channel, Window.of(channel)).vdv();
        assertThat(Math.pow(whole, 4))
                .isEqualTo(Math.pow(first, 4) + Math.pow(second, 4), within(1e-7 * Math.pow(whole, 4)));
    }

    @Test
    void aSineAtTheSeatIsWeightedByTheAnalogueFactor() {
        Channel channel = Sines.sine(1000, 20, 1, 5);
        VibrationMetrics m = VibrationMetrics.of(channel, Position.SEAT, Axis.Z, new Window(9, 19));
        // Wk at 5 Hz: 1.039, ISO 2631-1:1997 table 3
        assertThat(m.rms()).isEqualTo(1.039 * Math.sqrt(0.5), within(5e-4));
        assertThat(m.rms()).isEqualTo(Weighting.WK.factor(5) * Math.sqrt(0.5), within(1e-4));
        assertThat(m.unweightedPeak()).isEqualTo(1, within(1e-9));
        assertThat(m.peak()).isEqualTo(Weighting.WK.factor(5), within(1e-3));
    }

    @Test
    void silenceHasNoCrestFactorAndExceedsNothing() {
        VibrationMetrics m = plain(Sines.sampled(100, 3, t -> 0), new Window(0, 3));
        assertThat(m.rms()).isZero();
        assertThat(m.crestFactor()).isNaN();
        assertThat(m.crestFactorExceeded() || m.mtvvRatioExceeded() || m.vdvRatioExceeded())
                .isFalse();
    }

    @Test
    void wrongUnitsAndWindowsAreRefused() {
        Channel channel = Sines.sine(100, 5, 1, 5);
        assertThatThrownBy(() -> VibrationMetrics.of(channel, Position.SEAT, Axis.PITCH, new Window(0, 5)))
                .hasMessageContaining("unit must be rad/s² for axis PITCH, got m/s²");
        assertThatThrownBy(() -> VibrationMetrics.of(channel, Position.SEAT, Axis.Z, new Window(-1, 5)))
                .hasMessageContaining("window must lie within");
        assertThatThrownBy(() -> new Window(2, 2)).hasMessageContaining("end after it begins");
    }
}
