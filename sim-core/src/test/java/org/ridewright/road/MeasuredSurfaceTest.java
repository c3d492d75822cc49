package org.ridewright.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.ridewright.road.Roads.m;
import static org.ridewright.road.Surfaces.heights;
import static org.ridewright.road.Surfaces.road;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ridewright.quantity.Measure;
import org.ridewright.road.Surface.Measured;
import org.ridewright.road.Surface.Measured.Trend;

class MeasuredSurfaceTest {
    private static final double START = 10;
    private static final Trend AS_MEASURED = new Measured.AsMeasured();
    private static final Trend DETRENDED = new Measured.Detrended();

    /** 200 m of a profile at points that stand unevenly, the mean distance apart given. */
    private static MeasuredProfile profile(double apart, DoubleUnaryOperator height) {
        int n = (int) Math.round(200 / apart);
        double[] x = new double[n + 1];
        double[] z = new double[n + 1];
        Random shift = new Random(1);
        for (int i = 0; i <= n; i++) {
            x[i] = 35 + apart * (i + 0.6 * (shift.nextDouble() - 0.5));
            z[i] = height.applyAsDouble(x[i] - 35);
        }
        return new MeasuredProfile("lane.csv", x, List.of(z));
    }

    private static Measured surface(MeasuredProfile profile, Trend trend, boolean spikesOut, Optional<Measure> every) {
        return new Measured(
                new Surface.Stretch(Optional.of(m(START)), Optional.empty()), profile, trend, spikesOut, every);
    }

    private static Track track(MeasuredProfile profile, Trend trend) {
        return RoadTracks.of(road(surface(profile, trend, false, Optional.empty())), 0.7)
                .get(0);
    }

    private static double wave(double length, double x) {
        return Math.sin(2 * Math.PI * x / length);
    }

    /** Amplitude of a wave in heights at 0.01 m from 60 m to 160 m of the profile, a whole number of waves. */
    private static double amplitude(Track track, double length) {
        double waves = Math.floor(100 / length) * length;
        int n = (int) Math.round(waves / 0.01);
        double[] z = heights(track, START + 60, waves / n, n);
        double sine = 0;
        double cosine = 0;
        for (int i = 0; i < n; i++) {
            double phase = 2 * Math.PI * (60 + i * waves / n) / length;
            sine += z[i] * Math.sin(phase) * 2 / n;
            cosine += z[i] * Math.cos(phase) * 2 / n;
        }
        return Math.hypot(sine, cosine);
    }

    @Test
    void theCurveGoesThroughThePointsAsMeasured() {
        MeasuredProfile profile = profile(0.1, x -> 3 + 0.02 * wave(7, x));
        Track track = track(profile, AS_MEASURED);
        double first = profile.station(0);

        for (int i = 200; i < 1800; i += 37) {
            double x = START + profile.station(i) - first;
            assertThat(track.window(x - 1, x + 1).height(x))
                    .isCloseTo(profile.height(0, i) - profile.height(0, 0), within(1e-12));
        }
    }

    @Test
    void betweenPointsItFollowsASmoothRoad() {
        Track track = track(profile(0.1, x -> 0.02 * wave(2, x)), DETRENDED);
        double offset = profile(0.1, x -> 0).station(0) - 35;
        double worst = 0;
        for (double x = 30; x < 170; x += 0.013) {
            double there = track.window(START + x - 0.5, START + x + 0.5).height(START + x);
            worst = Math.max(worst, Math.abs(there - 0.02 * wave(2, x + offset)));
        }

        // third derivative 0.62 m/m³, points up to 0.16 m apart
        assertThat(worst).isLessThan(3e-4);
    }

    @Test
    void aStraightSlopeIsTakenOff() {
        Track track = track(profile(0.1, x -> 12 + 0.05 * x + 0.01 * wave(10, x)), DETRENDED);

        assertThat(amplitude(track, 10)).isCloseTo(0.01, within(5e-5));
        assertThat(Math.abs(track.window(100, 120).height(110))).isLessThan(0.012);
    }

    @ParameterizedTest
    @ValueSource(doubles = {5, 10, 20, 40})
    void theHighPassKeepsHalfOfAWaveOfItsLength(double length) {
        double cutOff = 20;
        Track track = track(profile(0.1, x -> 0.05 * wave(length, x)), new Measured.HighPass(m(cutOff)));
        // transmission of a Gaussian mean line, 2^−(λc/λ)²
        double kept = 1 - Math.pow(2, -(cutOff / length) * (cutOff / length));

        assertThat(amplitude(track, length) / 0.05).isCloseTo(kept, within(0.01));
    }

    @Test
    void theHighPassLeavesNothingOfASlopeUpToTheEnds() {
        Track track = track(profile(0.1, x -> 0.03 * x), new Measured.HighPass(m(20)));

        for (double z : heights(track, 0, 0.5, 420)) {
            assertThat(z).isCloseTo(0, within(1e-9));
        }
    }

    @Test
    void resamplingKeepsLongWavesAndLeavesNothingOfThoseItCannotShow() {
        assertThat(amplitude(resampled(x -> 0.01 * wave(4, x)), 4)).isCloseTo(0.01, within(1e-4));
        // samples 0.2 m apart would show the wave of 0.22 m as one of 2.2 m
        assertThat(amplitude(resampled(x -> 0.01 * wave(0.22, x)), 2.2)).isLessThan(2e-5);
    }

    private static Track resampled(DoubleUnaryOperator height) {
        Measured surface = surface(profile(0.005, height), DETRENDED, false, Optional.of(m(0.2)));
        return RoadTracks.of(road(surface), 0.7).get(0);
    }

    @Test
    void twoTracksServeTheWheelsOfTheirSides() {
        double[] x = new double[400];
        double[] left = new double[400];
        double[] right = new double[400];
        for (int i = 0; i < 400; i++) {
            x[i] = 0.25 * i;
            left[i] = 0.02 * wave(10, x[i]);
            right[i] = -0.01 * wave(10, x[i]);
        }
        Measured two =
                surface(new MeasuredProfile("two.csv", x, List.of(left, right)), AS_MEASURED, false, Optional.empty());
        List<Track> tracks = RoadTracks.of(road(two), 0.7, -0.6, 0);
        double top = START + 52.5;

        assertThat(tracks.get(0).window(60, 70).height(top)).isCloseTo(0.02, within(1e-12));
        assertThat(tracks.get(1).window(60, 70).height(top)).isCloseTo(-0.01, within(1e-12));
        assertThat(tracks.get(2).window(60, 70).height(top)).isCloseTo(0.005, within(1e-12));
        assertThat(RoadTracks.everySide(road(two)).window(60, 70).height(top)).isCloseTo(0.02, within(1e-12));
    }

    @Test
    void itFadesInAndOutAndEndsLevel() {
        Track track = track(profile(0.1, x -> 1 + 0.01 * x), AS_MEASURED);

        assertThat(track.begin()).isEqualTo(START);
        assertThat(track.end()).isCloseTo(START + 200, within(0.2));
        assertThat(track.window(0, 300).height(START)).isZero();
        assertThat(track.window(0, 300).heightAfter()).isZero();
    }

    @Test
    void aStretchCutsItShort() {
        MeasuredProfile profile = profile(0.1, x -> 0.01 * wave(10, x));
        Measured cut = new Measured(Surfaces.stretch(10, 60), profile, DETRENDED, false, Optional.empty());

        assertThat(RoadTracks.of(road(cut), 0.7).get(0).end()).isBetween(59.8, 60.0);
    }

    @Test
    void missingHeightsAreBridgedAndSaid() {
        MeasuredProfile profile = profile(0.1, x -> x > 50 && x < 53 ? Double.NaN : 0.001 * x);
        Measured surface = surface(profile, DETRENDED, false, Optional.empty());

        assertThat(surface.remarks()).hasSize(2);
        assertThat(surface.remarks().get(0)).isEqualTo("'lane.csv' lacks 29 heights, bridged by smooth lines.");
        assertThat(surface.remarks().get(1))
                .contains("'lane.csv' has 1 gap, 3.")
                .contains("bridged");
        for (double z : heights(track(profile, DETRENDED), START + 49, 0.1, 50)) {
            assertThat(z).isCloseTo(0, within(1e-4));
        }
    }

    /** Too few for a gap, yet the file says that they are not there. */
    @Test
    void twoEmptyCellsAreSaidAsWell() {
        MeasuredProfile profile = profile(0.1, x -> x > 50.05 && x < 50.25 ? Double.NaN : 0.001 * x);

        assertThat(surface(profile, DETRENDED, false, Optional.empty()).remarks())
                .containsExactly("'lane.csv' lacks 2 heights, bridged by smooth lines.");
    }

    @Test
    void spikesAreSaidAndLeftOutIfWished() {
        DoubleUnaryOperator road = x -> 0.02 * wave(8, x);
        MeasuredProfile clean = profile(0.1, road);
        double[] x = new double[clean.size()];
        double[] z = new double[clean.size()];
        for (int i = 0; i < x.length; i++) {
            x[i] = clean.station(i);
            z[i] = clean.height(0, i) + (i == 700 || i == 1300 ? 0.3 : 0);
        }
        MeasuredProfile spiky = new MeasuredProfile("spiky.csv", x, List.of(z));
        Measured kept = surface(spiky, AS_MEASURED, false, Optional.empty());
        Measured out = surface(spiky, AS_MEASURED, true, Optional.empty());
        double at = START + x[700] - x[0];

        assertThat(kept.remarks()).singleElement().asString().contains("2 spikes, kept, the first at 105.0");
        assertThat(out.remarks()).singleElement().asString().contains("2 spikes, left out");
        assertThat(RoadTracks.of(road(kept), 0.7).get(0).window(at, at).height(at))
                .isGreaterThan(0.25);
        assertThat(RoadTracks.of(road(out), 0.7).get(0).window(at, at).height(at))
                .isCloseTo(clean.height(0, 700) - clean.height(0, 0), within(1e-3));
    }

    @Test
    void aStepIsNoSpike() {
        MeasuredProfile profile = profile(0.1, x -> x < 100 ? 0 : 0.12);

        assertThat(surface(profile, AS_MEASURED, false, Optional.empty()).remarks())
                .noneMatch(remark -> remark.contains("spike"));
    }

    @Test
    void aProfileThatEndsFarFromItsBeginningSaysSo() {
        MeasuredProfile hill = profile(0.1, x -> 0.02 * x);

        assertThat(surface(hill, AS_MEASURED, false, Optional.empty()).remarks())
                .singleElement()
                .asString()
                .contains("4.0")
                .contains("detrended");
        assertThat(surface(hill, DETRENDED, false, Optional.empty()).remarks()).isEmpty();
    }

    @Test
    void aProfileMustRunForward() {
        assertThatThrownBy(() -> new MeasuredProfile("x", new double[] {0, 2, 1}, List.of(new double[3])))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("must increase");
    }
}
