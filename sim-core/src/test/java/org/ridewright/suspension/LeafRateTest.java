package org.ridewright.suspension;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Elasticity.LeafPack;
import org.ridewright.vehicle.Elasticity.Leaves;
import org.ridewright.vehicle.SpringKind;

/**
 * Eight leaves 60 × 7 mm, 1 m eye to eye, E = 206 GPa. Source of the formulas: Mechanical Engineer's Data Handbook p. 35; numbers
 * computed from them. Extra full-length leaves: Bhandari, Design of Machine Elements, example 10.25 (from memory).
 */
class LeafRateTest {
    private static LeafPack pack(int number, int full, double length, double arm, double b, double t, double modulus) {
        return new LeafPack(
                List.of(new Leaves(number, length(b), length(t))),
                length(length),
                full,
                length(0),
                arm == 0 ? Optional.empty() : Optional.of(length(arm)),
                Measure.of(modulus, QuantityKind.PRESSURE));
    }

    private static Measure length(double value) {
        return Measure.of(value, QuantityKind.LENGTH);
    }

    @Test
    void halfFullAndQuarterEllipticSpringsHaveTheHandbookRates() {
        LeafPack one = pack(8, 0, 1, 0, 0.06, 0.007, 206e9);
        assertThat(LeafRate.of(SpringKind.HALF_ELLIPTIC, one)).isCloseTo(90_442.24, within(0.01));
        assertThat(LeafRate.of(SpringKind.FULL_ELLIPTIC, one)).isCloseTo(45_221.12, within(0.01));
        LeafPack half = pack(8, 0, 0.5, 0, 0.06, 0.007, 206e9);
        assertThat(LeafRate.of(SpringKind.QUARTER_ELLIPTIC, half)).isCloseTo(45_221.12, within(0.01));
    }

    @Test
    void aSpringClampedOffItsMiddleIsStiffer() {
        LeafPack uneven = pack(8, 0, 1, 0.55, 0.06, 0.007, 206e9);
        assertThat(LeafRate.of(SpringKind.HALF_ELLIPTIC, uneven)).isCloseTo(92_278.584, within(0.01));
    }

    @Test
    void extraFullLengthLeavesStiffenAsInTheTextbookExample() {
        LeafPack pack = pack(12, 2, 1.2, 0, 0.06, 0.012, 207e9);
        double deflection = 30_000 / LeafRate.of(SpringKind.HALF_ELLIPTIC, pack);
        assertThat(deflection).isCloseTo(0.0696767, within(1e-6));
    }

    @Test
    void anEvenCantileverSpringHasAQuarterOfTheHalfEllipticRate() {
        LeafPack one = pack(8, 0, 1, 0, 0.06, 0.007, 206e9);
        assertThat(LeafRate.of(SpringKind.CANTILEVER, one)).isCloseTo(90_442.24 / 4, within(0.01));
    }
}
