package org.ridewright.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ridewright.fieldwork.BounceLog;
import org.ridewright.fieldwork.Measurements;
import org.ridewright.io.MeasurementsFile;

/** Logs of masses that ring down against viscous damping, in closed form. */
class BounceLogEvidenceTest {
    private static final double GRAVITY = 9.80665;
    private static final double ZETA = 0.08;

    @TempDir
    private Path folder;

    private interface Motion {
        double acceleration(double time);
    }

    private static double released(double lift, double frequency, double time) {
        double omega = 2 * Math.PI * frequency;
        double damped = omega * Math.sqrt(1 - ZETA * ZETA);
        return time < 0
                ? 0
                : -omega
                        * omega
                        * lift
                        * Math.exp(-ZETA * omega * time)
                        * (Math.cos(damped * time) - ZETA * omega / damped * Math.sin(damped * time));
    }

    /** As a logger of a range (m/s²) writes it down. */
    private BounceLogEvidence logged(Motion motion, double range) throws IOException {
        Random chance = new Random(1);
        StringBuilder csv = new StringBuilder("time (s),z (m/s²)\n");
        for (int i = 0; i < 2000; i++) {
            double value = GRAVITY + motion.acceleration(i / 100.0) + 0.03 * chance.nextGaussian();
            csv.append(String.format(Locale.ROOT, "%.3f,%.4f%n", i / 100.0, Math.min(range, value)));
        }
        Files.writeString(folder.resolve("front.csv"), csv);
        Path file = folder.resolve("yard.yaml");
        Files.writeString(
                file,
                "measurements: closed form\nvehicle: "
                        + Path.of("..", "scenarios/measurements/carriage-by-tape.yaml")
                                .toAbsolutePath()
                        + "\nfacts:\n  - bounce log: {test: front, with: two aboard, logs: {file: front.csv, unit: m/s², "
                        + "place: {behind front axle: 0 m, above ground: 0.9 m}}}\n");
        Measurements measured = MeasurementsFile.read(file);
        return BounceLogEvidence.of(
                measured.all(BounceLog.class).get(0), new Sources(MeasurementsFile::road, MeasurementsFile::recording));
    }

    @Test
    void twoReleasesOfOneKindAreOneMeasurement() throws IOException {
        BounceLogEvidence found = logged(t -> released(-0.04, 1.5, t - 3) + released(-0.03, 1.5, t - 12), 50);

        Datum frequency = found.data().get(0);
        assertThat(frequency.observed()).isCloseTo(1.5 * Math.sqrt(1 - ZETA * ZETA), within(0.005));
        int later = found.halfCycles() / 2;
        double left = Math.exp(-Math.PI * ZETA / Math.sqrt(1 - ZETA * ZETA) * later);
        assertThat(found.data().get(1).observed()).isCloseTo(100 * left, within(0.5));
        assertThat(found.test().handling().depth()).isCloseTo(0.035, within(0.0005));
    }

    @Test
    void releasesOfTwoFrequenciesAreNotAveraged() {
        assertThatThrownBy(() -> logged(t -> released(-0.04, 1.5, t - 3) + released(-0.03, 2.4, t - 12), 50))
                .isInstanceOf(CalibrationException.class)
                .hasMessageContaining("1.50, 2.39 Hz")
                .hasMessageContaining("too far apart");
    }

    @Test
    void aClippedDecayIsRefused() {
        assertThatThrownBy(() -> logged(t -> released(-0.04, 1.8, t - 3), GRAVITY + 3))
                .isInstanceOf(CalibrationException.class)
                .hasMessageContaining("is clipped in its decay");
    }
}
