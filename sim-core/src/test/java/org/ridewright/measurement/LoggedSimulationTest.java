package org.ridewright.measurement;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ridewright.comfort.Axis;
import org.ridewright.comfort.AxisVibration;
import org.ridewright.comfort.PersonVibration;
import org.ridewright.comfort.Position;
import org.ridewright.comfort.VibrationMetrics;
import org.ridewright.io.LogChoice;
import org.ridewright.io.LogFile;
import org.ridewright.measurement.LogOptions.Forward;
import org.ridewright.measurement.LogOptions.Gravity;
import org.ridewright.signal.Channel;

/** The same ride, once measured while it was simulated and once from a log of it. */
class LoggedSimulationTest {
    private static final Path EXAMPLE = Path.of("..", "scenarios", "logs", "dray-phone.csv");
    private static final double STILL_BEFORE = 3;

    @TempDir
    private Path folder;

    @Test
    void aLevelLogAtTheSimulatorsRateHasTheSimulatorsMetrics() throws IOException {
        Path file = folder.resolve("level.csv");
        Files.writeString(file, level());
        LogOptions options = options(0, 0);

        LogVibration logged = LogVibration.of(RecordedRide.of(LogFile.read(file, LogChoice.OPEN), options));

        for (Axis axis : new Axis[] {Axis.Z, Axis.X}) {
            VibrationMetrics simulated =
                    SimulatedRide.result().seats().get(0).metrics().get(axis);
            VibrationMetrics read = logged.axes().get(axis).metrics();
            assertThat(read.rms()).as("r.m.s. " + axis).isCloseTo(simulated.rms(), Percentage.withPercentage(0.1));
            assertThat(read.mtvv()).as("MTVV " + axis).isCloseTo(simulated.mtvv(), Percentage.withPercentage(0.1));
            assertThat(read.vdv()).as("VDV " + axis).isCloseTo(simulated.vdv(), Percentage.withPercentage(0.1));
            assertThat(read.peak()).as("peak " + axis).isCloseTo(simulated.peak(), Percentage.withPercentage(0.2));
        }
    }

    @Test
    void aLevelLogHasTheSimulatorsTotalsWithAndWithoutTheBackrestsFactor() throws IOException {
        Path file = folder.resolve("level.csv");
        Files.writeString(file, level());
        var seat = SimulatedRide.result().seats().get(0);
        Map<Axis, AxisVibration> translations =
                new EnumMap<>(seat.felt().orElseThrow().points().get(Position.SEAT));
        translations.keySet().retainAll(Set.of(Axis.X, Axis.Y, Axis.Z));
        double withoutBackrest = new PersonVibration(Map.of(Position.SEAT, translations))
                .pointTotal(Position.SEAT)
                .orElseThrow();

        LogVibration logged = LogVibration.of(RecordedRide.of(LogFile.read(file, LogChoice.OPEN), options(0, 0)));

        assertThat(logged.total()).isCloseTo(seat.total(Position.SEAT), Percentage.withPercentage(0.1));
        assertThat(logged.comfortTotal()).isCloseTo(withoutBackrest, Percentage.withPercentage(0.1));
        assertThat(logged.comfortTotal()).isGreaterThan(1.001 * logged.total());
    }

    /** 100 Hz behind a low pass of 40 Hz, askew, jittered, noisy, with a dropout: what is lost stays small where the ride is below 40 Hz. */
    @Test
    void thePhonesLogOfItAgreesWithinAFewPercent() {
        LogVibration logged = LogVibration.of(
                RecordedRide.of(LogFile.read(EXAMPLE, LogChoice.OPEN), options(STILL_BEFORE, Double.NaN)));

        VibrationMetrics simulated =
                SimulatedRide.result().seats().get(0).metrics().get(Axis.Z);
        assertThat(logged.vertical().metrics().rms()).isCloseTo(simulated.rms(), Percentage.withPercentage(5));
        assertThat(logged.vertical().metrics().mtvv()).isCloseTo(simulated.mtvv(), Percentage.withPercentage(5));
    }

    @Test
    void theExampleSaysThatItIsInvented() throws IOException {
        assertThat(Files.readString(EXAMPLE)).startsWith("# Invented");
    }

    private static LogOptions options(double later, double startUp) {
        var window = SimulatedRide.result().window();
        return new LogOptions(
                Position.SEAT,
                Forward.PLUS_X,
                Gravity.FOUND,
                window.from() + later,
                window.to() + later,
                Double.NaN,
                startUp);
    }

    private static String level() {
        Channel x = SimulatedRide.seat("longitudinal");
        Channel y = SimulatedRide.seat("lateral");
        Channel z = SimulatedRide.seat("vertical");
        StringBuilder out = new StringBuilder("time (s);ax [m/s^2];ay [m/s^2];az [m/s^2]\n");
        for (int i = 0; i < z.size(); i++) {
            String row = String.format(
                    Locale.ROOT,
                    "%.4f;%.9g;%.9g;%.9g%n",
                    z.time(i),
                    x.sample(i),
                    y.sample(i),
                    z.sample(i) + Mounting.G);
            out.append(row.replace('.', ','));
        }
        return out.toString();
    }
}
