package org.ridewright.comfort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ridewright.signal.AnalogueFilter;
import org.ridewright.signal.Channel;
import org.ridewright.signal.Detrend;
import org.ridewright.signal.FilterSection;
import org.ridewright.signal.PowerSpectrum;
import org.ridewright.signal.Sines;
import org.ridewright.signal.WelchAccumulator;

/** SEAT: ISO 10326-1 (from memory). */
class SeatEffectivenessTest {
    /** A cushion under a rigid mass: T = (1 + 2ζ s/ω)/(1 + 2ζ s/ω + s²/ω²), 3 Hz, ζ = 0.2. */
    private static final double W = 2 * Math.PI * 3;

    private static final AnalogueFilter CUSHION =
            new AnalogueFilter(1, List.of(new FilterSection(1, 0.4 / W, 0, 1, 0.4 / W, 1 / (W * W))));

    private static VibrationMetrics seat(Channel channel, Window window) {
        return VibrationMetrics.of(channel, Position.SEAT, Axis.Z, window);
    }

    private static Channel floor() {
        Random random = new Random(8);
        double[] a = random.doubles(200 * 200).map(u -> random.nextGaussian()).toArray();
        AnalogueFilter limit = new AnalogueFilter(1, List.of(FilterSection.lowPass(30, 0.7)));
        return limit.apply(new Channel("floor", "m/s²", 200, 0, a));
    }

    @Test
    void aRigidSeatHasOneHundredPercent() {
        Channel floor = floor();
        VibrationMetrics m = seat(floor, new Window(5, 190));
        SeatEffectiveness rigid = new SeatEffectiveness(m, m);
        assertThat(rigid.byRms()).isEqualTo(100);
        assertThat(rigid.byVdv()).isEqualTo(100);
    }

    @Test
    void ofASineAllFormsAreTheCushionsTransmissibility() {
        Channel floor = Sines.sine(200, 40, 1, 5);
        SeatEffectiveness s =
                new SeatEffectiveness(seat(floor, new Window(10, 30)), seat(CUSHION.apply(floor), new Window(10, 30)));
        double t = 100 * CUSHION.magnitude(5);
        assertThat(s.byRms()).isEqualTo(t, within(0.02));
        assertThat(s.byVdv()).isEqualTo(t, within(0.02));
        assertThat(s.hasShocks()).isFalse();
    }

    @Test
    void onBroadbandMotionTheSpectralFormAgreesWithTheTimeForm() {
        Channel floor = floor();
        Channel seat = CUSHION.apply(floor);
        Window window = new Window(5, 190);
        double time = new SeatEffectiveness(seat(floor, window), seat(seat, window)).byRms();
        PowerSpectrum gf = WelchAccumulator.of(2048, Detrend.MEAN, floor).power(0);
        PowerSpectrum gs = WelchAccumulator.of(2048, Detrend.MEAN, seat).power(0);
        // the two look at the 200 s with other weights, and 200 s of a resonance scatter by 1/(2 √(BT)), some 3 %
        assertThat(SeatEffectiveness.ofSpectra(gf, gs, Weighting.WK)).isEqualTo(time, within(0.02 * time));
        assertThat(SeatEffectiveness.expected(gf, CUSHION::magnitude, Weighting.WK))
                .isEqualTo(time, within(0.02 * time));
        assertThat(time).isBetween(60.0, 130.0);
    }

    @Test
    void aShockAsksForTheDoseForm() {
        Channel shock = Sines.sampled(500, 40, t -> 20 * Math.exp(-Math.pow((t - 20) / 0.05, 2)));
        VibrationMetrics m = seat(shock, new Window(5, 35));
        assertThat(new SeatEffectiveness(m, m).hasShocks()).isTrue();
        assertThatThrownBy(() -> new SeatEffectiveness(m, seat(shock, new Window(5, 34))))
                .hasMessageContaining("one window");
    }
}
