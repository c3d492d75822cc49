package org.ridewright.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class SampledFilterTest {
    private static final AnalogueFilter RESONANT = new AnalogueFilter(1, List.of(FilterSection.lowPass(3, 2)));
    private static final AnalogueFilter BAND = new AnalogueFilter(
            0.8,
            List.of(
                    FilterSection.highPass(0.5, 0.7),
                    FilterSection.lowPass(40, 0.7),
                    FilterSection.step(2, 0.9, 3, 1)));

    /** u = 1 − cos(Ωt) from rest on x″ + 2ζω x′ + ω² x = ω² u, the classical solution. */
    @Test
    void transientFromRestFollowsTheDifferentialEquation() {
        double w = 2 * Math.PI * 3;
        double zeta = 0.25;
        double big = 2 * Math.PI * 2;
        double wd = w * Math.sqrt(1 - zeta * zeta);
        // steady part 1 − P cos Ωt − R sin Ωt; free part from x(0) = x′(0) = 0
        double den = Math.pow(w * w - big * big, 2) + Math.pow(2 * zeta * w * big, 2);
        double p = w * w * (w * w - big * big) / den;
        double r = w * w * 2 * zeta * w * big / den;
        double c = p - 1;
        double s = (r * big + zeta * w * c) / wd;

        Channel y = RESONANT.apply(Sines.sampled(500, 3, t -> 1 - Math.cos(big * t)));
        for (int i = 0; i < y.size() - 2 * InterpolationKernel.HALF_WIDTH; i++) {
            double t = y.time(i);
            double steady = 1 - p * Math.cos(big * t) - r * Math.sin(big * t);
            double free = Math.exp(-zeta * w * t) * (c * Math.cos(wd * t) + s * Math.sin(wd * t));
            assertThat(y.sample(i)).as("at %s s", t).isEqualTo(steady + free, within(2e-4));
        }
    }

    @Test
    void constantPassesALowPassExactlyAndStaysToTheLastSample() {
        Channel y = RESONANT.apply(Sines.sampled(50, 20, t -> 2.5));
        for (int i = y.size() - 100; i < y.size(); i++) {
            assertThat(y.sample(i)).isEqualTo(2.5, within(1e-12));
        }
    }

    @Test
    void samplingRateDoesNotMatterForASmoothPulse() {
        Channel coarse = BAND.apply(Sines.sampled(100, 4, SampledFilterTest::pulse));
        Channel fine = BAND.apply(Sines.sampled(20_000, 4, SampledFilterTest::pulse));
        for (int i = 0; i < coarse.size(); i++) {
            assertThat(coarse.sample(i)).isEqualTo(fine.sample(200 * i), within(1e-4));
        }
    }

    private static double pulse(double t) {
        double x = (t - 1) / 0.02;
        return Math.exp(-x * x / 2);
    }

    @Test
    void laterInputGivesTheSameOutputLater() {
        double[] burst = new Random(1).doubles(60, -1, 1).toArray();
        double[] early = new double[400];
        double[] late = new double[400];
        System.arraycopy(burst, 0, early, 50, burst.length);
        System.arraycopy(burst, 0, late, 150, burst.length);
        Channel a = BAND.apply(new Channel("early", "1", 200, 0, early));
        Channel b = BAND.apply(new Channel("late", "1", 200, 0, late));
        for (int i = 0; i < 300; i++) {
            assertThat(b.sample(i + 100)).isEqualTo(a.sample(i), within(1e-14));
        }
    }

    @Property(tries = 30)
    void responseToASumIsTheSumOfTheResponses(
            @ForAll @DoubleRange(min = -5, max = 5) double p, @ForAll @DoubleRange(min = -5, max = 5) double q) {
        SampledFilter filter = BAND.at(100);
        Channel one = filter.apply(Sines.sine(100, 2, 1, 7));
        Channel two = filter.apply(Sines.sampled(100, 2, SampledFilterTest::pulse));
        Channel both = filter.apply(Sines.sampled(100, 2, t -> p * Math.sin(2 * Math.PI * 7 * t) + q * pulse(t)));
        for (int i = 0; i < both.size(); i++) {
            assertThat(both.sample(i)).isEqualTo(p * one.sample(i) + q * two.sample(i), within(1e-13));
        }
    }

    @Test
    void polesFarAboveTheSamplingRateAreHarmless() {
        AnalogueFilter wide = new AnalogueFilter(1, List.of(FilterSection.lowPass(400, 0.7)));
        Channel u = Sines.sine(50, 4, 1, 4);
        Channel y = wide.apply(u);
        assertThat(Sines.gain(y, 4, 50, 150).subtract(wide.response(4)).norm()).isLessThan(2e-4);
    }

    @Test
    void wrongSamplingRatesAreRefused() {
        assertThatThrownBy(() -> RESONANT.at(100).apply(Sines.sine(200, 1, 1, 1)))
                .hasMessageContaining("must be sampled at 100.0 Hz, got 200.0 Hz");
        assertThatThrownBy(() -> RESONANT.at(0.01)).hasMessageContaining("sampling rate must be ≥");
        assertThatThrownBy(() -> RESONANT.at(-1)).hasMessageContaining("> 0 Hz");
    }
}
