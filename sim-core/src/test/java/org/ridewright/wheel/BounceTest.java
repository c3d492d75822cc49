package org.ridewright.wheel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BounceTest {
    /** Unit mass and rate, speed 1: integrated by Runge-Kutta until the contact no longer pushes. */
    private static double integrated(double zeta) {
        double h = 1e-4;
        double c = 0;
        double v = 1;
        double force = 2 * zeta * v;
        double lastForce = force;
        double lastV = v;
        while (force >= 0) {
            lastForce = force;
            lastV = v;
            double[] k1 = {v, -c - 2 * zeta * v};
            double[] k2 = rate(c, v, k1, h / 2, zeta);
            double[] k3 = rate(c, v, k2, h / 2, zeta);
            double[] k4 = rate(c, v, k3, h, zeta);
            c += h / 6 * (k1[0] + 2 * k2[0] + 2 * k3[0] + k4[0]);
            v += h / 6 * (k1[1] + 2 * k2[1] + 2 * k3[1] + k4[1]);
            force = c + 2 * zeta * v;
        }
        return -(lastV + (v - lastV) * lastForce / (lastForce - force));
    }

    private static double[] rate(double c, double v, double[] k, double h, double zeta) {
        double c1 = c + h * k[0];
        double v1 = v + h * k[1];
        return new double[] {v1, -c1 - 2 * zeta * v1};
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.1, 0.15, 0.3, 0.7, 0.95, 0.9999999, 1, 1.0000001, 1.2, 3})
    void restitutionIsWhatAnIntegratedBounceLeaves(double zeta) {
        assertThat(Bounce.restitution(zeta)).isCloseTo(integrated(zeta), within(2e-8));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.15, 0.6, 0.71, 0.9})
    void restitutionIsTheModelsFormula(double zeta) {
        double root = Math.sqrt(1 - zeta * zeta);
        double formula = Math.exp(-zeta / root * (Math.PI - Math.atan2(2 * zeta * root, 1 - 2 * zeta * zeta)));

        assertThat(Bounce.restitution(zeta)).isCloseTo(formula, within(1e-14));
    }

    @Test
    void aTenthOfCriticalDampingGivesBackThreeQuartersOfTheSpeed() {
        assertThat(Bounce.restitution(0.1)).isCloseTo(0.74, within(0.005));
    }

    @Test
    void anUndampedContactGivesAllSpeedBackAndACriticalOneESquared() {
        assertThat(Bounce.restitution(0)).isEqualTo(1);
        assertThat(Bounce.dampingRatio(1)).isCloseTo(0, within(1e-15));
        assertThat(Bounce.restitution(1)).isCloseTo(Math.exp(-2), within(1e-15));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-4})
    void seriesAndClosedFormsMeetNearCriticalDamping(double past) {
        double jump = 1e-9;
        for (double zeta : new double[] {1 - past, 1 + past}) {
            double below = Bounce.restitution(zeta - jump);
            double above = Bounce.restitution(zeta + jump);
            // slope of e at ζ = 1 is −(4/3) e⁻²
            assertThat(below - above).isCloseTo(2 * jump * 4 / 3 * Math.exp(-2), within(1e-12));
        }
    }

    @Property(tries = 200)
    void dampingRatioUndoesRestitution(@ForAll @Scale(4) @DoubleRange(min = 0.001, max = 1) double e) {
        assertThat(Bounce.restitution(Bounce.dampingRatio(e))).isCloseTo(e, within(1e-12));
    }

    @Test
    void restitutionOutsideItsRangeIsRefused() {
        assertThatThrownBy(() -> Bounce.dampingRatio(0)).hasMessageContaining("above 0, up to 1, got 0.0");
        assertThatThrownBy(() -> Bounce.dampingRatio(1.01)).hasMessageContaining("got 1.01");
        assertThatThrownBy(() -> Bounce.restitution(-0.1)).hasMessageContaining("≥ 0, got -0.1");
    }
}
