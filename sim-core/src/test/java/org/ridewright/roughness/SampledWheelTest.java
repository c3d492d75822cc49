package org.ridewright.roughness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.road.RoadProfile;
import org.ridewright.roughness.SampledWheel.Disc;
import org.ridewright.roughness.SampledWheel.Footprint;
import org.ridewright.roughness.SampledWheel.Pneumatic;
import org.ridewright.vehicle.PathKind;
import org.ridewright.wheel.WheelPath;

class SampledWheelTest {
    private static double[] sine(int n, double spacing, double amplitude, double length) {
        double[] y = new double[n];
        for (int i = 0; i < n; i++) {
            y[i] = amplitude * Math.sin(2 * Math.PI * i * spacing / length);
        }
        return y;
    }

    private static double amplitude(double[] y, double spacing, double length, int waves) {
        int n = (int) Math.round(waves * length / spacing);
        double re = 0;
        double im = 0;
        for (int i = 0; i < n; i++) {
            re += y[i] * Math.cos(2 * Math.PI * i * spacing / length);
            im += y[i] * Math.sin(2 * Math.PI * i * spacing / length);
        }
        return 2 * Math.hypot(re, im) / n;
    }

    /** The disc's path over a smooth road is its parallel curve, {@code u(x − R sin α) = r(x) + R cos α − R}. */
    @ParameterizedTest
    @ValueSource(doubles = {0.6, 0.9, 1.2, 1.5})
    void aDiscOnALongSineFollowsItsParallelCurve(double diameter) {
        double spacing = 0.005;
        double length = 5;
        double a = 0.02;
        Disc disc = new Disc(diameter);
        int margin = disc.margin(spacing);
        double[] path = disc.path(sine(4000 + 2 * margin, spacing, a, length), margin, spacing);
        double R = diameter / 2;
        for (int i = 0; i < 2000; i += 7) {
            double X = (i + margin) * spacing;
            double x = X;
            for (int k = 0; k < 60; k++) {
                double slope = 2 * Math.PI / length * a * Math.cos(2 * Math.PI * x / length);
                x = X + R * slope / Math.sqrt(1 + slope * slope);
            }
            double slope = 2 * Math.PI / length * a * Math.cos(2 * Math.PI * x / length);
            double expected = a * Math.sin(2 * Math.PI * x / length) + R / Math.sqrt(1 + slope * slope) - R;
            // chords of the sine lie below it by up to a (2π/L)² Δ²/8
            assertThat(path[i]).isCloseTo(expected, within(3e-7));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.6, 0.9, 1.2, 1.5})
    void aDiscFiltersNothingWhereTheRoadIsLessCurvedThanItself(double diameter) {
        double spacing = 0.01;
        double length = 4;
        // curvature 4π²a/L² is a twentieth of 1/R
        double a = length * length / (20 * 4 * Math.PI * Math.PI * diameter / 2);
        Disc disc = new Disc(diameter);
        int margin = disc.margin(spacing);
        double[] path = disc.path(sine(4000 + 2 * margin, spacing, a, length), margin, spacing);
        assertThat(amplitude(path, spacing, length, 8)).isCloseTo(a, within(2e-3 * a));
    }

    @Test
    void aLargeDiscBridgesWhatASmallOneFallsInto() {
        double spacing = 0.001;
        double[] small = pathOverNarrowWaves(0.3, spacing);
        double[] large = pathOverNarrowWaves(1.5, spacing);
        double fallSmall = 0.02 - Arrays.stream(small).min().orElseThrow();
        double fallLarge = 0.02 - Arrays.stream(large).min().orElseThrow();
        // between equal crests L apart a disc sinks by R − √(R² − L²/4)
        assertThat(fallSmall).isCloseTo(0.15 - Math.sqrt(0.15 * 0.15 - 0.01), within(2e-4));
        assertThat(fallLarge).isCloseTo(0.75 - Math.sqrt(0.75 * 0.75 - 0.01), within(2e-4));
    }

    private static double[] pathOverNarrowWaves(double diameter, double spacing) {
        Disc disc = new Disc(diameter);
        int margin = disc.margin(spacing);
        double[] road = sine(2000 + 2 * margin, spacing, 0.02, 0.2);
        for (int i = 0; i < road.length; i++) {
            // crests alone, so that the disc pivots on points
            road[i] = Math.abs(i % 200) == 50 ? 0.02 : -0.2;
        }
        return disc.path(road, margin, spacing);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.4, 0.5, 0.9, 1.3, 2, 7})
    void aFootprintTakesTheSincOffASine(double length) {
        double spacing = 0.001;
        Footprint footprint = new Footprint(0.4);
        int margin = footprint.margin(spacing);
        double[] path =
                footprint.path(sine((int) (3 * length / spacing) + 2 * margin, spacing, 0.01, length), margin, spacing);
        double x = Math.PI * 0.4 / length;
        assertThat(amplitude(path, spacing, length, 3)).isCloseTo(0.01 * Math.abs(Math.sin(x) / x), within(1e-7));
    }

    @Property(tries = 60)
    void everyWheelMakesTheSamePathAsTheOneThatRides(
            @ForAll @Size(min = 20, max = 60) List<@DoubleRange(min = -0.05, max = 0.05) Double> middle,
            @ForAll @DoubleRange(min = 0.2, max = 1.6) double diameter,
            @ForAll @DoubleRange(min = 0.05, max = 0.3) double footprint) {
        double spacing = 0.05;
        Pneumatic pneumatic = new Pneumatic(diameter, footprint);
        int margin = pneumatic.margin(spacing);
        double[] road = new double[middle.size() + 4 * margin];
        for (int i = 0; i < middle.size(); i++) {
            road[2 * margin + i] = middle.get(i);
        }
        RoadProfile profile = RoadProfile.of(polyline(road, spacing));
        compare(new Disc(diameter), profile, road, PathKind.DISC, diameter, footprint);
        compare(new Footprint(footprint), profile, road, PathKind.FOOTPRINT, diameter, footprint);
    }

    private static void compare(
            SampledWheel wheel, RoadProfile profile, double[] road, PathKind kind, double diameter, double footprint) {
        double spacing = 0.05;
        PiecewisePolynomial exact = WheelPath.of(profile, kind, diameter / 2, footprint / 2, WheelPath.TOLERANCE);
        int margin = wheel.margin(spacing);
        double[] path = wheel.path(road, margin, spacing);
        for (int i = 0; i < path.length; i++) {
            assertThat(path[i])
                    .as("%s at %d", wheel.label(), i)
                    .isCloseTo(exact.value((i + margin) * spacing), within(3e-8));
        }
    }

    private static PiecewisePolynomial polyline(double[] y, double spacing) {
        double[] joints = new double[y.length];
        double[][] pieces = new double[y.length - 1][];
        for (int i = 0; i < y.length; i++) {
            joints[i] = i * spacing;
            if (i + 1 < y.length) {
                pieces[i] = new double[] {y[i], (y[i + 1] - y[i]) / spacing};
            }
        }
        return new PiecewisePolynomial(joints, pieces, y[y.length - 1]);
    }

    @Test
    void aPneumaticWheelRollsFirstAndAveragesThen() {
        double spacing = 0.01;
        Pneumatic wheel = new Pneumatic(0.6, 0.12);
        int margin = wheel.margin(spacing);
        double[] road = new double[400 + 2 * margin];
        Arrays.fill(road, 200 + margin, 205 + margin, 0.03);
        double[] path = wheel.path(road, margin, spacing);
        Disc disc = new Disc(0.6);
        double[] rolled = disc.path(road, disc.margin(spacing), spacing);
        int shift = margin - disc.margin(spacing);
        double mean = 0;
        for (int j = -6; j < 6; j++) {
            mean += (rolled[190 + shift + j] + rolled[190 + shift + j + 1]) / 24;
        }
        assertThat(path[190]).isCloseTo(mean, within(1e-15)).isPositive();
        assertThat(path[0]).isZero();
    }

    @Test
    void tooLittleRoadIsRefused() {
        assertThatThrownBy(() -> new Disc(0.6).path(new double[100], 10, 0.01))
                .hasMessageContaining("31 heights on each side");
        assertThatThrownBy(() -> new Disc(0)).hasMessageContaining("must be > 0 m");
    }
}
