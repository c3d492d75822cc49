package org.ridewright.suspension;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Attachment;
import org.ridewright.vehicle.Damper;
import org.ridewright.vehicle.Elasticity;
import org.ridewright.vehicle.Friction;
import org.ridewright.vehicle.Friction.LockedRate;
import org.ridewright.vehicle.SpringKind;

class ForceLawTest {
    /** The contract of every elastic law: its rate is the slope of its force, its energy the integral. */
    static Stream<ForceLaw> laws() {
        return Stream.of(
                ForceLaw.spring(30_000),
                SpringLaws.withStage(ForceLaw.spring(30_000), 50_000, 0.03, 1),
                SpringLaws.withStage(ForceLaw.spring(30_000), 50_000, -0.02, -1),
                SpringLaws.withStop(SpringLaws.withStage(ForceLaw.spring(30_000), 50_000, 0.03, 1), 90_000, 0.05, 1),
                table(-0.05, -2000, 0, 0, 0.03, 1000, 0.06, 4000),
                gas());
    }

    @ParameterizedTest
    @MethodSource("laws")
    void forceIsTheSlopeOfEnergyAndRateTheSlopeOfForce(ForceLaw law) {
        double h = 1e-6;
        for (double c = -0.045; c < 0.08; c += 0.0137) {
            assertThat((law.elasticEnergy(c + h) - law.elasticEnergy(c - h)) / (2 * h))
                    .isCloseTo(law.elasticForce(c), within(1e-3));
            assertThat((law.elasticForce(c + h) - law.elasticForce(c - h)) / (2 * h))
                    .isCloseTo(law.elasticRate(c), within(1e-1));
        }
    }

    @Test
    void aStopPressesNoLeafOnAnother() {
        FrictionLaw dry = FrictionLaw.single(0.1, 20, 60_000);
        ForceLaw helped = SpringLaws.withStage(ForceLaw.spring(30_000).withFriction(dry), 50_000, 0.03, 1);
        ForceLaw stopped = SpringLaws.withStop(SpringLaws.withStop(helped, 400_000, 0.05, 1), 90_000, 0.01, -1);
        for (double c = -0.045; c < 0.08; c += 0.0137) {
            assertThat(stopped.frictionLimit(c)).isEqualTo(helped.frictionLimit(c));
        }
        assertThat(stopped.elasticForce(0.07)).isCloseTo(helped.elasticForce(0.07) + 8000, within(1e-9));
        assertThat(stopped.frictionLimit(0.07)).isCloseTo(20 + 0.1 * (2100 + 2000), within(1e-9));
        assertThat(stopped.greatestLeafRate()).isCloseTo(80_000, within(1e-6));
        assertThat(stopped.greatestRate()).isCloseTo(480_000, within(1e-6));
    }

    @Test
    void aTableIsStraightBetweenItsPointsAndContinuesItsEnds() {
        ForceLaw law = table(-0.05, -2000, 0, 0, 0.03, 1000, 0.06, 4000);
        assertThat(law.elasticForce(0.03)).isCloseTo(1000, within(1e-9));
        assertThat(law.elasticForce(0.045)).isCloseTo(2500, within(1e-9));
        assertThat(law.elasticForce(0.08)).isCloseTo(6000, within(1e-9));
        assertThat(law.elasticForce(-0.025)).isCloseTo(-1000, within(1e-9));
        assertThat(law.elasticForce(-0.1)).isCloseTo(-4000, within(1e-9));
    }

    @Test
    void anAirSpringCarriesItsStatedLoadAtItsStatedVolume() {
        ForceLaw law = gas();
        double area = 0.015;
        double freeLength = law.gas().orElseThrow().length();
        double atLoad = freeLength - 0.0049 / area;
        assertThat(law.elasticForce(atLoad)).isCloseTo(4000, within(1e-6));
        assertThat(law.elasticForce(0)).isCloseTo(0, within(1e-12));
    }

    @Test
    void aDamperTableGivesNoForceAtRest() {
        Damper damper = new Damper(
                "d",
                new Attachment(Attachment.Position.PAIR, Optional.empty()),
                Optional.of(new Damper.Law.Table(List.of(point(-0.5, -1000), point(-0.1, -400), point(0.2, 300)))),
                Measure.of(0, QuantityKind.FORCE),
                Optional.empty(),
                Optional.empty());
        ForceLaw law = SpringLaws.damper(damper);
        assertThat(law.elasticForce(0)).isZero();
        assertThat(viscous(law, 0.1)).isCloseTo(150, within(1e-9));
        assertThat(viscous(law, -0.05)).isCloseTo(-200, within(1e-9));
        assertThat(viscous(law, -0.3)).isCloseTo(-700, within(1e-9));
        assertThat(viscous(law, 0)).isZero();
    }

    private static double viscous(ForceLaw law, double speed) {
        return law.damping() * speed + law.speedStages().value(speed);
    }

    private static Damper.Law.Point point(double v, double f) {
        return new Damper.Law.Point(Measure.of(v, QuantityKind.SPEED), Measure.of(f, QuantityKind.FORCE));
    }

    @Test
    void theLockedRateIsTwiceTheRateUnlessMeasured() {
        ForceLaw law =
                SpringLaws.withFriction(ForceLaw.spring(30_000), 30_000, friction(0.06, new LockedRate.NotGiven()));
        assertThat(law.friction().lockedRate()).isEqualTo(60_000);
        ForceLaw rigid =
                SpringLaws.withFriction(ForceLaw.spring(30_000), 30_000, friction(0.06, new LockedRate.Rigid()));
        assertThat(rigid.friction().lockedRate()).isEqualTo(3e9);
    }

    @Test
    void theLockedRateOfAnAirSpringIsTwiceItsRateAtItsStatedLoad() {
        Elasticity.GasColumn column = new Elasticity.GasColumn(
                Measure.of(0.015, QuantityKind.AREA),
                Measure.of(0.0049, QuantityKind.VOLUME),
                Measure.of(4000, QuantityKind.FORCE),
                1.3);
        ForceLaw law = SpringLaws.withFriction(
                SpringLaws.elastic(SpringKind.AIR, column), column, friction(0.06, new LockedRate.NotGiven()));
        double pressure = 101_325 + 4000 / 0.015;
        assertThat(law.friction().lockedRate()).isCloseTo(2 * 1.3 * pressure * 0.015 * 0.015 / 0.0049, within(1e-3));
    }

    @Test
    void aLockedRateBelowTheFrictionsOwnSlopeIsRefused() {
        Friction weak = friction(0.5, new LockedRate.Given(Measure.of(10_000, QuantityKind.RATE)));
        assertThatThrownBy(() -> SpringLaws.withFriction(ForceLaw.spring(30_000), 30_000, weak))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("locked rate");
    }

    private static Friction friction(double share, LockedRate locked) {
        return new Friction(
                Measure.of(share, QuantityKind.RATIO),
                Measure.of(0, QuantityKind.FORCE),
                locked,
                List.of(),
                Optional.empty());
    }

    private static ForceLaw gas() {
        return SpringLaws.elastic(
                SpringKind.AIR,
                new Elasticity.GasColumn(
                        Measure.of(0.015, QuantityKind.AREA),
                        Measure.of(0.0049, QuantityKind.VOLUME),
                        Measure.of(4000, QuantityKind.FORCE),
                        1.3));
    }

    private static ForceLaw table(double... cf) {
        List<Elasticity.TablePoint> points = new ArrayList<>();
        for (int i = 0; i < cf.length; i += 2) {
            points.add(new Elasticity.TablePoint(
                    Measure.of(cf[i], QuantityKind.LENGTH), Measure.of(cf[i + 1], QuantityKind.FORCE)));
        }
        return SpringLaws.elastic(SpringKind.RUBBER, new Elasticity.Table(points));
    }
}
