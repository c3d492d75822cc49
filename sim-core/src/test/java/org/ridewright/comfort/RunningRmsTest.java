package org.ridewright.comfort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.ridewright.signal.Channel;
import org.ridewright.signal.Sines;

class RunningRmsTest {
    @Test
    void ofASineOverWholePeriodsIsAmplitudeOverRootTwo() {
        Channel running = new RunningRms(Sines.sine(100, 5, 3, 4)).channel();
        for (int i = 100; i < running.size(); i++) {
            assertThat(running.sample(i)).isEqualTo(3 / Math.sqrt(2), within(1e-12));
        }
    }

    @Test
    void ofASineBuildsUpFromRestAsItsIntegral() {
        // ∫₀ᵗ sin²(ωt) dt = t/2 − sin(2ωt)/(4ω)
        double w = 2 * Math.PI * 4;
        Channel running = new RunningRms(Sines.sine(2000, 1, 1, 4)).channel();
        for (int i = 0; i <= 2000; i++) {
            double t = i / 2000.0;
            double exact = t / 2 - Math.sin(2 * w * t) / (4 * w);
            assertThat(running.sample(i) * running.sample(i)).isEqualTo(exact, within(1e-6));
        }
    }

    @Test
    void ofARectangularBurstRisesStaysAndFalls() {
        // 0.4 s of 2 m/s² (400 samples at 1 kHz) in 3 s: a_w(t0) = 2 √(covered time/1 s)
        double[] a = new double[3001];
        for (int i = 500; i < 900; i++) {
            a[i] = 2;
        }
        Channel burst = new Channel("burst", "m/s²", 1000, 0, a);
        RunningRms running = new RunningRms(burst);
        Channel r = running.channel();
        assertThat(r.sample(400)).isZero();
        assertThat(r.sample(699)).isEqualTo(2 * Math.sqrt(0.1995), within(1e-12));
        assertThat(r.sample(1200)).isEqualTo(2 * Math.sqrt(0.4), within(1e-12));
        assertThat(r.sample(1800)).isEqualTo(2 * Math.sqrt(0.0995), within(1e-12));
        assertThat(r.sample(2000)).isZero();
        assertThat(running.maximum(Window.of(burst))).isEqualTo(2 * Math.sqrt(0.4), within(1e-12));
    }

    @Property(tries = 40)
    void agreesWithSummingEachWindowAnew(@ForAll @DoubleRange(min = 0.011, max = 0.9) @Scale(5) double tau) {
        double fs = 100;
        double[] a = new Random(7).doubles(300, -1, 1).toArray();
        Channel channel = new Channel("noise", "m/s²", fs, -2, a);
        Channel running = new RunningRms(channel, tau).channel();
        for (int i = 95; i < a.length; i += 13) {
            // whole intervals from the right, then the part of one more, |a|² straight between samples
            int whole = (int) Math.floor(tau * fs + 1e-6);
            double sum = 0;
            for (int j = i - whole; j < i; j++) {
                sum += (a[j] * a[j] + a[j + 1] * a[j + 1]) / 2;
            }
            double rest = Math.max(0, tau * fs - whole);
            double right = a[i - whole] * a[i - whole];
            double left = i - whole > 0 ? a[i - whole - 1] * a[i - whole - 1] : 0;
            sum += rest * (right + rest / 2 * (left - right));
            assertThat(running.sample(i)).isEqualTo(Math.sqrt(sum / fs / tau), within(1e-9));
        }
    }

    /** The maximum keeps only the last integration time of samples; the channel of running values keeps all. */
    @Property(tries = 40)
    void maximumIsTheLargestOfAllRunningValuesInTheWindow(
            @ForAll long seed,
            @ForAll @DoubleRange(min = 10, max = 400) double fs,
            @ForAll @DoubleRange(min = 0.2, max = 1.5) double tau) {
        double[] a = new Random(seed).doubles((int) (5 * fs), -1, 1).toArray();
        Channel channel = new Channel("noise", "m/s²", fs, 3, a);
        RunningRms running = new RunningRms(channel, tau);
        Channel values = running.channel();
        int first = (int) Math.ceil(1.7 * fs);
        double largest = 0;
        for (int i = first; i < a.length; i++) {
            largest = Math.max(largest, values.sample(i));
        }
        Window window = new Window(channel.time(first) - tau, channel.end());
        assertThat(running.maximum(window)).isEqualTo(largest, within(1e-9));
    }

    @Test
    void aQuietPassageAfterAViolentOneIsExact() {
        // 1e4 m/s² for a while, then a sine of 1e-6 m/s²: plain running sums would lose the latter altogether
        Channel channel =
                Sines.sampled(100, 60, t -> t < 30 ? 1e4 * Math.sin(99 * t) : 1e-6 * Math.sin(2 * Math.PI * 5 * t));
        Channel running = new RunningRms(channel).channel();
        for (int i = 3200; i <= 6000; i++) {
            assertThat(running.sample(i)).isEqualTo(1e-6 / Math.sqrt(2), within(1e-12));
        }
    }

    @Test
    void aWindowOfExactlyTheIntegrationTimeHasOneValue() {
        Channel channel = Sines.sine(1000, 3, 1, 5);
        assertThat(new RunningRms(channel).maximum(new Window(0.30003, 1.30003)))
                .isEqualTo(Math.sqrt(0.5), within(1e-5));
    }

    @Test
    void tooShortWindowsAndTimesAreRefused() {
        Channel channel = Sines.sine(100, 3, 1, 5);
        assertThatThrownBy(() -> new RunningRms(channel).maximum(new Window(1, 1.6)))
                .hasMessageContaining("window must be ≥ the integration time of 1.0 s");
        assertThatThrownBy(() -> new RunningRms(channel, 0.001))
                .hasMessageContaining("integration time must be ≥ the sampling interval");
        assertThatThrownBy(() -> new RunningRms(channel).maximum(new Window(1, 3.5)))
                .hasMessageContaining("window must lie within 0.0 s to 3.0 s");
    }
}
