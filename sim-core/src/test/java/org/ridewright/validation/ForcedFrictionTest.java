package org.ridewright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;
import org.ridewright.dynamics.StaticState;
import org.ridewright.friction.ForcedPoint;
import org.ridewright.friction.ForcedRun;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.FrictionLaw;

/**
 * A vehicle of one degree of freedom on a sinusoidal road: 400 kg on 40 N/mm with friction F, straight above the ground. Its motion against the ground is that of {@code m ẍ + k x +
 * F sgn ẋ = F₀ cos ωt}, {@code F₀ = m ω² Y}, for which Den Hartog gives the amplitude while it never stops. A slider of locked rate k_p stands for rigid friction but for a
 * series in {@code h = k_p^(−½)}; two locked rates, one four times the other, leave {@code X₀ = 2 X(h/2) − X(h)}. Source: {@link DenHartog#PAPER}.
 */
class ForcedFrictionTest {
    private static final double MASS = 400;
    private static final double RATE = 40e3;
    private static final double FRICTION = 100;
    /** With less friction, or nearer to resonance, a start from rest takes long to settle. */
    private static final double LEAST = 0.15;

    private static final double NEAREST = 0.2;

    private static ForcedPoint shaken(double locked, double road, double omega) {
        ForceLaw law = ForceLaw.spring(RATE).withFriction(FrictionLaw.single(0, FRICTION, locked * RATE));
        Element spring = new Element("spring", Element.Kind.CONTACT, new double[] {-1}, 0, law);
        Equations equations =
                new Equations(new double[] {MASS}, new double[] {0}, new double[] {0}, List.of(spring), 1);
        StaticState rest = new StaticState(new double[1], new double[1], new double[1], new double[1]);
        return new ForcedRun(equations, rest, new double[] {1}, -1, road, omega / (2 * Math.PI)).run();
    }

    @Test
    void aDrySpringOnASinusoidalRoadMovesByDenHartogsAmplitude() {
        int compared = 0;
        for (ReferenceTable.Row row :
                ReferenceTable.read("friction_oscillator_forced.csv").rows()) {
            double share = row.number("F_over_F0");
            if (row.given("X_closed").isEmpty() || share < LEAST || Math.abs(row.number("r") - 1) < NEAREST - 1e-9) {
                continue;
            }
            double omega = row.number("r") * Math.sqrt(RATE / MASS);
            double force = FRICTION / share;
            double road = force / (MASS * omega * omega);
            ForcedPoint once = shaken(5e3, road, omega);
            ForcedPoint stiffer = shaken(2e4, road, omega);
            if (once.settled() && stiffer.settled()) {
                double amplitude = (2 * stiffer.amplitude() - once.amplitude()) * road * RATE / force;
                assertThat(amplitude)
                        .as("r %s, F/F₀ %s", row.number("r"), share)
                        .isCloseTo(row.number("X_closed"), withinPercentage(1.0));
                compared++;
            }
        }
        assertThat(compared).isGreaterThanOrEqualTo(8);
    }
}
