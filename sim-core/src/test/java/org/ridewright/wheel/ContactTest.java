package org.ridewright.wheel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Provenance;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Damping;
import org.ridewright.vehicle.PathKind;
import org.ridewright.vehicle.Tyre;
import org.ridewright.vehicle.Wheel;

class ContactTest {
    private static Wheel wheel(Optional<Measure> rate, Damping damping) {
        return new Wheel(
                Measure.of(1, QuantityKind.LENGTH),
                Tyre.IRON,
                PathKind.DISC,
                Optional.empty(),
                rate,
                damping,
                Measure.of(0, QuantityKind.INERTIA));
    }

    private static Optional<Measure> rate(double value) {
        return Optional.of(Measure.of(value, QuantityKind.RATE));
    }

    private static Measure ratio(double value) {
        return Measure.of(value, QuantityKind.RATIO);
    }

    @Test
    void wheelAndGroundOfOneRateYieldTwiceAsMuch() {
        assertThat(Contact.seriesRate(2e6, 2e6)).isEqualTo(1e6);
        assertThat(Contact.seriesRate(2e6, Double.POSITIVE_INFINITY)).isEqualTo(2e6);
        assertThat(1 / Contact.seriesRate(3e6, 5e5)).isCloseTo(1 / 3e6 + 1 / 5e5, within(1e-20));
    }

    /** Ground like the wheel, damping and all, halves both; ground as hard as rock leaves the wheel's own. */
    @Test
    void wheelAndGroundEachDampTheirShareOfTheGive() {
        SeriesPair alike = new SeriesPair(2e6, 800, 2e6, 800);
        assertThat(alike.rate()).isEqualTo(1e6);
        assertThat(alike.damping()).isCloseTo(400, within(1e-12));
        SeriesPair rock = new SeriesPair(2e6, 800, 1e15, 800);
        assertThat(rock.damping()).isCloseTo(800, within(1e-5));
        assertThat(new SeriesPair(2e6, 800, 1e6, 900).damping()).isCloseTo(800 / 9.0 + 900 * 4 / 9.0, within(1e-9));
    }

    /** Against the pair itself, by complex arithmetic. */
    @Test
    void theLawLeavesOutWhatItSays() {
        double k1 = 3e6;
        double d1 = 3000;
        double k2 = 1e6;
        double d2 = 400;
        SeriesPair pair = new SeriesPair(k1, d1, k2, d2);
        for (double omega : new double[] {10, 100, 300}) {
            Complex exact = new Complex(k1, omega * d1)
                    .multiply(new Complex(k2, omega * d2))
                    .divide(new Complex(k1 + k2, omega * (d1 + d2)));
            Complex law = new Complex(pair.rate(), omega * pair.damping());
            assertThat(pair.error(omega)).isCloseTo(exact.subtract(law).norm() / law.norm(), within(1e-10));
        }
        assertThat(new SeriesPair(k1, 3 * d2, k2, d2).error(300)).isCloseTo(0, within(1e-15));
    }

    @Test
    void groundThatStatesItsDampingLeavesTheWheelItsOwn() {
        Ground ground = new Ground(rate(1e6), Optional.of(Measure.of(5000, QuantityKind.DAMPING)));
        Contact contact = Contact.of(wheel(rate(3e6), new Damping.Ratio(ratio(0.1))), ground, 40);
        double own = 0.2 * Math.sqrt(3e6 * 40);
        assertThat(contact.damping()).isCloseTo(own / 16 + 5000 * 9 / 16.0, within(1e-9));
        assertThat(contact.rate()).isCloseTo(0.75e6, within(1e-6));
        assertThat(contact.lawError()).isGreaterThan(0.01);
    }

    @Test
    void aWheelAtTheRadiusOfGyrationBouncesWithHalfTheAxle() {
        assertThat(Contact.effectiveMass(80, 80 * 0.6 * 0.6, 0.6)).isCloseTo(40, within(1e-12));
        assertThat(Contact.effectiveMass(80, 20, 0)).isEqualTo(80);
    }

    @Test
    void dampingIsUnderstoodInEveryFormItIsGiven() {
        double k = 1e6;
        double m = 40;
        Contact byRatio = Contact.of(wheel(rate(k), new Damping.Ratio(ratio(0.2))), Ground.UNYIELDING, m);
        Contact byCoefficient = Contact.of(
                wheel(rate(k), new Damping.Coefficient(Measure.of(byRatio.damping(), QuantityKind.DAMPING))),
                Ground.UNYIELDING,
                m);
        Contact byRestitution = Contact.of(
                wheel(rate(k), new Damping.Restitution(ratio(Bounce.restitution(0.2)))), Ground.UNYIELDING, m);

        assertThat(byRatio.damping()).isCloseTo(2 * 0.2 * Math.sqrt(k * m), within(1e-9));
        assertThat(byCoefficient.dampingRatio()).isCloseTo(0.2, within(1e-14));
        assertThat(byRestitution.damping()).isCloseTo(byRatio.damping(), within(1e-8));
        assertThat(byRatio.isLively()).isFalse();
    }

    @Test
    void whatIsNotGivenIsTakenFromTheTyre() {
        Contact contact = Contact.of(
                wheel(Optional.empty(), new Damping.NotGiven()), new Ground(rate(3e6), Optional.empty()), 50);

        assertThat(contact.rate()).isCloseTo(1.5e6, within(1e-6));
        assertThat(contact.dampingRatio()).isEqualTo(0.15);
    }

    @ParameterizedTest
    @EnumSource(Tyre.class)
    void defaultsSayThatTheyAreCommonPractice(Tyre tyre) {
        for (Measure value : new Measure[] {Contact.defaultRate(tyre), Contact.defaultDampingRatio(tyre)}) {
            assertThat(value.provenance()).isEqualTo(Provenance.ESTIMATED);
            assertThat(value.written()).contains("common practice").startsWith(tyre.word());
        }
    }

    @Test
    void rangesAreKept() {
        assertThatThrownBy(() -> Contact.of(wheel(rate(0), new Damping.NotGiven()), Ground.UNYIELDING, 40))
                .hasMessage("contact rate of a wheel must be > 0 N/m, got 0.0 N/m");
        assertThatThrownBy(() -> Contact.of(wheel(rate(1e6), new Damping.NotGiven()), Ground.UNYIELDING, 0))
                .hasMessage("effective mass at a contact must be > 0 kg, got 0.0 kg");
        assertThatThrownBy(() -> Contact.of(wheel(rate(1e6), new Damping.Ratio(ratio(-0.1))), Ground.UNYIELDING, 40))
                .hasMessageContaining("must be ≥ 0, got -0.1");
    }
}
