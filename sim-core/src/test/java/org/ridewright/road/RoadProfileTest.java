package org.ridewright.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.ridewright.road.Roads.at;
import static org.ridewright.road.Roads.bevelled;
import static org.ridewright.road.Roads.halfRound;
import static org.ridewright.road.Roads.hump;
import static org.ridewright.road.Roads.lie;
import static org.ridewright.road.Roads.plank;
import static org.ridewright.road.Roads.pothole;
import static org.ridewright.road.Roads.profile;
import static org.ridewright.road.Roads.rail;
import static org.ridewright.road.Roads.ramp;
import static org.ridewright.road.Roads.row;
import static org.ridewright.road.Roads.step;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.road.Obstacle.Lie;
import org.ridewright.road.Obstacle.Side;

class RoadProfileTest {
    @Test
    void anObstacleOnOneSideLiesBeforeTheWheelsOfThatSide() {
        Road road = Roads.of(plank(lie(3, Side.LEFT, 0), 0.05, 0.3));

        assertThat(RoadProfile.along(road, 0.7).height(3.1)).isEqualTo(0.05);
        assertThat(RoadProfile.along(road, -0.7).height(3.1)).isZero();
        assertThat(RoadProfile.along(road, 0).height(3.1)).isZero();
        assertThat(RoadProfile.alongEverySide(road).height(3.1)).isEqualTo(0.05);
        assertThat(RoadProfile.along(Roads.of(plank(lie(3, Side.RIGHT, 0), 0.05, 0.3)), -0.7)
                        .height(3.1))
                .isEqualTo(0.05);
    }

    @Test
    void theLeftWheelMeetsAPositivelySkewedPlankLater() {
        Road road = Roads.of(plank(lie(3, Side.BOTH, 0.2), 0.05, 0.3));

        assertThat(RoadProfile.along(road, 0.7).joint(0)).isCloseTo(3 + 0.7 * Math.tan(0.2), within(1e-15));
        assertThat(RoadProfile.along(road, -0.7).joint(0)).isCloseTo(3 - 0.7 * Math.tan(0.2), within(1e-15));
    }

    @Test
    void aRowRepeatsAtItsPitch() {
        RoadProfile road = profile(plank(row(1, 3, 0.5), 0.02, 0.1));

        assertThat(road.joints()).isEqualTo(6);
        assertThat(road.height(2.05)).isEqualTo(0.02);
        assertThat(road.height(2.2)).isZero();
        assertThat(road.height(2.55)).isZero();
    }

    @Test
    void aRowWithoutAPitchIsRefused() {
        Lie lie = new Lie(Roads.m(1), Side.BOTH, Measure.of(0, QuantityKind.ANGLE), 2, Optional.empty());
        assertThatThrownBy(() -> profile(plank(lie, 0.02, 0.1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("count 2 and no pitch");
    }

    @Test
    void obstaclesAddUp() {
        RoadProfile road = profile(step(0, 0.1), plank(1, 0.05, 1), hump(1, 0.04, 1), pothole(1.2, 0.02, 0.1));

        assertThat(road.height(1.5)).isCloseTo(0.1 + 0.05 + 0.04, within(1e-15));
        assertThat(road.height(1.25))
                .isCloseTo(0.1 + 0.05 - 0.02 + 0.02 * (1 - Math.cos(2 * Math.PI * 0.25)), within(1e-15));
        assertThat(road.heightAfter()).isEqualTo(0.1);
        assertThat(road.heightBefore()).isZero();
    }

    @Test
    void planksThatAbutAreOnePlank() {
        RoadProfile road = profile(plank(1.8, 0.05, 0.2), plank(2, 0.05, 0.1), plank(2.1, 0.05, 0.3));

        assertThat(road.sections()).isEqualTo(1);
        assertThat(road.joint(1)).isCloseTo(2.4, within(1e-14));
    }

    @Test
    void aHalfRoundPlankOfTwiceItsHeightIsAHalfCircle() {
        RoadProfile road = profile(halfRound(1, 0.05, 0.1));

        assertThat(road.height(1.02)).isCloseTo(Math.sqrt(0.05 * 0.05 - 0.03 * 0.03), within(1e-15));
        assertThat(Math.abs(road.section(0).slope(1))).isGreaterThan(1e6);
    }

    @Test
    void aFlatHalfRoundPlankRisesFromTheRoadAtBothEnds() {
        RoadProfile road = profile(halfRound(1, 0.02, 0.3));

        assertThat(road.height(1 + 1e-12)).isCloseTo(0, within(1e-11));
        assertThat(road.height(1.15)).isCloseTo(0.02, within(1e-15));
        assertThat(road.height(1.3 - 1e-12)).isCloseTo(0, within(1e-11));
    }

    @Test
    void aRailHasAFlatHeadRoundEdgesAndAGroove() {
        RoadProfile road = profile(rail(1, 0.02, 0.06, 0.01, 0.04, 0.03));

        assertThat(road.height(1 + 1e-9)).isCloseTo(0.01, within(1e-5));
        assertThat(road.height(1.004)).isCloseTo(0.01 + 0.008, within(1e-14));
        assertThat(road.height(1.03)).isCloseTo(0.02, within(1e-15));
        assertThat(road.height(1.056)).isCloseTo(0.01 + 0.008, within(1e-14));
        assertThat(road.height(1.08)).isEqualTo(-0.03);
        assertThat(road.height(1.1000001)).isZero();
    }

    @Test
    void theEdgeOfAFlushRailIsBuriedInTheRoadButOpenToTheGroove() {
        RoadProfile road = profile(rail(1, 0, 0.06, 0.01, 0.04, 0.03));

        assertThat(road.height(1.001)).isZero();
        assertThat(road.height(1.056)).isCloseTo(-0.002, within(1e-14));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5})
    void everySectionHasTheSlopeBendAndAreaOfItsHeight(int which) {
        RoadProfile road =
                switch (which) {
                    case 0 -> profile(hump(0, 0.1, 1));
                    case 1 -> profile(halfRound(0, 0.1, 1));
                    case 2 -> profile(ramp(0, 0.1, 1));
                    case 3 -> profile(hump(0, 0.1, 1), halfRound(0, 0.1, 1), ramp(0, 0.1, 1));
                    case 4 -> profile(bevelled(0, 0.1, 2, 1));
                    default ->
                        RoadProfile.of(new PiecewisePolynomial(
                                new double[] {0, 1}, new double[][] {{0, 0.3, 0.1, -0.4, 0.2}}, 0.2));
                };
        Section section = road.section(0);
        double d = 1e-5;
        for (double x = 0.05; x < 1; x += 0.09) {
            assertThat(section.slope(x))
                    .isCloseTo((section.height(x + d) - section.height(x - d)) / (2 * d), within(1e-8));
            assertThat(section.secondDerivative(x))
                    .isCloseTo((section.slope(x + d) - section.slope(x - d)) / (2 * d), within(1e-8));
            assertThat(section.height(x)).isCloseTo(section.area(x - d, x + d) / (2 * d), within(1e-9));
            assertThat(section.hollowest(0, 1)).isGreaterThanOrEqualTo(section.secondDerivative(x));
            assertThat(section.raised(0.25).height(x)).isCloseTo(section.height(x) + 0.25, within(1e-15));
        }
    }

    @Test
    void aSumOfProfilesIsTheSumOfHeights() {
        PiecewisePolynomial z = new PiecewisePolynomial(new double[] {0, 2}, new double[][] {{0.1, 0, 0.05}}, 0.3);
        RoadProfile sum = RoadProfile.sum(List.of(RoadProfile.of(z), profile(plank(1, 0.05, 0.3))));

        assertThat(sum.heightBefore()).isEqualTo(0.1);
        assertThat(sum.height(1.1)).isCloseTo(0.1 + 0.05 * 1.21 + 0.05, within(1e-15));
        assertThat(sum.heightAfter()).isEqualTo(0.3);
        assertThat(RoadProfile.sum(List.of()).height(4)).isZero();
    }

    @Test
    void atAJumpTheHigherSideCounts() {
        RoadProfile road = profile(pothole(1, 0.05, 0.3));

        assertThat(road.height(1)).isZero();
        assertThat(road.height(road.joint(1))).isZero();
        assertThat(road.height(1.1)).isEqualTo(-0.05);
    }

    @Test
    void dimensionsThatExcludeOneAnotherAreRefused() {
        assertThatThrownBy(() -> profile(bevelled(1, 0.05, 0.3, 0.2)))
                .hasMessage("slope length of a bevelled plank must be ≤ half its length (0.15 m), got 0.2 m");
        assertThatThrownBy(() -> profile(halfRound(1, 0.06, 0.1)))
                .hasMessageContaining("height of a half-round plank must be ≤ half its length");
        assertThatThrownBy(() -> profile(
                        new Obstacle.Rail(at(1), Roads.m(0), Roads.m(0.05), Roads.m(0.03), Roads.m(0), Roads.m(0))))
                .hasMessageContaining("edge radius of a rail must be ≤ half its width");
    }
}
