package org.ridewright.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ridewright.io.MeasurementsFile;
import org.ridewright.io.VehicleDocument;
import org.ridewright.quantity.JointSpread;

/** Every reading counts once, and what is kept back counts for nothing. */
class WhatIsFittedTest {
    private static final Path PHAETON = Path.of("..", "scenarios", "vehicles", "phaeton.yaml");
    private static final String HEIGHT = "unknowns: [body.centre of mass.above ground, body.mass]\n";
    private static final String LIFTED =
            "  - lifted axle: {with: empty, lifted: front, by: 450 mm, other axle then: 191 kg ± 1 kg, springs: blocked%s}\n";
    private static final String SCALES =
            "  - weights: {with: empty, scales: [{axle: front, shows: 151 kg ± 1 kg}, {axle: rear, shows: %s kg ± 1 kg}]%s}\n";

    @TempDir
    private Path folder;

    private CalibratedVehicle calibrated(Path vehicle, String unknowns, String facts) throws IOException {
        Path file = folder.resolve("yard.yaml");
        Files.writeString(
                file,
                "measurements: yard\nvehicle: " + vehicle.toAbsolutePath() + "\n" + unknowns + "facts:\n" + facts);
        return VehicleCalibration.of(
                VehicleDocument.read(vehicle),
                MeasurementsFile.read(file),
                new Sources(MeasurementsFile::road, MeasurementsFile::recording));
    }

    private static List<Residual> residuals(CalibratedVehicle found) {
        return found.fit().residuals();
    }

    @Test
    void aLevelWeightThatIsADatumIsNotTakenFromTheRaisedOneAsWell() throws IOException {
        CalibratedVehicle apart = calibrated(PHAETON, HEIGHT, SCALES.formatted("178", "") + LIFTED.formatted(""));
        assertThat(residuals(apart)).hasSize(3);
        assertThat(residuals(apart).get(2).datum().observed()).isEqualTo(191);
        CalibratedVehicle stated =
                calibrated(PHAETON, HEIGHT, LIFTED.formatted(", other axle level: 178 kg ± 1 kg, total: 329 kg"));
        assertThat(residuals(stated).get(0).datum().observed()).isCloseTo(13, within(1e-9));
        CalibratedVehicle twice = calibrated(
                PHAETON, HEIGHT, SCALES.formatted("178", "") + LIFTED.formatted(", other axle level: 178 kg ± 1 kg"));
        assertThat(residuals(twice).get(2).datum().observed()).isEqualTo(191);
    }

    @Test
    void aWeightThatIsKeptBackDoesNotSpeakThroughALiftedAxle() throws IOException {
        String fitted = SCALES.formatted("178", "") + LIFTED.formatted("");
        CalibratedVehicle one = calibrated(PHAETON, HEIGHT, SCALES.formatted("178", ", keep back: yes") + fitted);
        CalibratedVehicle other = calibrated(PHAETON, HEIGHT, SCALES.formatted("184", ", keep back: yes") + fitted);
        assertThat(one.fit().value(0)).isEqualTo(other.fit().value(0));
    }

    /** Scales under one axle, then under both: the same as all at once, where the first result is taken further with all that it knew. */
    @Test
    void twoCalibrationsOneAfterTheOtherKnowAsMuchAsOneOfAllData() throws IOException {
        String both = "unknowns: [body.mass, body.centre of mass.behind front axle]\n";
        String front = "  - weights: {with: empty, scales: [{axle: front, shows: 151 kg ± 1 kg}]}\n";
        String rear = "  - weights: {with: empty, scales: [{axle: rear, shows: 178 kg ± 1 kg}]}\n";
        Path exact = exact();
        CalibratedVehicle once = calibrated(exact, both, front + rear);
        CalibratedVehicle first = calibrated(exact, both, front);
        assertThat(Math.abs(first.correlation()[0][1])).isGreaterThan(0.3);
        Path again = folder.resolve("again.yaml");
        Files.writeString(
                again,
                VehicleDocument.read(exact)
                        .rewritten(first.values(), first.heldTogether().paths(), first.correlation(), "front scales"));
        CalibratedVehicle second = calibrated(again, both, rear);
        for (int j = 0; j < 2; j++) {
            double error = once.fit().standardError(j);
            assertThat(second.fit().value(j)).isCloseTo(once.fit().value(j), within(0.2 * error));
            assertThat(second.fit().standardError(j)).isCloseTo(error, within(0.1 * error));
        }
        assertThat(second.untied()).isEmpty();
        assertThat(calibrated(again, "unknowns: [body.mass]\n", front + rear).untied())
                .containsExactly("body.centre of mass.behind front axle");
    }

    /** Where the axles are heavier than they were taken for, the body came out too light. */
    @Test
    void aHeldValueIsTiedToTheSoughtOneThatItMovesAndTheFileSaysSo() throws IOException {
        CalibratedVehicle found = calibrated(PHAETON, "unknowns: [body.mass]\n", SCALES.formatted("178", ""));
        Path file = folder.resolve("calibrated.yaml");
        VehicleDocument document = VehicleDocument.read(PHAETON);
        Files.writeString(
                file, document.rewritten(found.values(), found.heldTogether().paths(), found.correlation(), "scales"));
        VehicleDocument again = VehicleDocument.read(file);
        JointSpread spread = again.spread();
        int body = spread.paths().indexOf("body.mass");
        for (String axle : List.of("axles[0].unsprung mass", "axles[1].unsprung mass")) {
            assertThat(spread.correlation(body, spread.paths().indexOf(axle))).isLessThan(-0.1);
            assertThat(again.value(axle).written())
                    .isEqualTo(document.value(axle).written());
        }
    }

    /** The phaeton, of which nothing but the body is uncertain. */
    private Path exact() throws IOException {
        StringBuilder text = new StringBuilder();
        boolean body = false;
        for (String line : Files.readAllLines(PHAETON)) {
            body = line.isBlank() || Character.isWhitespace(line.charAt(0)) ? body : line.startsWith("body:");
            text.append(body ? line : line.replaceAll(" ± [0-9.]+( (mm|cm|m|%|kg|N|kN/m|N/mm|kg m²|N s/m))?", ""))
                    .append('\n');
        }
        Path file = folder.resolve("exact.yaml");
        Files.writeString(file, text);
        return file;
    }

    @Test
    void whatOnlyAKeptBackDatumFeelsIsNotSoughtButWidensItsPrediction() throws IOException {
        String loop = "  - load deflection: {axle: rear, spring: rear springs, keep back: yes, "
                + "rows: [[0 kg, 11.5 mm], [30 kg, 26.5 mm], [60 kg, 41.5 mm], [90 kg, 56.5 mm], [60 kg, 48 mm], [30 kg, 30 mm], [0 kg, 12 mm]]}\n";
        CalibratedVehicle found = calibrated(PHAETON, "", SCALES.formatted("178", "") + loop);
        String rate = "axles[1].springs[0].rate";
        assertThat(found.values()).doesNotContainKey(rate).containsKey("body.mass");
        assertThat(found.held()).extracting(Held::path).contains(rate);
        Residual kept = found.fit().keptBack().get(0);
        assertThat(kept.upper() - kept.lower()).isGreaterThan(4 * kept.datum().uncertainty());
    }
}
