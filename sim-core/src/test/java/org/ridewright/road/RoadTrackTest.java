package org.ridewright.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.ridewright.road.Roads.m;
import static org.ridewright.road.Roads.plank;
import static org.ridewright.road.Roads.step;
import static org.ridewright.road.Surfaces.ratio;
import static org.ridewright.road.Surfaces.road;
import static org.ridewright.road.Surfaces.spectral;
import static org.ridewright.road.Surfaces.stretch;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;

class RoadTrackTest {
    private static final Measure SQUARE = Measure.of(0, QuantityKind.ANGLE);

    static Stream<Surface> everyKind() {
        return Stream.of(
                spectral(256e-6, 2, 3),
                new Surface.Setts(
                        stretch(3, 160), m(0.16), m(0.12), m(0.006), m(0.01), m(0.01), m(0.003), ratio(0.1), 2),
                new Surface.Washboard(stretch(20, 140.3), m(0.6), m(0.02), ratio(0.1), 4),
                new Surface.Ruts(stretch(2, 180), m(0.04), m(0.5), m(1.4), ratio(0.3), m(4), 5),
                new Surface.Twist(stretch(5, 150), m(0.06), m(8), m(1.4), Measure.of(Math.PI, QuantityKind.ANGLE)),
                new Surface.Joints(stretch(2.5, 190), m(6), m(0.02), m(0.03), m(0.003), m(0.002), SQUARE),
                new Surface.Stones(stretch(2, 170), ratio(3), m(2), m(0.05), ratio(1.4), ratio(0.5), 6),
                new Surface.Measured(
                        stretch(10, 120), wavyProfile(), new Surface.Measured.Detrended(), false, Optional.empty()));
    }

    private static MeasuredProfile wavyProfile() {
        double[] x = new double[2000];
        double[] left = new double[2000];
        double[] right = new double[2000];
        for (int i = 0; i < x.length; i++) {
            x[i] = 0.05 * i + 0.01 * Math.sin(i);
            left[i] = 0.02 * Math.sin(x[i]) + 0.003 * Math.sin(7 * x[i]);
            right[i] = 0.02 * Math.cos(x[i]);
        }
        return new MeasuredProfile("wavy.csv", x, List.of(left, right));
    }

    private static Road everything() {
        List<Obstacle> obstacles = List.of(plank(30, 0.04, 0.15), step(70, 0.03), plank(100.01, 0.02, 0.1));
        return new Road("all", obstacles, everyKind().toList(), Road.RUN_UP, Optional.empty());
    }

    @ParameterizedTest
    @MethodSource("everyKind")
    void aStationHasTheSameHeightToTheLastBitInAnyWindow(Surface surface) {
        assertSameInAnyWindow(road(surface));
    }

    @Test
    void soItHasWhereEverythingLiesOnTopOfEverything() {
        assertSameInAnyWindow(everything());
    }

    private static void assertSameInAnyWindow(Road road) {
        Track forward = RoadTracks.of(road, 0.7, -0.7).get(0);
        Track another = RoadTracks.of(road, 0.7, -0.7).get(0);
        RoadProfile whole = forward.window(0, 200);
        java.util.Random places = new java.util.Random(1);
        for (int i = 0; i < 150; i++) {
            double from = 200 * places.nextDouble();
            double to = Math.min(200, from + 8 * places.nextDouble());
            RoadProfile window = another.window(from, to);
            for (int k = 0; k <= 20; k++) {
                double x = from + (to - from) * k / 20;
                assertThat(window.height(x))
                        .as("x = %s, window from %s", x, from)
                        .isEqualTo(whole.height(x));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("everyKind")
    void aWindowThatBeginsAndEndsOnJointsHoldsTheSectionsOnBothSides(Surface surface) {
        Track track = RoadTracks.of(road(surface), 0.7).get(0);
        RoadProfile wide = track.window(20, 110);
        RoadProfile window = track.window(wide.joint(3), wide.joint(6));

        assertThat(window.joint(0)).isEqualTo(wide.joint(2));
        assertThat(window.joint(window.joints() - 1)).isEqualTo(wide.joint(7));
    }

    @ParameterizedTest
    @MethodSource("everyKind")
    void outsideItsWindowTheProfileGoesOnLevelWithoutAJump(Surface surface) {
        RoadProfile window = RoadTracks.of(road(surface), 0.7).get(0).window(50, 55);
        int last = window.sections();

        assertThat(window.joint(0)).isLessThan(50);
        assertThat(window.joint(last)).isGreaterThan(55);
        assertThat(window.heightBefore()).isEqualTo(window.section(0).height(window.joint(0)));
        assertThat(window.heightAfter()).isCloseTo(window.section(last - 1).height(window.joint(last)), within(1e-15));
    }

    @Property(tries = 60)
    void surfacesAndObstaclesAddUp(@ForAll @DoubleRange(min = 0, max = 200) double x) {
        Road road = everything();
        double sum = new ObstacleProfiles(road).along(0.7).height(x);
        for (Surface surface : road.surfaces()) {
            sum += RoadTracks.of(road(surface), 0.7).get(0).window(x, x).height(x);
        }

        assertThat(RoadTracks.of(road, 0.7).get(0).window(x - 1, x + 1).height(x))
                .isCloseTo(sum, within(1e-12));
    }

    @Test
    void aRoadOfCubicsStaysAPolynomialAwayFromObstacles() {
        Track track = RoadTracks.of(everything(), 0.7).get(0);

        assertThat(track.window(80, 85).polynomial()).isPresent();
        assertThat(track.window(80, 85).height(82))
                .isNotEqualTo(track.window(60, 65).height(62));
        assertThat(track.window(69, 71).polynomial()).isEmpty();
    }

    @Test
    void beforeItsBeginningAndAfterItsEndTheRoadIsLevel() {
        Road road = new Road(
                "short",
                List.of(Roads.ramp(4, 0.05, 0.2)),
                List.of(new Surface.Washboard(stretch(6, 12), m(0.6), m(0.02), ratio(0), 1)),
                Road.RUN_UP,
                Optional.empty());
        Track track = RoadTracks.of(road, 0).get(0);

        assertThat(track.begin()).isEqualTo(4);
        assertThat(track.end()).isCloseTo(12, within(1e-9));
        assertThat(track.window(-10, 3).height(0)).isZero();
        assertThat(track.window(20, 30).height(25)).isEqualTo(0.05);
        assertThat(track.window(8, 9).height(8.4)).isCloseTo(0.05, within(1e-9));
    }

    @Test
    void aFlatRoadNeverBegins() {
        Track track = RoadTracks.of(road(), 0.7).get(0);

        assertThat(track.begin()).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(track.end()).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(track.window(0, 10).sections()).isZero();
    }

    @Test
    void aWindowThatRunsBackwardIsRefused() {
        Track track = RoadTracks.of(everything(), 0).get(0);

        assertThatThrownBy(() -> track.window(5, 4)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> track.window(0, Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void farAlongTheRoadNothingChangesInKind() {
        Track track = RoadTracks.of(road(spectral(256e-6, 2, 3)), 0).get(0);
        double near = Surfaces.rms(Surfaces.heights(track, 100, 0.2, 20_000));
        double far = Surfaces.rms(Surfaces.heights(track, 9.0e6, 0.2, 20_000));

        assertThat(far / near).isBetween(0.7, 1.4);
    }
}
