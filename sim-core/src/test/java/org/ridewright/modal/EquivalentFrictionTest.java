package org.ridewright.modal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ridewright.suspension.FrictionLaw;

class EquivalentFrictionTest {
    private static final double LIMIT = 400;
    private static final FrictionLaw SLIDER = FrictionLaw.single(0, LIMIT, 80e3);
    private static final FrictionLaw SLIDERS =
            new FrictionLaw(0, LIMIT, new double[] {0.3, 0.7}, new double[] {60e3, 30e3}, 0);
    private static final FrictionLaw ENVELOPE = FrictionLaw.envelope(0, LIMIT, 2e-3);

    /** The law followed through cycles in small steps until it repeats, then its part in step with cos and with −sin. */
    private static EquivalentFriction followed(FrictionLaw law, double amplitude) {
        int steps = 20_000;
        double[] s = new double[law.states()];
        double inStep = 0;
        double work = 0;
        double c = 0;
        double force = 0;
        for (int i = 1; i <= 6 * steps; i++) {
            double angle = 2 * Math.PI * i / steps;
            double next = amplitude * Math.sin(angle);
            double before = force;
            force = 0;
            for (int j = 0; j < s.length; j++) {
                double limit = law.limitShares()[j] * LIMIT;
                double d = next - c;
                if (law.isEnvelope()) {
                    double target = Math.signum(d) * limit;
                    s[j] = target + (s[j] - target) * Math.exp(-Math.abs(d) / law.envelopeLength());
                } else {
                    s[j] = Math.max(-limit, Math.min(limit, s[j] + law.lockedRates()[j] * d));
                }
                force += s[j];
            }
            if (i > 5 * steps) {
                work += (force + before) / 2 * (next - c);
                inStep += force * Math.sin(angle) * 2 * Math.PI / steps;
            }
            c = next;
        }
        return new EquivalentFriction(inStep / (Math.PI * amplitude), work / (Math.PI * amplitude * amplitude));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-3, 4e-3, 6e-3, 12e-3, 50e-3, 0.3})
    void theClosedFormsAreTheFirstHarmonicOfTheLoop(double amplitude) {
        for (FrictionLaw law : new FrictionLaw[] {SLIDER, SLIDERS, ENVELOPE}) {
            EquivalentFriction closed = EquivalentFriction.of(law, LIMIT, amplitude);
            EquivalentFriction loop = followed(law, amplitude);
            double scale = LIMIT / amplitude;
            assertThat(closed.rate()).isCloseTo(loop.rate(), within(1e-3 * scale));
            assertThat(closed.loss()).isCloseTo(loop.loss(), within(1e-3 * scale));
        }
    }

    @Test
    void aSliderThatDoesNotSlipIsASpring() {
        assertThat(EquivalentFriction.of(SLIDER, LIMIT, 4.9e-3)).isEqualTo(new EquivalentFriction(80e3, 0));
    }

    /**
     * T. K. Caughey, Sinusoidal excitation of a system with bilinear hysteresis, J. Appl. Mech. 27 (1960) 640 (from memory), for the elastic slider by itself: in step {@code
     * (k_p/π)(θ − ½ sin 2θ)}, out of step {@code (k_p/π) sin² θ}, {@code cos θ = 1 − 2 x_s/X}.
     */
    @ParameterizedTest
    @ValueSource(doubles = {5.1e-3, 8e-3, 20e-3, 0.2})
    void aSliderIsCaugheysBilinearElement(double amplitude) {
        double theta = Math.acos(1 - 2 * 5e-3 / amplitude);
        EquivalentFriction slider = EquivalentFriction.of(SLIDER, LIMIT, amplitude);
        assertThat(slider.rate()).isCloseTo(80e3 / Math.PI * (theta - Math.sin(2 * theta) / 2), within(1e-6));
        assertThat(slider.loss()).isCloseTo(80e3 / Math.PI * Math.pow(Math.sin(theta), 2), within(1e-6));
    }

    /** Of rigid friction: 4 F X per cycle, c = 4F/(πωX). */
    @Test
    void atGreatAmplitudesTheLossIsThatOfCoulombFriction() {
        double x = 1;
        assertThat(EquivalentFriction.of(SLIDER, LIMIT, x).loss())
                .isCloseTo(4 * LIMIT / (Math.PI * x), within(0.0051 * 4 * LIMIT / (Math.PI * x)));
        assertThat(EquivalentFriction.of(SLIDER, LIMIT, x).rate()).isLessThan(80);
    }

    @Test
    void withoutALimitThereIsNothing() {
        assertThat(EquivalentFriction.of(SLIDER, 0, 0.01)).isEqualTo(new EquivalentFriction(0, 0));
    }
}
