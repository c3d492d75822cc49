package org.ridewright.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.ridewright.road.Roads.m;
import static org.ridewright.road.Surfaces.heights;
import static org.ridewright.road.Surfaces.perMetre;
import static org.ridewright.road.Surfaces.ratio;
import static org.ridewright.road.Surfaces.rms;
import static org.ridewright.road.Surfaces.road;
import static org.ridewright.road.Surfaces.spectral;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.signal.Confidence;
import org.ridewright.signal.Detrend;
import org.ridewright.signal.PowerSpectrum;
import org.ridewright.signal.WelchAccumulator;
import org.ridewright.signal.WelchSpectra;

class SpectralSurfaceTest {
    private static final double CLASS_C = RoughnessClass.C.geometricMean();
    /** Lines of the estimates are this far apart, so that nothing is left of the steep rise below the band (cycle/m). */
    private static final double RESOLUTION = 0.005;

    private static SpectralSurface laid(Surface.Spectral surface, double... ys) {
        return new SpectralSurface(surface, LaneOrder.of(ys), 10);
    }

    private static double g(double n, double apart) {
        return new Coherence.Isotropic().ratio(n, 2, apart);
    }

    /** What the kernels make of white noise, exactly and without chance. */
    @Property(tries = 25)
    void theKernelsCarryTheStatedSpectrumThroughoutTheBand(
            @ForAll @DoubleRange(min = 1.2, max = 3.5) double waviness,
            @ForAll @DoubleRange(min = 5, max = 50) double lowestPerKilometre,
            @ForAll @DoubleRange(min = 5, max = 2000) double span) {
        double lowest = lowestPerKilometre / 1000;
        Surface.Spectral surface = spectral(CLASS_C, waviness, lowest, lowest * span, 1);
        SpectralSurface laid = laid(surface, 0.7, -0.7);

        for (double n = 1.15 * lowest; n < 0.88 * lowest * span; n *= 1.07) {
            double wanted = surface.spectrum().density(n);
            assertThat(laid.realised(0.7, 0.7, n) / wanted).as("n = %s", n).isCloseTo(1, within(0.02));
            assertThat(laid.realised(-0.7, -0.7, n) / wanted).as("n = %s", n).isCloseTo(1, within(0.02));
        }
        assertThat(laid.realised(0, 0, 0.85 * lowest) / surface.spectrum().density(0.85 * lowest))
                .isLessThan(0.01);
        assertThat(laid.realised(0, 0, 1.2 * lowest * span))
                .isLessThan(1e-5 * surface.spectrum().density(lowest * span));
    }

    /** The mean square over the band is that of a sharp one, {@code G(n₀) n₀² (1/n₁ − 1/n₂)}. */
    @Test
    void theEndsOfTheBandLeaveItsMeanSquare() {
        SpectralSurface laid = laid(spectral(CLASS_C, 2, 0.011, 2.83, 1));
        double sum = 0;
        double dn = 2e-5;
        for (double n = 0.005 + dn / 2; n < 3.5; n += dn) {
            sum += laid.realised(0, 0, n) * dn;
        }

        assertThat(Math.sqrt(sum)).isCloseTo(0.015226, within(0.015226 * 0.002));
    }

    @Test
    void aBentSpectrumHasBothSlopesAndMeetsAtTheBend() {
        RoughnessSpectrum bent = new RoughnessSpectrum(
                Measure.of(CLASS_C, QuantityKind.VOLUME),
                2.28,
                Optional.of(new RoughnessSpectrum.Bend(perMetre(0.16), 1.43)),
                RoughnessSpectrum.LOWEST,
                RoughnessSpectrum.HIGHEST,
                "");
        SpectralSurface laid = laid(new Surface.Spectral(Surface.Stretch.ALL, bent, new Coherence.Isotropic(), 1), 0.7);

        assertThat(bent.density(0.1)).isCloseTo(CLASS_C, within(1e-18));
        assertThat(bent.density(0.02)).isCloseTo(CLASS_C * Math.pow(0.2, -2.28), within(1e-12));
        assertThat(bent.density(0.16)).isCloseTo(bent.density(0.16 * (1 + 1e-12)), within(1e-14));
        assertThat(bent.density(3.2) / bent.density(0.32)).isCloseTo(Math.pow(10, -1.43), within(1e-12));
        for (double n : new double[] {0.02, 0.1, 0.15, 0.2, 1, 5}) {
            assertThat(laid.realised(0.7, 0.7, n) / bent.density(n)).isCloseTo(1, within(0.02));
        }
    }

    @Test
    void aBendBelowTheReferenceLeavesTheShortWavesAsStated() {
        RoughnessSpectrum bent = new RoughnessSpectrum(
                Measure.of(CLASS_C, QuantityKind.VOLUME),
                3,
                Optional.of(new RoughnessSpectrum.Bend(perMetre(0.05), 2)),
                RoughnessSpectrum.LOWEST,
                RoughnessSpectrum.HIGHEST,
                "");

        assertThat(bent.density(0.1)).isCloseTo(CLASS_C, within(1e-18));
        assertThat(bent.density(0.025) / bent.density(0.05)).isCloseTo(8, within(1e-12));
    }

    /**
     * Welch's estimate of a walked road, in octave bands: each lies within what chance allows with a probability of 1 − 1e-6, for all
     * bands of all roads together below 1e-3. The bounds are 6 % to 13 % wide.
     */
    @Property(tries = 24)
    void theEstimatedSpectrumFallsOnTheTarget(
            @ForAll RoughnessClass roughness,
            @ForAll @LongRange(min = 0, max = 1_000_000_000_000L) long seed,
            @ForAll @DoubleRange(min = -0.9, max = 0.9) double y) {
        Surface.Spectral surface = spectral(roughness.geometricMean(), 2, 0.011, 2, seed);
        Track track = RoadTracks.of(road(surface), y).get(0);
        double step = 0.125;
        WelchAccumulator welch =
                new WelchAccumulator(1 / step, WelchAccumulator.segmentFor(1 / step, RESOLUTION), 1, Detrend.MEAN);
        for (double z : heights(track, 20, step, 200_000)) {
            welch.accept(z);
        }
        PowerSpectrum estimate = welch.result().power(0);

        for (double n = 0.055; n < 0.9; n *= 2) {
            double wanted = surface.spectrum().roughness().value() * 0.01 * (1 / n - 1 / (2 * n));
            // lines at the two ends of a band share its ends' leakage; the density of freedom is that of an even one
            Confidence bound = Confidence.of(1 - 1e-6, 0.8 * estimate.degreesOfFreedom(n, 2 * n));
            double ratio = wanted / estimate.meanSquare(n, 2 * n);
            assertThat(ratio).as("octave from %s", n).isBetween(0.98 * bound.lower(), 1.02 * bound.upper());
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.02, 0.1, 0.3, 1})
    void theTracksOfFourWheelsAreAsAlikeAsThoseOfAnIsotropicSurface(double n) {
        double[] ys = {0.75, -0.75, 0.6, -0.6};
        SpectralSurface laid = laid(spectral(CLASS_C, 2, 1), ys);

        for (double a : ys) {
            for (double b : ys) {
                double ratio = laid.realised(a, b, n) / laid.realised(a, a, n);
                assertThat(ratio).as("%s and %s", a, b).isCloseTo(g(n, Math.abs(a - b)), within(1e-3));
            }
        }
    }

    /** {@code S_heave = S(1 + g)/2}, {@code S_roll = 2S(1 − g)/T²}. */
    @ParameterizedTest
    @ValueSource(doubles = {0.03, 0.05, 0.1, 0.2, 0.5, 1})
    void heaveAndRollHaveTheirShares(double n) {
        double T = 1.5;
        SpectralSurface laid = laid(spectral(CLASS_C, 2, 1), T / 2, -T / 2);
        double S = CLASS_C * Math.pow(n / 0.1, -2);
        double same = laid.realised(T / 2, T / 2, n) + laid.realised(-T / 2, -T / 2, n);
        double cross = laid.realised(T / 2, -T / 2, n);

        assertThat((same + 2 * cross) / 4 / (S * (1 + g(n, T)) / 2)).isCloseTo(1, within(0.01));
        assertThat((same - 2 * cross) / (T * T) / (2 * S * (1 - g(n, T)) / (T * T)))
                .isCloseTo(1, within(0.01));
    }

    @Test
    void twoWalkedTracksHaveTheCoherenceOfTheTable() {
        Surface.Spectral surface = spectral(CLASS_C, 2, 0.02, 2, 12);
        List<Track> tracks = RoadTracks.of(road(surface), 0.75, -0.75);
        double step = 0.125;
        double[] left = heights(tracks.get(0), 20, step, 400_000);
        double[] right = heights(tracks.get(1), 20, step, 400_000);
        WelchAccumulator welch =
                new WelchAccumulator(1 / step, WelchAccumulator.segmentFor(1 / step, RESOLUTION), 2, Detrend.MEAN);
        for (int i = 0; i < left.length; i++) {
            welch.accept(left[i], right[i]);
        }
        WelchSpectra spectra = welch.result();

        for (double n : new double[] {0.05, 0.1, 0.2, 0.5, 1}) {
            int k = (int) Math.round(n / spectra.power(0).resolution());
            double ratio = 0;
            for (int i = k - 2; i <= k + 2; i++) {
                ratio += spectra.transfer(0, 1).gain(i).getReal() / 5;
            }
            assertThat(ratio).as("n = %s", n).isCloseTo(g(n, 1.5), within(0.05));
        }
    }

    @Test
    void aStatedCoherenceIsKept() {
        for (Coherence coherence :
                List.of(new Coherence.Decay(ratio(3)), new Coherence.Distance(m(1.2)), new Coherence.None())) {
            Surface.Spectral surface =
                    new Surface.Spectral(Surface.Stretch.ALL, RoughnessSpectrum.of(CLASS_C, 2), coherence, 1);
            SpectralSurface laid = laid(surface, 0.7, -0.7, 0.5, -0.5);
            for (double n : new double[] {0.02, 0.2, 2}) {
                assertThat(laid.realised(0.7, -0.7, n) / laid.realised(0.7, 0.7, n))
                        .isCloseTo(coherence.ratio(n, 2, 1.4), within(2e-3));
                assertThat(laid.realised(0.5, -0.7, n) / laid.realised(0.7, 0.7, n))
                        .isCloseTo(coherence.ratio(n, 2, 1.2), within(2e-3));
            }
        }
    }

    @Test
    void tracksOfFullCoherenceAreOne() {
        Surface.Spectral surface =
                new Surface.Spectral(Surface.Stretch.ALL, RoughnessSpectrum.of(CLASS_C, 2), new Coherence.Full(), 1);
        List<Track> tracks = RoadTracks.of(road(surface), 0.7, -0.7, 0.5);

        double[] first = heights(tracks.get(0), 0, 0.1, 5000);
        assertThat(heights(tracks.get(1), 0, 0.1, 5000)).containsExactly(first, within(1e-15));
        assertThat(heights(tracks.get(2), 0, 0.1, 5000)).containsExactly(first, within(1e-15));
    }

    @Test
    void vehiclesOfAnyWidthRideTheSameLane() {
        Road road = road(spectral(CLASS_C, 2, 5));
        double[] narrow = heights(RoadTracks.of(road, 0.5, 0, -0.5).get(1), 0, 0.1, 3000);
        double[] wide = heights(RoadTracks.of(road, 0.8, -0.8, 0).get(2), 0, 0.1, 3000);

        assertThat(narrow).containsExactly(wide, within(1e-14));
        assertThat(heights(RoadTracks.everySide(road), 0, 0.1, 3000)).containsExactly(wide, within(1e-14));
    }

    @Test
    void anInnerPairOfWheelsChangesNothingForTheOuter() {
        Road road = road(spectral(CLASS_C, 2, 5));
        List<Track> two = RoadTracks.of(road, 0.8, -0.8);
        List<Track> four = RoadTracks.of(road, -0.6, 0.6, 0.8, -0.8);

        assertThat(greatestDifference(two.get(0), four.get(2))).isLessThan(1e-14);
        assertThat(greatestDifference(two.get(1), four.get(3))).isLessThan(1e-14);
    }

    private static double greatestDifference(Track a, Track b) {
        double[] za = heights(a, 0, 0.1, 3000);
        double[] zb = heights(b, 0, 0.1, 3000);
        return IntStream.range(0, za.length)
                .mapToDouble(i -> Math.abs(za[i] - zb[i]))
                .max()
                .orElseThrow();
    }

    @ParameterizedTest
    @EnumSource(RoughnessClass.class)
    void oneSeedIsOneRoadAndAnotherIsAnother(RoughnessClass roughness) {
        double[] one = heights(
                RoadTracks.of(road(spectral(roughness.geometricMean(), 2, 7)), 0.7)
                        .get(0),
                0,
                0.1,
                4000);
        double[] again = heights(
                RoadTracks.of(road(spectral(roughness.geometricMean(), 2, 7)), 0.7)
                        .get(0),
                0,
                0.1,
                4000);
        double[] other = heights(
                RoadTracks.of(road(spectral(roughness.geometricMean(), 2, 8)), 0.7)
                        .get(0),
                0,
                0.1,
                4000);

        assertThat(again).isEqualTo(one);
        assertThat(other).isNotEqualTo(one);
    }

    /** Where there is no chance, slopes agree with the heights around them: a seam between blocks would stand out. */
    @Test
    void noSeamShowsBetweenBlocks() {
        Surface.Spectral surface = spectral(CLASS_C, 2, 0.3, 10, 3);
        Track track = RoadTracks.of(road(surface), 0.7).get(0);
        double d = 0.02;
        double[] z = heights(track, 20, d, 60_000);
        double typical = 0;
        double worst = 0;
        for (int i = 3; i + 3 < z.length; i++) {
            // sixth difference: what a road without waves shorter than five points hardly has
            double sixth =
                    z[i - 3] - 6 * z[i - 2] + 15 * z[i - 1] - 20 * z[i] + 15 * z[i + 1] - 6 * z[i + 2] + z[i + 3];
            typical += sixth * sixth;
            worst = Math.max(worst, Math.abs(sixth));
        }
        typical = Math.sqrt(typical / z.length);

        assertThat(worst).isLessThan(5.5 * typical);
    }

    /** Independent stretches of a stationary Gaussian road: fourth moment 3, no likeness at the length of a block or any other. */
    @Test
    void theRoadIsGaussianAndDoesNotRepeat() {
        Surface.Spectral surface = spectral(CLASS_C, 2, 0.3, 10, 4);
        Track track = RoadTracks.of(road(surface), -0.7).get(0);
        double[] z = heights(track, 20, 0.08, 120_000);
        double square = 0;
        double fourth = 0;
        for (double value : z) {
            square += value * value / z.length;
            fourth += value * value * value * value / z.length;
        }

        assertThat(fourth / (square * square)).isCloseTo(3, within(0.1));
        for (int lag = 500; lag < 60_000; lag += 1) {
            if (lag % 97 != 0) {
                continue;
            }
            double product = 0;
            for (int i = 0; i + lag < z.length; i++) {
                product += z[i] * z[i + lag];
            }
            assertThat(product / (z.length - lag) / square).as("lag %s", lag).isCloseTo(0, within(0.1));
        }
    }

    @Test
    void itFadesInOverTheRunUpAndOutBeforeItsEnd() {
        Surface.Spectral surface = new Surface.Spectral(
                Surfaces.stretch(25, 85), RoughnessSpectrum.of(CLASS_C, 2), new Coherence.Isotropic(), 1);
        Surface.Spectral endless = spectral(CLASS_C, 2, 1);
        Track track = RoadTracks.of(road(surface), 0).get(0);
        Track whole = RoadTracks.of(road(endless), 0).get(0);

        assertThat(track.begin()).isEqualTo(25);
        assertThat(track.end()).isEqualTo(85);
        RoadProfile profile = track.window(0, 100);
        assertThat(profile.height(24.9)).isZero();
        assertThat(profile.section(0).height(25)).isZero();
        assertThat(profile.section(0).slope(25)).isZero();
        assertThat(profile.height(30)).isCloseTo(0.5 * whole.window(29, 31).height(30), within(1e-6));
        assertThat(profile.height(50)).isEqualTo(whole.window(49, 51).height(50));
        assertThat(profile.height(80)).isCloseTo(0.5 * whole.window(79, 81).height(80), within(1e-6));
        assertThat(profile.height(85)).isCloseTo(0, within(1e-15));
        assertThat(profile.heightAfter()).isZero();
    }

    /** The numbers themselves, so that no machine and no later version makes another road of a seed unnoticed. */
    @Test
    void aSeedGivesTheseNumbers() {
        List<Track> tracks = RoadTracks.of(road(spectral(CLASS_C, 2, 2024)), 0.7, -0.7);
        double[] heights = {
            tracks.get(0).window(100, 101).height(100.5),
            tracks.get(1).window(5000, 5001).height(5000.25),
        };

        assertThat(heights).containsExactly(GOLDEN);
    }

    private static final double[] GOLDEN = {0.006155595058264416, -0.03237279152924069};

    @Test
    void rougherClassesDoubleTheHeight() {
        double a = rms(heights(RoadTracks.of(road(spectral(16e-6, 2, 1)), 0).get(0), 20, 0.5, 4000));
        double b = rms(heights(RoadTracks.of(road(spectral(64e-6, 2, 1)), 0).get(0), 20, 0.5, 4000));

        assertThat(b / a).isCloseTo(2, within(1e-9));
    }
}
