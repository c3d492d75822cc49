package org.ridewright.io;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A study's runs count as long as no file that was read for them changes, wherever it is named and whatever it is called. */
class FingerprintTest {
    private static final String VEHICLE = """
            vehicle: Test quarter
            layout: quarter
            body: {mass: 300 kg}
            axles:
              - name: wheel
                behind front axle: 0 m
                unsprung mass: 40 kg
                wheels: {diameter: 0.6 m, tyre: pneumatic, path: disc, contact rate: 180 kN/m, contact damping ratio: 0.15}
                springs: [{name: coil, kind: coil, rate: 20 kN/m}]
                dampers: [{name: strut, bump: 1200 N s/m, rebound: 1200 N s/m}]
            load cases: [{name: empty, aboard: []}]
            """;

    private static final String PROFILE = "station (m),height (mm)\n0,0\n1,3\n2,-2\n3,1\n4,0\n5,2\n6,-1\n7,0\n8,1\n";
    private static final String SWEEP = "sweep: {vary: 'vehicles[0].speeds[0]', from: 4 km/h, to: 8 km/h, steps: 3}\n";

    @TempDir
    Path folder;

    @BeforeEach
    void writeFiles() throws IOException {
        for (String name : new String[] {"vehicles", "scenarios", "roads"}) {
            Files.createDirectories(folder.resolve(name));
        }
        Files.writeString(folder.resolve("vehicles/cart.yaml"), VEHICLE);
        Files.writeString(folder.resolve("vehicles/other"), VEHICLE.replace("Test quarter", "Other"));
        Files.writeString(folder.resolve("roads/lane"), PROFILE);
        scenario(
                "../vehicles/cart.yaml",
                "{name: plank, obstacles: [{plank: {at: 1 m, height: 30 mm, length: 150 mm}}]}");
    }

    private void scenario(String vehicle, String road) throws IOException {
        Files.writeString(
                folder.resolve("scenarios/ride.yaml"),
                "scenario: Ride\nvehicles: [{file: " + vehicle + ", speeds: [10 km/h]}]\nroad: " + road
                        + "\nduration: 3 s\n");
    }

    private String fingerprint(String method) throws IOException {
        Path file = folder.resolve("scenarios/study.yaml");
        Files.writeString(file, "study: Test\nbase: ride.yaml\nanswers: [peak]\n" + method);
        return StudyFile.read(file, "program").fingerprint();
    }

    private void assertCounts(String method, String file, String from, String to) throws IOException {
        String before = fingerprint(method);
        assertThat(fingerprint(method)).isEqualTo(before);
        Path changed = folder.resolve(file);
        String text = Files.readString(changed);
        assertThat(text).contains(from);
        Files.writeString(changed, text.replace(from, to));
        assertThat(fingerprint(method)).as("after %s changed", file).isNotEqualTo(before);
    }

    @Test
    void aVehicleFileInAFolderAboveCounts() throws IOException {
        assertCounts(SWEEP, "vehicles/cart.yaml", "40 kg", "41 kg");
    }

    @Test
    void aVehicleFileWithoutAnEndingCounts() throws IOException {
        scenario("../vehicles/other", "{name: plank, obstacles: [{plank: {at: 1 m, height: 30 mm, length: 150 mm}}]}");
        assertCounts(SWEEP, "vehicles/other", "40 kg", "41 kg");
    }

    @Test
    void aMeasuredRoadCounts() throws IOException {
        scenario("../vehicles/cart.yaml", "{name: lane, surfaces: [{measured: {file: ../roads/lane}}]}");
        assertCounts(SWEEP, "roads/lane", "1,3", "1,4");
    }

    @Test
    void aFileThatIsListedAmongValuesCounts() throws IOException {
        String listed = "sweep: {vary: 'vehicles[0].file', values: [../vehicles/cart.yaml, ../vehicles/other]}\n";
        assertCounts(listed, "vehicles/other", "40 kg", "41 kg");
    }

    @Test
    void aRoadFileWithinAGroupThatAVariantPutsInCounts() throws IOException {
        String variants = """
                compare:
                  variants:
                    - called: a plank
                    - called: a lane
                      with: {road: '{name: lane, surfaces: [{measured: {file: ../roads/lane}}]}'}
                """;
        assertCounts(variants, "roads/lane", "1,3", "1,4");
    }

    @Test
    void aFileThatNobodyReadsDoesNotCount() throws IOException {
        String before = fingerprint(SWEEP);
        Files.writeString(folder.resolve("vehicles/other"), VEHICLE.replace("40 kg", "44 kg"));

        assertThat(fingerprint(SWEEP)).isEqualTo(before);
    }
}
