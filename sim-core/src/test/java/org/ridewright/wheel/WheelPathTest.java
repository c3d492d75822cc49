package org.ridewright.wheel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.ridewright.road.Roads.halfRound;
import static org.ridewright.road.Roads.plank;
import static org.ridewright.road.Roads.profile;
import static org.ridewright.road.Roads.ramp;
import static org.ridewright.road.Roads.step;

import org.junit.jupiter.api.Test;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.road.RoadProfile;
import org.ridewright.vehicle.PathKind;

class WheelPathTest {
    private static PiecewisePolynomial path(RoadProfile road, PathKind kind) {
        return WheelPath.of(road, kind, 0.5, 0.1, WheelPath.TOLERANCE);
    }

    @Test
    void aPointJumpsAtAPlankAndTheOtherWheelsDoNot() {
        RoadProfile road = profile(plank(3, 0.05, 0.3));

        assertThat(WheelPath.hasJump(path(road, PathKind.POINT))).isTrue();
        assertThat(WheelPath.hasJump(path(road, PathKind.DISC))).isFalse();
        assertThat(WheelPath.hasJump(path(road, PathKind.FOOTPRINT))).isFalse();
        assertThat(WheelPath.hasJump(path(road, PathKind.DISC_AND_FOOTPRINT))).isFalse();
        assertThat(WheelPath.hasJump(path(profile(ramp(3, 0.05, 0.3)), PathKind.POINT)))
                .isFalse();
    }

    @Test
    void aPointIsLevelBeforeAPlankAndOnIt() {
        PiecewisePolynomial u = path(profile(plank(3, 0.05, 0.3)), PathKind.POINT);

        assertThat(u.valueBefore()).isZero();
        assertThat(u.value(2.9999)).isZero();
        assertThat(u.value(3)).isEqualTo(0.05);
        assertThat(u.value(3.3)).isZero();
        assertThat(WheelPath.firstDeparture(u)).hasValue(3);
        assertThat(WheelPath.lastReturn(u)).hasValue(3.3);
    }

    @Test
    void aPointAtAnUprightRoundBarJumpsByAThousandthOfItsRadius() {
        PiecewisePolynomial u = path(profile(halfRound(3, 0.05, 0.1)), PathKind.POINT);

        assertThat(WheelPath.hasJump(u)).isTrue();
        assertThat(u.value(3)).isCloseTo(0.05e-3, within(1e-6));
        assertThat(u.value(3.02)).isCloseTo(Math.sqrt(0.05 * 0.05 - 0.03 * 0.03), within(1e-8));
    }

    @Test
    void aFootprintTurnsAStepIntoAStraightRamp() {
        PiecewisePolynomial u = path(profile(step(3, 0.06)), PathKind.FOOTPRINT);

        assertThat(u.pieces()).isEqualTo(1);
        assertThat(u.joint(0)).isCloseTo(2.9, within(1e-14));
        assertThat(u.joint(1)).isCloseTo(3.1, within(1e-14));
        assertThat(u.derivative(3, 1)).isCloseTo(0.3, within(1e-13));
    }

    @Test
    void aFootprintLongerThanAPlankStandsLevelWhileItCoversIt() {
        PiecewisePolynomial u = path(profile(plank(3, 0.05, 0.1)), PathKind.FOOTPRINT);

        assertThat(u.coefficients(u.pieceAt(3.05))).hasSize(1);
        assertThat(u.value(3.05)).isCloseTo(0.025, within(1e-15));
        assertThat(u.pieces()).isEqualTo(3);
    }

    @Test
    void theMeanOfALevelIsThatLevel() {
        RoadProfile road = RoadProfile.of(PiecewisePolynomial.constant(0.037));
        for (PathKind kind : PathKind.values()) {
            assertThat(path(road, kind).value(5)).isEqualTo(0.037);
            assertThat(WheelPath.firstDeparture(path(road, kind))).isEmpty();
        }
    }

    @Test
    void betweenObstaclesEveryWheelIsBackOnTheLevelExactly() {
        RoadProfile road = profile(plank(3, 0.05, 0.3), halfRound(6, 0.04, 0.1));
        for (PathKind kind : PathKind.values()) {
            PiecewisePolynomial u = path(road, kind);
            assertThat(u.coefficients(u.pieceAt(4.5))).containsExactly(0);
        }
    }

    @Test
    void aSymmetricPlankGivesASymmetricPath() {
        RoadProfile road = profile(plank(-0.15, 0.05, 0.3));
        for (PathKind kind : new PathKind[] {PathKind.DISC, PathKind.FOOTPRINT, PathKind.DISC_AND_FOOTPRINT}) {
            PiecewisePolynomial u = path(road, kind);
            for (double X = 0; X < 0.6; X += 0.0037) {
                assertThat(u.value(X)).isCloseTo(u.value(-X), within(1e-8));
            }
        }
    }

    @Test
    void aWheelFarLargerThanAPebbleRunsOverItOnItsRim() {
        double R = 10;
        double h = 0.004;
        PiecewisePolynomial u = WheelPath.of(profile(plank(3, h, 0.004)), PathKind.DISC, R, 0, WheelPath.TOLERANCE);
        double reach = Math.sqrt(2 * R * h - h * h);

        assertThat(WheelPath.firstDeparture(u).getAsDouble()).isCloseTo(3 - reach, within(1e-12));
        assertThat(WheelPath.lastReturn(u).getAsDouble()).isCloseTo(3.004 + reach, within(1e-12));
        assertThat(u.value(3.002)).isEqualTo(h);
    }

    @Test
    void aPlankKinksThePathWhereItIsFirstAndLastTouchedAndNowhereElse() {
        PiecewisePolynomial u = path(profile(plank(3, 0.05, 0.3)), PathKind.DISC);
        int kinks = 0;
        double[] end = new double[4];
        for (int i = -1; i < u.pieces(); i++) {
            u.expand(i, u.joint(i + 1), end);
            kinks += Math.abs(u.derivative(u.joint(i + 1), 1) - end[1]) > 1e-9 ? 1 : 0;
        }
        assertThat(kinks).isEqualTo(2);
        double spacing = 1e-4;
        for (double X = 2.5; X < 3.8; X += spacing) {
            double bend = u.value(X - spacing) - 2 * u.value(X) + u.value(X + spacing);
            boolean nearKink =
                    Math.abs(X - u.joint(0)) < 2 * spacing || Math.abs(X - u.joint(u.pieces())) < 2 * spacing;
            // the rim's own curvature is R²/y³ < 3.1 per metre, doubled for margin
            assertThat(nearKink || Math.abs(bend) < 6.2 * spacing * spacing).isTrue();
        }
    }

    @Test
    void quinticPiecesAreFewer() {
        RoadProfile road = profile(plank(3, 0.05, 0.3));
        int cubic = path(road, PathKind.DISC).pieces();
        int quintic = WheelPath.of(road, PathKind.DISC, 0.5, 0, WheelPath.TOLERANCE, 5)
                .pieces();

        assertThat(cubic).isBetween(20, 30);
        assertThat(quintic).isBetween(7, 11);
    }

    @Test
    void aMeasuredProfileIsKeptAsGivenForAPoint() {
        PiecewisePolynomial z = new PiecewisePolynomial(
                new double[] {0, 1, 2}, new double[][] {{0, 0, 0.3, -0.2}, {0.1, 0, -0.3, 0.2}}, 0);

        assertThat(path(RoadProfile.of(z), PathKind.POINT)).isSameAs(z);
        assertThat(path(RoadProfile.of(z), PathKind.FOOTPRINT).degree()).isEqualTo(4);
        assertThat(path(RoadProfile.of(z), PathKind.DISC).value(1)).isCloseTo(0.1, within(1e-8));
    }

    @Test
    void dimensionsThatMeanNothingAreRefused() {
        RoadProfile road = profile(plank(3, 0.05, 0.3));
        assertThatThrownBy(() -> WheelPath.of(road, PathKind.DISC, 0, 0.1, 1e-8))
                .hasMessage("radius of a wheel must be > 0 m, got 0.0 m");
        assertThatThrownBy(() -> WheelPath.of(road, PathKind.FOOTPRINT, 0.5, -1, 1e-8))
                .hasMessage("half length of a footprint must be > 0 m, got -1.0 m");
        assertThatThrownBy(() -> WheelPath.of(road, PathKind.DISC, 0.5, 0.1, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> WheelPath.of(road, PathKind.DISC, 0.5, 0.1, 1e-8, 4))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
