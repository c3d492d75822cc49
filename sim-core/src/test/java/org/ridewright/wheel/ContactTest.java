package org.ridewright.wheel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
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

    @Test
    void aWheelAtTheRadiusOfGyrationBouncesWithHalfTheAxle() {
        assertThat(Contact.effectiveMass(80, 80 * 0.6 * 0.6, 0.6)).isCloseTo(40, within(1e-12));
        assertThat(Contact.effectiveMass(80, 20, 0)).isEqualTo(80);
    }

    @Test
    void dampingIsUnderstoodInEveryFormItIsGiven() {
        double k = 1e6;
        double m = 40;
        Contact byRatio = Contact.of(wheel(rate(k), new Damping.Ratio(ratio(0.2))), Optional.empty(), m);
        Contact byCoefficient = Contact.of(
                wheel(rate(k), new Damping.Coefficient(Measure.of(byRatio.damping(), QuantityKind.DAMPING))),
                Optional.empty(),
                m);
        Contact byRestitution = Contact.of(
                wheel(rate(k), new Damping.Restitution(ratio(Bounce.restitution(0.2)))), Optional.empty(), m);

        assertThat(byRatio.damping()).isCloseTo(2 * 0.2 * Math.sqrt(k * m), within(1e-9));
        assertThat(byCoefficient.dampingRatio()).isCloseTo(0.2, within(1e-14));
        assertThat(byRestitution.damping()).isCloseTo(byRatio.damping(), within(1e-8));
        assertThat(byRatio.isLively()).isFalse();
    }

    @Test
    void whatIsNotGivenIsTakenFromTheTyre() {
        Contact contact = Contact.of(wheel(Optional.empty(), new Damping.NotGiven()), rate(3e6), 50);

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
        assertThatThrownBy(() -> Contact.of(wheel(rate(0), new Damping.NotGiven()), Optional.empty(), 40))
                .hasMessage("contact rate of a wheel must be > 0 N/m, got 0.0 N/m");
        assertThatThrownBy(() -> Contact.of(wheel(rate(1e6), new Damping.NotGiven()), Optional.empty(), 0))
                .hasMessage("effective mass at a contact must be > 0 kg, got 0.0 kg");
        assertThatThrownBy(() -> Contact.of(wheel(rate(1e6), new Damping.Ratio(ratio(-0.1))), Optional.empty(), 40))
                .hasMessageContaining("must be ≥ 0, got -0.1");
    }
}
