package org.ridewright.wheel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.road.Obstacle;
import org.ridewright.road.RoadProfile;
import org.ridewright.road.Roads;
import org.ridewright.vehicle.PathKind;

/** Random sums of obstacles, heights well below the wheel's radius. */
class WheelPathPropertyTest {
    private static final double TOLERANCE = 1e-8;

    @Provide
    Arbitrary<RoadProfile> roads() {
        Arbitrary<Double> at = Arbitraries.doubles().between(0, 2).ofScale(5);
        Arbitrary<Double> h = Arbitraries.doubles().between(0.005, 0.06).ofScale(5);
        Arbitrary<Double> length = Arbitraries.doubles().between(0.13, 1).ofScale(5);
        Arbitrary<Integer> kind = Arbitraries.integers().between(0, 7);
        Arbitrary<Obstacle> obstacle = Combinators.combine(kind, at, h, length).as(WheelPathPropertyTest::obstacle);
        return obstacle.list().ofMinSize(1).ofMaxSize(3).map(list -> Roads.profile(list.toArray(new Obstacle[0])));
    }

    private static Obstacle obstacle(int kind, double at, double h, double length) {
        return switch (kind) {
            case 0 -> Roads.plank(at, h, length);
            case 1 -> Roads.bevelled(at, h, length, length / 3);
            case 2 -> Roads.halfRound(at, h, Math.max(2 * h, length / 4));
            case 3 -> Roads.step(at, length > 0.5 ? h : -h);
            case 4 -> Roads.pothole(at, h, length);
            case 5 -> Roads.hump(at, h, length);
            case 6 -> Roads.ramp(at, h, length);
            default -> Roads.rail(at, h / 2, 0.07, 0.012, 0.05, 0.04);
        };
    }

    private static PiecewisePolynomial path(RoadProfile road, PathKind kind, double R) {
        return WheelPath.of(road, kind, R, 0.07, TOLERANCE);
    }

    /** Largest value of (5) found by trying stations, each local maximum refined; never above the true one. */
    private static double tried(RoadProfile road, double R, double X) {
        int n = 3000;
        double best = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < road.joints(); i++) {
            best = Math.max(best, centre(road, R, X, road.joint(i)));
        }
        double d = 2 * R / n;
        for (int i = 1; i < n; i++) {
            double x = X - R + i * d;
            double z = centre(road, R, X, x);
            if (z > best - 1e-4 && z >= centre(road, R, X, x - d) && z >= centre(road, R, X, x + d)) {
                double lo = x - d;
                double hi = x + d;
                for (int k = 0; k < 50; k++) {
                    double third = (hi - lo) / 3;
                    if (centre(road, R, X, lo + third) < centre(road, R, X, hi - third)) {
                        lo += third;
                    } else {
                        hi -= third;
                    }
                }
                best = Math.max(best, Math.max(z, centre(road, R, X, (lo + hi) / 2)));
            }
        }
        return best;
    }

    private static double centre(RoadProfile road, double R, double X, double x) {
        double square = R * R - (x - X) * (x - X);
        return square < 0 ? Double.NEGATIVE_INFINITY : road.height(x) + Math.sqrt(square) - R;
    }

    @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
    void theDiscsPathIsTheHighestThatAnyPointOfTheRimDemands(
            @ForAll("roads") RoadProfile road,
            @ForAll @Scale(4) @DoubleRange(min = 0.3, max = 0.9) double R,
            @ForAll @Scale(4) @DoubleRange(min = 0, max = 0.05) double offset) {
        PiecewisePolynomial u = path(road, PathKind.DISC, R);
        for (double X = -0.6 + offset; X < 3.6; X += 0.05) {
            assertThat(u.value(X)).as("X = %s", X).isCloseTo(tried(road, R, X), within(1.5 * TOLERANCE));
        }
    }

    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void aMeasuredRoadIsRolledOverAsAnyOther(
            @ForAll @Size(21) List<@Scale(5) @DoubleRange(min = -0.03, max = 0.03) Double> heights,
            @ForAll boolean smooth,
            @ForAll @Scale(4) @DoubleRange(min = 0.3, max = 0.9) double R) {
        RoadProfile road = measured(heights, smooth);
        PiecewisePolynomial u = path(road, PathKind.DISC, R);
        for (double X = -0.6; X < 2.6; X += 0.037) {
            assertThat(u.value(X)).as("X = %s", X).isCloseTo(tried(road, R, X), within(1.5 * TOLERANCE));
        }
    }

    /** Heights every 0.1 m, joined by straight lines or by cubics with the slopes of their neighbours' chords. */
    private static RoadProfile measured(List<Double> heights, boolean smooth) {
        int n = heights.size() - 1;
        double d = 0.1;
        double[] joints = new double[n + 1];
        double[][] rows = new double[n][];
        for (int i = 0; i < n; i++) {
            joints[i + 1] = joints[i] + d;
            double chord = (heights.get(i + 1) - heights.get(i)) / d;
            double s0 = i == 0 ? 0 : (heights.get(i + 1) - heights.get(i - 1)) / (2 * d);
            double s1 = i == n - 1 ? 0 : (heights.get(i + 2) - heights.get(i)) / (2 * d);
            rows[i] = smooth
                    ? new double[] {heights.get(i), s0, (3 * chord - 2 * s0 - s1) / d, (s0 + s1 - 2 * chord) / (d * d)}
                    : new double[] {heights.get(i), chord};
        }
        return RoadProfile.of(new PiecewisePolynomial(joints, rows, heights.get(n)));
    }

    @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
    void theDiscsPathIsNeverBelowTheRoad(
            @ForAll("roads") RoadProfile road, @ForAll @Scale(4) @DoubleRange(min = 0.3, max = 0.9) double R) {
        PiecewisePolynomial u = path(road, PathKind.DISC, R);
        for (double X = -0.5; X < 3.5; X += 0.003) {
            assertThat(u.value(X)).isGreaterThanOrEqualTo(road.height(X) - 1.1 * TOLERANCE);
        }
    }

    @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
    void aBiggerWheelRunsHigher(
            @ForAll("roads") RoadProfile road,
            @ForAll @Scale(4) @DoubleRange(min = 0.3, max = 0.9) double R,
            @ForAll @Scale(4) @DoubleRange(min = 1.01, max = 3) double factor) {
        PiecewisePolynomial small = path(road, PathKind.DISC, R);
        PiecewisePolynomial big = path(road, PathKind.DISC, factor * R);
        for (double X = -1; X < 4; X += 0.01) {
            assertThat(big.value(X)).isGreaterThanOrEqualTo(small.value(X) - 2.2 * TOLERANCE);
        }
    }

    @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
    void thePathOfADiscHasNoJumpAndItsKinksAreHollow(
            @ForAll("roads") RoadProfile road, @ForAll @Scale(4) @DoubleRange(min = 0.3, max = 0.9) double R) {
        PiecewisePolynomial u = path(road, PathKind.DISC, R);
        double[] end = new double[u.degree() + 1];

        assertThat(WheelPath.hasJump(u)).isFalse();
        for (int i = -1; i < u.pieces(); i++) {
            u.expand(i, u.joint(i + 1), end);
            double turn = u.derivative(u.joint(i + 1), 1) - (i < 0 ? 0 : end.length > 1 ? end[1] : 0);
            // a round wheel rounds every crest off: the slope may rise at once, never fall
            assertThat(turn).isGreaterThan(-1e-6);
        }
    }

    @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
    void cubicAndQuinticPiecesFollowTheSamePath(
            @ForAll("roads") RoadProfile road, @ForAll @Scale(4) @DoubleRange(min = 0.3, max = 0.9) double R) {
        for (PathKind kind : List.of(PathKind.DISC, PathKind.FOOTPRINT, PathKind.DISC_AND_FOOTPRINT)) {
            PiecewisePolynomial cubic = WheelPath.of(road, kind, R, 0.07, TOLERANCE);
            PiecewisePolynomial quintic = WheelPath.of(road, kind, R, 0.07, TOLERANCE, 5);
            for (double X = -0.6; X < 3.6; X += 0.013) {
                assertThat(cubic.value(X)).isCloseTo(quintic.value(X), within(2.2 * TOLERANCE));
            }
        }
    }

    @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
    void theFootprintKeepsTheAreaOfTheRoadAndOfTheDiscsPath(
            @ForAll("roads") RoadProfile road, @ForAll @Scale(4) @DoubleRange(min = 0.3, max = 0.9) double R) {
        // equal level on both sides of a long enough stretch: means and originals then have the same integral
        double end = road.heightAfter();
        double before = area(path(road, PathKind.DISC, R), -3, 6);
        double after = area(path(road, PathKind.DISC_AND_FOOTPRINT, R), -3, 6);

        assertThat(after).isCloseTo(before, within(1e-11));
        assertThat(area(path(road, PathKind.FOOTPRINT, R), -3, 6)).isCloseTo(areaOf(road, end), within(9 * TOLERANCE));
    }

    private static double areaOf(RoadProfile road, double end) {
        double sum = end * (6 - road.joint(road.joints() - 1));
        for (int i = 0; i < road.sections(); i++) {
            sum += road.section(i).area(road.joint(i), road.joint(i + 1));
        }
        return sum;
    }

    private static double area(PiecewisePolynomial u, double from, double to) {
        double sum = u.valueBefore() * (u.joint(0) - from) + u.valueAfter() * (to - u.joint(u.pieces()));
        for (int i = 0; i < u.pieces(); i++) {
            double[] c = u.coefficients(i);
            double d = u.joint(i + 1) - u.joint(i);
            for (int k = 0; k < c.length; k++) {
                sum += c[k] * Math.pow(d, k + 1) / (k + 1);
            }
        }
        return sum;
    }

    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void theFootprintIsTheMeanOfTheRoad(
            @ForAll("roads") RoadProfile road, @ForAll @Scale(4) @DoubleRange(min = -0.2, max = 3) double X) {
        int n = 20000;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            sum += road.height(X - 0.07 + 0.14 * (i + 0.5) / n);
        }
        assertThat(path(road, PathKind.FOOTPRINT, 1).value(X)).isCloseTo(sum / n, within(1e-5));
    }
}
