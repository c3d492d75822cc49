package org.ridewright.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.ridewright.road.Roads.m;
import static org.ridewright.road.Surfaces.heights;
import static org.ridewright.road.Surfaces.ratio;
import static org.ridewright.road.Surfaces.road;
import static org.ridewright.road.Surfaces.stretch;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;

/** Each pattern's geometry beside what a hand works out. */
class PatternedSurfaceTest {
    private static Measure rad(double value) {
        return Measure.of(value, QuantityKind.ANGLE);
    }

    private static RoadProfile profile(Surface surface, double y, double from, double to) {
        return RoadTracks.of(road(surface), y).get(0).window(from, to);
    }

    @Nested
    class WashboardTest {
        private Surface.Washboard washboard(double drift, double from, double to) {
            return new Surface.Washboard(stretch(from, to), m(0.6), m(0.03), ratio(drift), 1);
        }

        @Test
        void hasItsTroughsHalfAPitchFromItsCrests() {
            RoadProfile profile = profile(washboard(0, 2, 20), 0.7, 0, 25);

            assertThat(profile.height(2)).isZero();
            assertThat(profile.height(2.3)).isCloseTo(-0.03, within(1e-12));
            assertThat(profile.height(2.6)).isCloseTo(0, within(1e-12));
            assertThat(profile.height(2.15)).isCloseTo(-0.015, within(1e-6));
            assertThat(profile.height(2.1)).isCloseTo(-0.015 * (1 - Math.cos(2 * Math.PI / 6)), within(1e-6));
        }

        @Test
        void endsOnTheLastCrestThatHasRoom() {
            Track track = RoadTracks.of(road(washboard(0, 2, 20.5)), 0).get(0);

            assertThat(track.begin()).isEqualTo(2);
            assertThat(track.end()).isCloseTo(2 + 30 * 0.6, within(1e-9));
            assertThat(track.window(0, 30).heightAfter()).isZero();
        }

        @Test
        void isTheSameUnderBothWheels() {
            List<Track> tracks = RoadTracks.of(road(washboard(0.1, 2, 200)), 0.7, -0.7);

            assertThat(heights(tracks.get(0), 0, 0.05, 4000)).isEqualTo(heights(tracks.get(1), 0, 0.05, 4000));
        }

        /** Over n waves the crests stray by {@code drift √n} pitches; here 10 % over 900 waves, 3 pitches. */
        @Test
        void driftsOutOfStepAsTheRootOfTheDistance() {
            double square = 0;
            for (long seed = 1; seed <= 60; seed++) {
                Rows crests = new Rows(0, Double.POSITIVE_INFINITY, 0.6, 0.1, new Noise(seed, Streams.WASHBOARD));
                double off = (crests.at(900) - 900 * 0.6) / 0.6;
                square += off * off / 60;
            }

            // χ² of 60 degrees: the root lies within 35 % with 4 sigma
            assertThat(Math.sqrt(square)).isCloseTo(3, within(1.05));
        }
    }

    @Nested
    class SettsTest {
        private Surface.Setts setts(double unevenness, double irregularity, long seed) {
            return new Surface.Setts(
                    stretch(2, 102),
                    m(0.16),
                    m(0.12),
                    m(0.006),
                    m(0.01),
                    m(0.015),
                    m(unevenness),
                    ratio(irregularity),
                    seed);
        }

        @Test
        void aStoneFollowsAJointAndIsAParabolaWithItsCrownLevel() {
            RoadProfile profile = profile(setts(0, 0, 1), 0.7, 0, 3);

            assertThat(profile.height(1.999)).isZero();
            assertThat(profile.height(2.005)).isCloseTo(-0.006 - 0.015, within(1e-12));
            assertThat(profile.height(2.01)).isCloseTo(-0.006, within(1e-12));
            assertThat(profile.height(2.01 + 0.075)).isCloseTo(0, within(1e-12));
            assertThat(profile.height(2.01 + 0.075 / 2)).isCloseTo(-0.006 / 4, within(1e-12));
            assertThat(profile.height(2.165)).isCloseTo(-0.021, within(1e-12));
            assertThat(profile.height(2.17 + 0.075)).isCloseTo(0, within(1e-12));
        }

        @Test
        void unevenStonesDifferFromRowToRowAndFromLeftToRight() {
            Road road = road(setts(0.004, 0, 3));
            List<Track> tracks = RoadTracks.of(road, 0.7, -0.7, 0.74);
            double[] left = crowns(tracks.get(0));
            double[] right = crowns(tracks.get(1));
            double[] near = crowns(tracks.get(2));

            assertThat(Surfaces.rms(left)).isCloseTo(0.004, within(0.0005));
            assertThat(correlation(left, right)).isCloseTo(0, within(0.2));
            // 40 mm aside most wheels stand on the same stone
            assertThat(correlation(left, near)).isBetween(0.4, 0.95);
        }

        private double[] crowns(Track track) {
            return heights(track, 2 + 0.01 + 0.075, 0.16, 600);
        }

        private double correlation(double[] a, double[] b) {
            double sum = 0;
            for (int i = 0; i < a.length; i++) {
                sum += a[i] * b[i] / a.length;
            }
            return sum / (Surfaces.rms(a) * Surfaces.rms(b));
        }

        @Test
        void rowsOfUnequalLengthKeepTheirMeanAndStandSquareAcross() {
            List<Track> tracks = RoadTracks.of(road(setts(0, 0.1, 3)), 0.7, -0.3);
            RoadProfile left = tracks.get(0).window(50, 60);
            RoadProfile right = tracks.get(1).window(50, 60);

            assertThat(left.joints()).isEqualTo(right.joints());
            assertThat(left.joint(17)).isEqualTo(right.joint(17));
            double length = (left.joint(100) - left.joint(0)) / 50;
            assertThat(length).isCloseTo(0.16, within(0.01));
            assertThat(left.joint(5) - left.joint(3)).isNotEqualTo(left.joint(7) - left.joint(5));
        }

        @Test
        void aJointTooNarrowForTheWheelIsHardlyFelt() {
            // a wheel of 1 m sinks by gap²/8R = 0.025 mm into a joint of 10 mm with level stones about it
            Surface.Setts flat =
                    new Surface.Setts(stretch(2, 12), m(0.16), m(0.12), m(0), m(0.01), m(0.015), m(0), ratio(0), 1);
            RoadProfile profile = profile(flat, 0, 0, 14);

            assertThat(profile.height(2.005)).isCloseTo(-0.015, within(1e-12));
            assertThat(profile.height(2.1)).isZero();
        }
    }

    @Nested
    class RutsTest {
        private final Surface.Ruts even = new Surface.Ruts(stretch(2, 52), m(0.05), m(0.4), m(1.4), ratio(0), m(5), 1);

        @Test
        void areDeepestInTheirMiddlesAndGoneAtTheirEdges() {
            assertThat(profile(even, 0.7, 0, 60).height(20)).isCloseTo(-0.05, within(1e-12));
            assertThat(profile(even, -0.7, 0, 60).height(20)).isCloseTo(-0.05, within(1e-12));
            assertThat(profile(even, 0.8, 0, 60).height(20)).isCloseTo(-0.025, within(1e-12));
            assertThat(profile(even, 0.91, 0, 60).height(20)).isZero();
            assertThat(profile(even, 0, 0, 60).height(20)).isZero();
        }

        @Test
        void beginAndEndOnARampOfOneLength() {
            RoadProfile profile = profile(even, 0.7, 0, 60);

            assertThat(profile.height(2)).isZero();
            assertThat(profile.height(4.5)).isCloseTo(-0.025, within(1e-12));
            assertThat(profile.height(7)).isCloseTo(-0.05, within(1e-12));
            assertThat(profile.height(49.5)).isCloseTo(-0.025, within(1e-12));
            assertThat(profile.heightAfter()).isZero();
        }

        @Test
        void varyOnEachSideByThemselves() {
            Surface.Ruts varying = new Surface.Ruts(stretch(2, 2002), m(0.05), m(0.4), m(1.4), ratio(0.3), m(5), 1);
            List<Track> tracks = RoadTracks.of(road(varying), 0.7, -0.7);
            double[] left = heights(tracks.get(0), 7, 5, 390);
            double[] right = heights(tracks.get(1), 7, 5, 390);
            double[] sum = new double[left.length];
            double[] off = new double[left.length];
            for (int i = 0; i < sum.length; i++) {
                sum[i] = left[i] + right[i];
                off[i] = left[i] + 0.05;
            }

            assertThat(Arrays.stream(left).average().orElseThrow()).isCloseTo(-0.05, within(0.004));
            assertThat(Surfaces.rms(off)).isCloseTo(0.015, within(0.003));
            assertThat(Arrays.stream(left).max().orElseThrow()).isLessThanOrEqualTo(0);
            assertThat(Arrays.stream(sum)
                            .map(s -> (s + 0.1) * (s + 0.1))
                            .average()
                            .orElseThrow())
                    .isCloseTo(2 * 0.015 * 0.015, within(1.5e-4));
        }

        @Test
        void aVehicleWithoutSidesRunsInOne() {
            assertThat(RoadTracks.everySide(road(even)).window(0, 60).height(20))
                    .isCloseTo(-0.05, within(1e-12));
        }
    }

    @Nested
    class TwistTest {
        private Surface.Twist twist(double lag) {
            return new Surface.Twist(stretch(2, 102), m(0.08), m(10), m(1.6), rad(lag));
        }

        @Test
        void oneSideIsUpWhereTheOtherIsDown() {
            List<Track> tracks = RoadTracks.of(road(twist(Math.PI)), 0.8, -0.8, 0.4, 0);

            // three whole waves and a quarter from the beginning
            double x = 2 + 32.5;
            assertThat(tracks.get(0).window(30, 40).height(x)).isCloseTo(0.04, within(1e-9));
            assertThat(tracks.get(1).window(30, 40).height(x)).isCloseTo(-0.04, within(1e-9));
            assertThat(tracks.get(2).window(30, 40).height(x)).isCloseTo(0.02, within(1e-9));
            assertThat(tracks.get(3).window(30, 40).height(x)).isCloseTo(0, within(1e-12));
        }

        @Test
        void withoutLagBothSidesRiseTogether() {
            List<Track> tracks = RoadTracks.of(road(twist(0)), 0.8, -0.3);

            assertThat(heights(tracks.get(0), 0, 0.25, 400))
                    .containsExactly(heights(tracks.get(1), 0, 0.25, 400), within(1e-12));
        }

        @Test
        void growsOverItsFirstWaveAndIsSmooth() {
            RoadProfile profile = profile(twist(Math.PI), 0.8, 0, 110);

            assertThat(profile.height(2)).isZero();
            // at three quarters of the first wave the half cosine stands at 0.854
            assertThat(profile.height(9.5)).isCloseTo(-0.04 * (1 - Math.cos(0.75 * Math.PI)) / 2, within(1e-4));
            assertThat(profile.heightAfter()).isZero();
            for (int i = 1; i < profile.sections(); i++) {
                double x = profile.joint(i);
                assertThat(profile.section(i).height(x))
                        .isCloseTo(profile.section(i - 1).height(x), within(1e-12));
                assertThat(profile.section(i).slope(x))
                        .isCloseTo(profile.section(i - 1).slope(x), within(1e-9));
            }
        }
    }

    @Nested
    class JointsTest {
        @Test
        void aSlabRisesToItsLipAndSagsBetween() {
            Surface.Joints joints =
                    new Surface.Joints(stretch(2, 62), m(6), m(0.02), m(0.03), m(0.004), m(0.005), rad(0));
            RoadProfile profile = profile(joints, 0.7, 0, 70);

            assertThat(profile.height(2.01)).isCloseTo(-0.03, within(1e-12));
            assertThat(profile.height(2.02)).isCloseTo(0, within(1e-12));
            assertThat(profile.height(2.02 + 5.98 / 2)).isCloseTo(0.002 - 0.005, within(1e-12));
            assertThat(profile.height(8 - 1e-9)).isCloseTo(0.004, within(1e-9));
            assertThat(profile.height(8.01)).isCloseTo(-0.03, within(1e-12));
            assertThat(profile.height(8.02)).isCloseTo(0, within(1e-12));
            assertThat(profile.heightAfter()).isZero();
        }

        @Test
        void aGaplessJointIsAStepDown() {
            Surface.Joints joints = new Surface.Joints(stretch(2, 62), m(6), m(0), m(0), m(0.004), m(0), rad(0));
            RoadProfile profile = profile(joints, 0, 0, 70);

            assertThat(profile.height(8)).isCloseTo(0.004, within(1e-12));
            assertThat(profile.height(8 + 1e-6)).isCloseTo(0, within(1e-8));
        }

        @Test
        void skewedJointsAreMetLaterOnTheLeft() {
            Surface.Joints joints = new Surface.Joints(stretch(3, 63), m(6), m(0.02), m(0.03), m(0), m(0), rad(0.2));
            List<Track> tracks = RoadTracks.of(road(joints), 0.7, -0.7);

            assertThat(tracks.get(0).begin()).isCloseTo(3 + 0.7 * Math.tan(0.2), within(1e-12));
            assertThat(tracks.get(1).begin()).isCloseTo(3 - 0.7 * Math.tan(0.2), within(1e-12));
        }
    }

    @Nested
    class StonesTest {
        private Surface.Stones stones(double perMetre, double strip, double size, double spread) {
            return new Surface.Stones(
                    stretch(2, 5002), ratio(perMetre), m(strip), m(size), ratio(spread), ratio(0.5), 1);
        }

        /** A line meets a stone of width s that lies anywhere in a strip S with probability s/S. */
        @Test
        void aLineMeetsAsManyAsItsShareOfTheStrip() {
            RoadProfile profile = profile(stones(0.8, 2, 0.06, 1), 0.3, 0, 5010);
            int met = 0;
            double highest = 0;
            double area = 0;
            for (int i = 0; i < profile.sections(); i++) {
                double a = profile.joint(i);
                double b = profile.joint(i + 1);
                area += profile.section(i).area(a, b);
                highest = Math.max(highest, profile.height(a + (b - a) / 2));
                met += profile.height(a) < 1e-12 && profile.height(a + (b - a) / 2) > 1e-12 ? 1 : 0;
            }

            // 0.8·5000·0.03 = 120 of them, Poisson
            assertThat(met).isBetween(75, 165);
            assertThat(highest).isLessThan(2 * 0.03);
            // each a paraboloid of volume πa²h/2, so the mean height is n/S·πa²h/2
            double mean = 0.8 / 2 * Math.PI * 0.03 * 0.03 * 0.03 / 2;
            assertThat(area / 5000).isCloseTo(mean, within(0.4 * mean));
        }

        @Test
        void aStoneIsAParabolaWhoseHeightTheLineDecides() {
            RoadProfile profile = profile(stones(0.2, 1.5, 0.08, 1), 0.1, 0, 2000);
            int looked = 0;
            for (int i = 0; i < profile.sections(); i++) {
                double a = profile.joint(i);
                double b = profile.joint(i + 1);
                double h = profile.height(a + (b - a) / 2);
                if (h > 0
                        && profile.section(i).height(a) < 1e-12
                        && profile.section(i).height(b) < 1e-12) {
                    // half length b = √(a² − u²), height h = H(1 − u²/a²) = H b²/a² of a stone a = H = 40 mm
                    double half = (b - a) / 2;
                    assertThat(h).isCloseTo(0.04 * half * half / (0.04 * 0.04), within(1e-9));
                    looked++;
                }
            }
            assertThat(looked).isGreaterThan(5);
        }

        @Test
        void wheelsFarFromTheStripMeetNone() {
            Track track = RoadTracks.of(road(stones(3, 1, 0.06, 1.3)), 0.8).get(0);

            assertThat(heights(track, 0, 0.01, 20_000)).containsOnly(0);
        }

        @Test
        void sizesSpreadAsStatedAndAreCut() {
            Surface.Stones stones = stones(5, 0.5, 0.03, 1.5);
            double highest = 0;
            for (double z : heights(RoadTracks.of(road(stones), 0).get(0), 2, 0.005, 400_000)) {
                highest = Math.max(highest, z);
            }

            assertThat(stones.largest()).isCloseTo(0.0675, within(1e-12));
            // two may overlap
            assertThat(highest).isBetween(0.5 * 0.045, 0.0675);
        }
    }
}
