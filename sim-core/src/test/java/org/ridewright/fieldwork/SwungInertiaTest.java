package org.ridewright.fieldwork;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.ridewright.fieldwork.SwingTest.Axis;
import org.ridewright.fieldwork.SwingTest.Hung;
import org.ridewright.fieldwork.SwingTest.Part;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Provenance;
import org.ridewright.quantity.QuantityKind;

/** Bodies whose inertia and period are known in closed form. */
class SwungInertiaTest {
    private static final double G = 9.80665;
    private static final double MASS = 12;

    /** A rod on its end: {@code T = 2π √(2 l/3g)}, {@code I = m l²/12}. */
    @Test
    void aRodSwingingOnItsEnd() {
        double l = 1.4;
        double period = 2 * Math.PI * Math.sqrt(2 * l / (3 * G));

        assertThat(inertia(new Hung.OnPivot(length(l / 2)), period)).isCloseTo(MASS * l * l / 12, exact());
    }

    /** A rod on upright wires at its ends: {@code T = 2π √(w/3g)}, whatever its length. */
    @Test
    void aRodTurningOnWiresAtItsEnds() {
        double l = 1.4;
        double wire = 2;
        double period = 2 * Math.PI * Math.sqrt(wire / (3 * G));
        Measure apart = length(l);

        assertThat(inertia(new Hung.OnTwoWires(length(wire), apart, Optional.empty()), period))
                .isCloseTo(MASS * l * l / 12, exact());
    }

    /** A thin ring on three wires at its rim swings like a point on one of them: {@code T = 2π √(w/g)}. */
    @Test
    void aRingOnThreeWires() {
        double r = 0.6;
        double wire = 1.5;
        Measure radius = length(r);

        assertThat(inertia(
                        new Hung.OnThreeWires(length(wire), radius, Optional.empty()),
                        2 * Math.PI * Math.sqrt(wire / G)))
                .isCloseTo(MASS * r * r, exact());
    }

    /** Wires that lean: the stiffness is the second difference of the exact height over a small turn. */
    @Test
    void wiresThatLean() {
        double wire = 1.5;
        double above = 0.9;
        double below = 0.5;
        double inertia = 0.7;
        double turn = 1e-3;
        double stiffness = 2 * MASS * G * rise(wire, above / 2, below / 2, turn) / (turn * turn);
        double period = 2 * Math.PI * Math.sqrt(inertia / stiffness);

        assertThat(inertia(new Hung.OnTwoWires(length(wire), length(above), Optional.of(length(below))), period))
                .isCloseTo(inertia, Percentage.withPercentage(1e-3));
    }

    /** {@code u(I)/I} of a ring on wires is twice that of the time where all else is exact. */
    @Test
    void halfAPercentOfTimeIsOnePercentOfInertia() {
        Measure radius = length(0.6);
        SwingTest test = test(new Hung.OnThreeWires(length(1.5), radius, Optional.empty()), 2.4, 0.005 * 10 * 2.4);

        Measure inertia = SwungInertia.of(test);

        assertThat(inertia.tolerance() / inertia.value()).isCloseTo(0.01, Percentage.withPercentage(0.1));
    }

    private static double rise(double wire, double above, double below, double turn) {
        return Math.sqrt(wire * wire - (above - below) * (above - below))
                - Math.sqrt(wire * wire - above * above - below * below + 2 * above * below * Math.cos(turn));
    }

    private static double inertia(Hung hung, double period) {
        return SwungInertia.of(test(hung, period, 0)).value();
    }

    private static SwingTest test(Hung hung, double period, double tolerance) {
        return new SwingTest(
                Heading.NONE,
                new Part.Body(),
                Axis.YAW,
                Measure.of(MASS, QuantityKind.MASS),
                hung,
                10,
                new Measure(QuantityKind.TIME, 10 * period, tolerance, Provenance.MEASURED, ""));
    }

    private static Measure length(double value) {
        return Measure.of(value, QuantityKind.LENGTH);
    }

    private static Percentage exact() {
        return Percentage.withPercentage(1e-9);
    }
}
