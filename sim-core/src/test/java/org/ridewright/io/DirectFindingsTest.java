package org.ridewright.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ridewright.fieldwork.Finding;
import org.ridewright.fieldwork.Findings;
import org.ridewright.quantity.Measure;

/** Statics of the dray, whose axles stand 6 ft 6 in apart (1.9812 m), worked out by hand. */
class DirectFindingsTest {
    private static final double G = 9.80665;
    private static final double APART = 1.9812;

    @TempDir
    private Path folder;

    @Test
    void aSackOverAnAxleSinksThatAxleAlone() throws IOException {
        List<Finding> findings = found("""
                  - heights:
                      at: four corners
                      steps:
                        - {with: empty, heights: [900 mm, 900 mm, 950 mm, 950 mm]}
                        - with: empty
                          added: [{cargo: sack, mass: 200 kg, at: {behind front axle: 6 ft 6 in, above ground: 1 m}}]
                          heights: [900 mm, 900 mm, 940 mm, 938 mm]
                """);

        assertThat(findings).hasSize(1);
        assertThat(findings.get(0).what()).contains("hind axle");
        assertThat(findings.get(0).value().value()).isCloseTo(200 * G / 0.011, Percentage.withPercentage(0.01));
        assertThat(findings.get(0).remark()).contains("friction not counted");
    }

    @Test
    void settlingBothWaysShowsFrictionAndRidsTheRateOfIt() throws IOException {
        List<Finding> findings = found("""
                  - heights:
                      at: [{axle: fore, side: left}, {axle: fore, side: right}]
                      steps:
                        - {with: empty, settled from above: [904 mm, 906 mm], settled from below: [896 mm, 894 mm]}
                        - with: empty
                          added: [{cargo: sack, mass: 200 kg, at: {behind front axle: 0 m, above ground: 1 m}}]
                          settled from above: [893 mm, 893 mm]
                          settled from below: [883 mm, 883 mm]
                """);

        assertThat(value(findings, "hang by friction").value()).isCloseTo(0.005, offset(1e-9));
        // four readings of 2 mm each: √4 · 2 mm/4
        assertThat(value(findings, "hang by friction").tolerance()).isCloseTo(0.001, Percentage.withPercentage(1e-6));
        assertThat(value(findings, "springs together").value())
                .isCloseTo(200 * G / 0.012, Percentage.withPercentage(0.01));
    }

    @Test
    void scalesUnderEachWheelPlaceTheCentreOfMass() throws IOException {
        List<Finding> findings = found("""
                  - weights:
                      with: empty
                      scales:
                        - {axle: fore, side: left, shows: 260 kg}
                        - {axle: fore, side: right, shows: 240 kg}
                        - {axle: hind, side: left, shows: 210 kg}
                        - {axle: hind, side: right, shows: 190 kg}
                """);

        assertThat(value(findings, "mass of all").value()).isCloseTo(900, offset(1e-9));
        assertThat(value(findings, "behind front axle").value()).isCloseTo(APART * 400 / 900, offset(1e-9));
        double tracks = (20 * 54 + 20 * 56) * 0.0254 / 2;
        assertThat(value(findings, "left of centre").value()).isCloseTo(tracks / 900, offset(1e-9));
    }

    @Test
    void countedCyclesHaveTheErrorOfCountingAndOfTheStopwatch() throws IOException {
        Measure frequency = found("  - bounce: {test: front, with: empty, cycles: 10, in: 5 s}\n")
                .get(0)
                .value();

        assertThat(frequency.value()).isEqualTo(2);
        assertThat(frequency.tolerance()).isCloseTo(2 * Math.hypot(0.25 / 10, 0.2 / 5), Percentage.withPercentage(0.1));
    }

    @Test
    void aBowThatLosesItsCamberTellsTheRate() throws IOException {
        Measure rate = found(
                        "  - camber: {axle: fore, spring: fore springs, free: 200 mm, loaded: 150 mm, load: 400 kg}\n")
                .get(0)
                .value();

        assertThat(rate.value()).isCloseTo(400 * G / 0.05, Percentage.withPercentage(1e-6));
    }

    private static Measure value(List<Finding> findings, String what) {
        return findings.stream()
                .filter(finding -> finding.what().contains(what))
                .findFirst()
                .orElseThrow()
                .value();
    }

    private List<Finding> found(String facts) throws IOException {
        Path file =
                MeasurementsSample.in(folder, "measurements: Dray\nvehicle: ../vehicles/dray.yaml\nfacts:\n" + facts);
        return Findings.of(MeasurementsFile.read(file));
    }
}
