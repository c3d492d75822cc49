package org.ridewright.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ridewright.road.Coherence;
import org.ridewright.road.NamedSpectrum;
import org.ridewright.road.Road;
import org.ridewright.road.RoadTracks;
import org.ridewright.road.RoughnessClass;
import org.ridewright.road.RoughnessSpectrum;
import org.ridewright.road.Surface;

/** Surfaces are read as written, or refused at their place with what would do. */
class SurfaceBoundsTest {
    @TempDir
    Path folder;

    @BeforeEach
    void writeFiles() throws IOException {
        Files.copy(SampleFiles.at("whole/wheel.yaml"), folder.resolve("wheel.yaml"));
        StringBuilder lane = new StringBuilder("station (m),height (mm)\n");
        for (int i = 0; i < 200; i++) {
            lane.append(i * 0.1).append(',').append(i % 9).append('\n');
        }
        Files.writeString(folder.resolve("lane.csv"), lane);
    }

    private Road road(String entries) throws IOException {
        Path file = folder.resolve("scenario.yaml");
        Files.writeString(file, """
                scenario: Surfaces
                distance: 60 m
                vehicles: [{file: wheel.yaml, speeds: 8 km/h}]
                road: {%s}
                """.formatted(entries));
        return ScenarioFile.read(file).roads().get(0);
    }

    private Road surfaces(String surfaces) throws IOException {
        return road("surfaces: [" + surfaces + "]");
    }

    private Surface.Spectral spectrum(String keys) throws IOException {
        return (Surface.Spectral)
                surfaces("spectrum: {" + keys + "}").surfaces().get(0);
    }

    @ParameterizedTest
    @EnumSource(RoughnessClass.class)
    void aClassIsItsGeometricMean(RoughnessClass roughness) throws IOException {
        RoughnessSpectrum spectrum = spectrum("class: " + roughness).spectrum();

        assertThat(spectrum.roughness().value()).isEqualTo(roughness.geometricMean());
        assertThat(spectrum.waviness()).isEqualTo(2);
        assertThat(spectrum.lowest().value()).isEqualTo(0.011);
        assertThat(spectrum.highest().value()).isEqualTo(10);
    }

    @ParameterizedTest
    @EnumSource(NamedSpectrum.class)
    void aGroundIsKnownByItsName(NamedSpectrum ground) throws IOException {
        RoughnessSpectrum spectrum = spectrum("ground: " + ground.word()).spectrum();

        assertThat(spectrum.density(1)).isCloseTo(ground.coefficient(), within(1e-12 * ground.coefficient()));
        assertThat(spectrum.origin()).isNotEmpty();
    }

    @Test
    void aSpectrumMayStateEverything() throws IOException {
        Surface.Spectral surface = spectrum("roughness: 300 cm³, waviness: [2.2, 1.5], bend: 0.2 cycle/m, "
                + "band: [0.02 cycle/m, 5 cycle/m], coherence: {decay: 4}, seed: 20240611, from: 3 m, to: 90 m");

        assertThat(surface.spectrum().roughness().value()).isCloseTo(300e-6, within(1e-15));
        assertThat(surface.spectrum().waviness(0.1)).isEqualTo(2.2);
        assertThat(surface.spectrum().waviness(1)).isEqualTo(1.5);
        assertThat(surface.spectrum().highest().value()).isEqualTo(5);
        assertThat(surface.coherence()).isInstanceOf(Coherence.Decay.class);
        assertThat(surface.seed()).isEqualTo(20240611);
        assertThat(surface.stretch().end()).isEqualTo(90);
    }

    @ParameterizedTest
    @CsvSource({"isotropic, Isotropic", "full, Full", "none, None", "{length: 1.5 m}, Distance", "{decay: 3}, Decay"})
    void coherenceIsAWordOrAFunction(String written, String kind) throws IOException {
        assertThat(spectrum("class: C, coherence: " + written)
                        .coherence()
                        .getClass()
                        .getSimpleName())
                .isEqualTo(kind);
    }

    @Test
    void theRunUpIsTenMetresUnlessStated() throws IOException {
        assertThat(surfaces("spectrum: {class: C}").runUp().value()).isEqualTo(10);
        assertThat(road("run-up: 4 m").runUp().value()).isEqualTo(4);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "setts: {length: 160 mm, crown: 5 mm, joint: 10 mm, joint depth: 12 mm, unevenness: 3 mm, irregularity: 8 %}",
                "washboard: {pitch: 0.6 m, height: 25 mm, drift: 10 %}",
                "ruts: {depth: 50 mm, width: 0.4 m, apart: 1.4 m, variation: 30 %}",
                "twist: {height: 80 mm, length: 10 m, across: 1.5 m, lag: 90 deg}",
                "joints: {every: 6 m, gap: 20 mm, depth: 30 mm, lip: 3 mm, sag: 4 mm, skew: 10 deg}",
                "stones: {per metre: 2, strip: 2 m, size: 40 mm, spread: 1.4, proud: 0.5, seed: 3}",
                "measured: {file: lane.csv, heights: {high-pass: 20 m}, spikes: left out, every: 0.2 m}",
                "measured: {file: lane.csv, heights: as measured}"
            })
    void everyKindCanBeReadAndLaid(String surface) throws IOException {
        Road road = surfaces(surface);

        assertThat(RoadTracks.of(road, 0.7).get(0).window(0, 40).sections()).isPositive();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "spectrum: {class: I} | spectrum.class: I is not a class",
                "spectrum: {ground: gravle} | write gravel",
                "spectrum: {} | spectrum.class: is missing",
                "spectrum: {class: C, ground: gravel} | is given beside 'class'",
                "spectrum: {ground: gravel, waviness: 2} | is given beside 'ground'",
                "spectrum: {roughness: 0 cm³} | spectrum.roughness: 0 cm³ is zero",
                "spectrum: {roughness: 20 mm} | spectrum.roughness: 20 mm",
                "spectrum: {class: C, waviness: 5} | is more than 4",
                "spectrum: {class: C, waviness: [2, 1.5]} | spectrum.bend: is missing",
                "spectrum: {class: C, bend: 0.1 cycle/m} | is given with one waviness only",
                "spectrum: {class: C, band: [10 cycle/m, 0.01 cycle/m]} | is less than twice the lower end",
                "spectrum: {class: C, band: [0.01 cycle/m]} | has 1 end",
                "spectrum: {class: C, band: [0.01 m, 3 m]} | spectrum.band[0]: 0.01 m",
                "spectrum: {class: C, band: [0 cycle/m, 3 cycle/m]} | spectrum.band",
                "spectrum: {class: C, coherence: isotopic} | write isotropic",
                "spectrum: {class: C, coherence: {decay: -1}} | coherence.decay: -1 is negative",
                "spectrum: {class: C, seed: 1.5} | is not a seed",
                "spectrum: {class: C, from: 0.1 m} | is so close that a wheel stands on the surface",
                "spectrum: {class: C, from: 30 m, to: 20 m} | is not beyond its beginning at 30 m",
                "setts: {length: 100 mm, joint: 60 mm} | is not less than half the length of a stone",
                "setts: {length: 100 mm, irregularity: 50 %} | is more than 0.3",
                "setts: {length: 100 mm, joint depth: 2 m} | not lower than the centre of a wheel",
                "setts: {length: 100 mm, crown: -2 mm} | setts.crown: -2 mm is negative",
                "washboard: {pitch: 60 mm, height: 40 mm} | is half the pitch",
                "washboard: {height: 40 mm} | washboard.pitch: is missing",
                "ruts: {depth: 50 mm, width: 0.4 m, apart: 1.4 m, variation: 2} | is more than 1",
                "twist: {height: 80 mm, length: 0 m, across: 1.5 m} | twist.length: 0 m is zero",
                "joints: {every: 20 mm, gap: 30 mm} | is not less than the distance between joints",
                "joints: {every: 6 m, skew: 80 deg} | is more than 75 deg",
                "stones: {per metre: 500, strip: 2 m, size: 40 mm} | is more than 100",
                "stones: {per metre: 2, strip: 2 m, size: 40 mm, spread: 3} | is more than 2",
                "stones: {per metre: 2, strip: 2 m, size: 2 m} | not lower than the centre of a wheel",
                "measured: {file: lane.csv, every: 10 mm} | is closer than the profile's own points",
                "measured: {file: lane.csv, every: 15 m} | leaves less than four points",
                "measured: {file: lane.csv, heights: detrend} | write detrended",
                "measured: {heights: detrended} | measured.file: is missing",
                "cobbles: {length: 1 m} | cobbles is not a key of a surface",
            })
    void whatCannotBeIsRefusedAtItsPlace(String surface, String said) throws IOException {
        InputException refusal = catchThrowableOfType(InputException.class, () -> surfaces(surface));

        assertThat(refusal).as(surface).isNotNull();
        assertThat(refusal).hasMessageContaining("scenario.yaml:4:").hasMessageContaining(said);
        assertThat(refusal.problems()).as(refusal.getMessage()).hasSizeLessThanOrEqualTo(2);
    }

    @Test
    void twoSpectraOfOneSeedOnOneStretchAreRefused() throws IOException {
        InputException refusal = catchThrowableOfType(
                InputException.class, () -> surfaces("{spectrum: {class: C}}, {spectrum: {class: D}}"));

        assertThat(refusal)
                .hasMessageContaining("is the seed of surfaces[0] too")
                .hasMessageContaining("write seed: 2");
        assertThat(surfaces("{spectrum: {class: C, to: 50 m}}, {spectrum: {class: D, from: 50 m}}")
                        .surfaces())
                .hasSize(2);
        assertThat(surfaces("{spectrum: {class: C}}, {spectrum: {class: D, seed: 2}}")
                        .surfaces())
                .hasSize(2);
    }

    @Test
    void aRideOverAnEndlessSurfaceNeedsADistance() throws IOException {
        Path file = folder.resolve("endless.yaml");
        Files.writeString(file, """
                scenario: Endless
                vehicles: [{file: wheel.yaml, speeds: 8 km/h}]
                road: {surfaces: [spectrum: {class: C}]}
                """);

        InputException refusal = catchThrowableOfType(InputException.class, () -> ScenarioFile.read(file));

        assertThat(refusal).hasMessageContaining("endless.yaml:3:").hasMessageContaining("distance: 300 m");
    }

    @Test
    void twoKindsInOneItemAreTold() {
        InputException refusal = catchThrowableOfType(
                InputException.class,
                () -> surfaces("{spectrum: {class: C}, washboard: {pitch: 0.6 m, height: 20 mm}}"));

        assertThat(refusal).hasMessageContaining("begin it with a dash of its own");
        assertThat(refusal.problems()).hasSize(1);
    }

    @Test
    void aRunUpOfNothingIsRefused() {
        InputException refusal = catchThrowableOfType(InputException.class, () -> road("run-up: 0 m"));

        assertThat(refusal).hasMessageContaining("road.run-up: 0 m is less than 0.1 m");
    }
}
