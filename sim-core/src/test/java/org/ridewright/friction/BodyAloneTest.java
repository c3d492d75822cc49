package org.ridewright.friction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class BodyAloneTest {
    private static final BodyAlone ALONE = BodyAlone.of(OneDegree.with("{constant: 100 N, locked rate: 3 times}"));

    @Test
    void massRateAndLimitAreThoseOfTheVehicle() {
        assertThat(ALONE.mass()).isCloseTo(OneDegree.MASS, within(1e-9));
        assertThat(ALONE.rate()).isCloseTo(OneDegree.RATE, within(1e-6));
        assertThat(ALONE.limit()).isCloseTo(100, within(1e-9));
    }

    @Test
    void withFrictionAsGoodAsRigidItMovesByDenHartogsAmplitude() {
        assertThat(ALONE.curves()).allSatisfy(curve -> assertThat(curve.rigid()).hasSizeGreaterThan(3));
        assertThat(ALONE.departure()).isLessThan(0.03);
    }

    @Test
    void aSoftSliderMovesOtherwise() {
        BodyAlone.Curve curve = ALONE.curves().get(1);
        double most = curve.given().stream()
                .map(p -> p.amplitude() / ALONE.closed(curve, p) - 1)
                .filter(Double::isFinite)
                .mapToDouble(Math::abs)
                .max()
                .orElseThrow();
        assertThat(most).isGreaterThan(3 * ALONE.departure());
    }
}
