package org.ridewright.wheel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.ridewright.road.Roads.bevelled;
import static org.ridewright.road.Roads.halfRound;
import static org.ridewright.road.Roads.hump;
import static org.ridewright.road.Roads.plank;
import static org.ridewright.road.Roads.pothole;
import static org.ridewright.road.Roads.profile;
import static org.ridewright.road.Roads.rail;
import static org.ridewright.road.Roads.row;
import static org.ridewright.road.Roads.step;

import org.junit.jupiter.api.Test;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.road.RoadProfile;
import org.ridewright.vehicle.PathKind;

/** Closed forms of the disc's path, from the geometry of a circle upon corners. */
class RollingDiscTest {
    private static final double R = 0.55;

    private static PiecewisePolynomial disc(RoadProfile road) {
        return WheelPath.of(road, PathKind.DISC, R, 0, WheelPath.TOLERANCE);
    }

    @Test
    void aDiscMeetsAPlankBeforeItsEdgeWithTheSlopeOfItsRim() {
        double h = 0.05;
        double reach = Math.sqrt(2 * R * h - h * h);
        PiecewisePolynomial u = disc(profile(plank(3, h, 0.3)));

        assertThat(WheelPath.firstDeparture(u).getAsDouble()).isCloseTo(3 - reach, within(1e-14));
        assertThat(WheelPath.lastReturn(u).getAsDouble()).isCloseTo(3.3 + reach, within(1e-14));
        assertThat(u.derivative(u.joint(0), 1)).isCloseTo(reach / (R - h), within(1e-12));
        assertThat(u.value(3 - reach - 1e-9)).isZero();
        assertThat(u.valueBefore()).isZero();
        assertThat(u.valueAfter()).isZero();
    }

    @Test
    void theTopOfAPlankIsOnePieceAndExactlyLevel() {
        PiecewisePolynomial u = disc(profile(plank(3, 0.05, 0.3)));
        int top = u.pieceAt(3.15);

        assertThat(u.joint(top)).isCloseTo(3, within(1e-15));
        assertThat(u.joint(top + 1)).isCloseTo(3.3, within(1e-15));
        assertThat(u.coefficients(top)).containsExactly(0.05);
    }

    @Test
    void aPlankIsClimbedOnACircleAboutItsEdge() {
        double h = 0.05;
        PiecewisePolynomial u = disc(profile(plank(3, h, 0.3)));
        for (double X = 2.78; X < 3; X += 0.001) {
            assertThat(u.value(X)).isCloseTo(h - R + Math.sqrt(R * R - (3 - X) * (3 - X)), within(1e-8));
        }
    }

    @Test
    void aPotholeShorterThanTheWheelIsBridgedFromEdgeToEdge() {
        double L = 0.2;
        PiecewisePolynomial u = disc(profile(pothole(3, 0.1, L)));
        double middle = 3 + L / 2;
        double dip = Math.sqrt(R * R - L * L / 4) - R;

        assertThat(WheelPath.firstDeparture(u).getAsDouble()).isCloseTo(3, within(1e-14));
        assertThat(u.value(middle)).isCloseTo(dip, within(1e-12));
        int kink = u.pieceAt(middle + 1e-9);
        assertThat(u.joint(kink)).isCloseTo(middle, within(1e-12));
        assertThat(u.derivative(middle + 1e-9, 1)).isPositive();
        assertThat(u.derivative(middle - 1e-9, 1)).isNegative();
    }

    @Test
    void aHoleTooShortToReachItsBottomMayBeDeeperThanTheWheel() {
        assertThat(disc(profile(pothole(3, 5, 0.2))).value(3.1))
                .isCloseTo(disc(profile(pothole(3, 0.1, 0.2))).value(3.1), within(1e-12));
    }

    @Test
    void twoPlanksCloseTogetherAreBridged() {
        double gap = 0.15;
        PiecewisePolynomial u = disc(profile(plank(3, 0.05, 0.1), plank(3.1 + gap, 0.05, 0.1)));
        double middle = 3.1 + gap / 2;

        assertThat(u.value(middle)).isCloseTo(0.05 - R + Math.sqrt(R * R - gap * gap / 4), within(1e-12));
    }

    @Test
    void twoPlanksFarApartAreTheSumOfTwoPaths() {
        PiecewisePolynomial both = disc(profile(plank(3, 0.05, 0.1), plank(6, 0.03, 0.2)));
        PiecewisePolynomial first = disc(profile(plank(3, 0.05, 0.1)));
        PiecewisePolynomial second = disc(profile(plank(6, 0.03, 0.2)));
        for (double X = 2; X < 7; X += 0.01) {
            assertThat(both.value(X)).isCloseTo(first.value(X) + second.value(X), within(1e-13));
        }
        assertThat(both.pieces()).isEqualTo(first.pieces() + second.pieces() + 1);
    }

    @Test
    void rollingDownAStepMirrorsRollingUpIt() {
        PiecewisePolynomial up = disc(profile(step(0, 0.08)));
        PiecewisePolynomial down = disc(profile(step(0, -0.08)));
        for (double X = -1; X < 1; X += 0.007) {
            assertThat(down.value(X)).isCloseTo(up.value(-X) - 0.08, within(2e-8));
        }
        assertThat(down.valueAfter()).isEqualTo(-0.08);
    }

    @Test
    void aHalfRoundBarIsClimbedOnACircleOfBothRadii() {
        double rho = 0.04;
        PiecewisePolynomial u = disc(profile(halfRound(3, rho, 2 * rho)));
        double reach = Math.sqrt((R + rho) * (R + rho) - R * R);

        assertThat(WheelPath.firstDeparture(u).getAsDouble()).isCloseTo(3 + rho - reach, within(1e-13));
        assertThat(u.derivative(u.joint(0), 1)).isCloseTo(reach / R, within(1e-12));
        assertThat(u.value(3 + rho)).isCloseTo(rho, within(1e-8));
    }

    @Test
    void aLowBevelIsFollowedAsAStraightRise() {
        double slope = 0.05 / 0.4;
        PiecewisePolynomial u = disc(profile(bevelled(3, 0.05, 1.2, 0.4)));
        double lift = R * (Math.sqrt(1 + slope * slope) - 1);

        assertThat(u.value(3.1)).isCloseTo(0.1 * slope + lift, within(1e-12));
        assertThat(u.coefficients(u.pieceAt(3.1))).hasSize(2);
        // level and bevel are touched at once where the line rises from the level
        assertThat(WheelPath.firstDeparture(u).getAsDouble()).isCloseTo(3 - lift / slope, within(1e-13));
    }

    @Test
    void aGentleHumpIsFollowedAsItsParallelCurve() {
        double h = 0.1;
        double L = 3;
        PiecewisePolynomial u = disc(profile(hump(3, h, L)));
        for (double s = 0.01; s < L; s += 0.01) {
            double k = 2 * Math.PI / L;
            double slope = h / 2 * k * Math.sin(k * s);
            double hypot = Math.sqrt(1 + slope * slope);
            double z = h / 2 * (1 - Math.cos(k * s)) + R / hypot - R;
            assertThat(u.value(3 + s - R * slope / hypot)).isCloseTo(z, within(1e-8));
        }
        assertThat(WheelPath.firstDeparture(u).getAsDouble()).isCloseTo(3, within(1e-12));
    }

    @Test
    void aHumpHollowerAtItsFootThanTheWheelIsRoundIsMetWithAKink() {
        double h = 0.05;
        double L = 0.3;
        PiecewisePolynomial u = disc(profile(hump(3, h, L)));

        assertThat(WheelPath.firstDeparture(u).getAsDouble()).isLessThan(3 - 0.01);
        assertThat(u.derivative(u.joint(0), 1)).isGreaterThan(0.1);
        assertThat(u.value(3 + L / 2)).isCloseTo(h, within(1e-8));
    }

    @Test
    void aFlushRailIsFeltOnlyAtItsGroove() {
        double groove = 0.04;
        PiecewisePolynomial u = disc(profile(rail(3, 0, 0.06, 0, groove, 0.035)));

        assertThat(WheelPath.firstDeparture(u).getAsDouble()).isCloseTo(3.06, within(1e-13));
        assertThat(u.value(3.06 + groove / 2)).isCloseTo(Math.sqrt(R * R - groove * groove / 4) - R, within(1e-12));
    }

    @Test
    void aRoundedRailEdgeDelaysContact() {
        double sharp = WheelPath.firstDeparture(disc(profile(rail(3, 0.02, 0.06, 0, 0, 0))))
                .getAsDouble();
        double round = WheelPath.firstDeparture(disc(profile(rail(3, 0.02, 0.06, 0.01, 0, 0))))
                .getAsDouble();
        double reach = Math.sqrt(Math.pow(R + 0.01, 2) - Math.pow(R + 0.01 - 0.02, 2));

        assertThat(round).isGreaterThan(sharp).isCloseTo(3.01 - reach, within(1e-13));
    }

    @Test
    void aLevelRoadGivesALevelPath() {
        PiecewisePolynomial u = disc(RoadProfile.level());

        assertThat(u.value(17)).isZero();
        assertThat(WheelPath.firstDeparture(u)).isEmpty();
        assertThat(WheelPath.lastReturn(u)).isEmpty();
    }

    @Test
    void aWheelCannotClimbAFaceAsHighAsItsRadius() {
        assertThat(disc(profile(plank(3, 0.549, 1))).value(3.5)).isEqualTo(0.549);
        assertThatThrownBy(() -> disc(profile(plank(3, 0.55, 1))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("station 3.0 m must rise < 0.55 m");
        assertThatThrownBy(() -> disc(profile(plank(3, 0.3, 1), plank(3.05, 0.6, 0.5))))
                .hasMessageContaining("cannot climb");
    }

    @Test
    void aWheelDropsOffAFaceDeeperThanItsRadius() {
        assertThat(disc(profile(step(3, -0.5))).valueAfter()).isEqualTo(-0.5);
        assertThatThrownBy(() -> disc(profile(step(3, -0.6))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("station 3.0 m must fall < 0.55 m");
    }

    @Test
    void aRowOfPlanksRepeatsItsPath() {
        PiecewisePolynomial u = disc(profile(plank(row(2, 5, 0.4), 0.02, 0.1)));
        for (double X = 2; X < 2.8; X += 0.01) {
            assertThat(u.value(X + 0.4)).isCloseTo(u.value(X), within(2e-8));
        }
    }

    @Test
    void fewPiecesSufficeForAPlank() {
        assertThat(disc(profile(plank(3, 0.05, 0.3))).pieces()).isLessThan(40);
    }
}
