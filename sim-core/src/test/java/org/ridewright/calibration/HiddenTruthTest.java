package org.ridewright.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ridewright.bounce.BounceKind;
import org.ridewright.bounce.BounceTest;
import org.ridewright.bounce.Handling;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.fieldwork.Measurements;
import org.ridewright.io.MeasurementsFile;
import org.ridewright.io.ScenarioFile;
import org.ridewright.io.VehicleDocument;
import org.ridewright.quantity.Adjustable;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.NamedValue;
import org.ridewright.quantity.Spread;
import org.ridewright.road.Road;
import org.ridewright.signal.Channel;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.wheel.Ground;

/** Whole vehicle files, calibrated by what a yard writes down of vehicles whose true values nobody knows. */
class HiddenTruthTest {
    private static final Path SCENARIOS = Path.of("..", "scenarios");
    private static final Path PHAETON = SCENARIOS.resolve("vehicles/phaeton.yaml");
    private static final Path DRAY = SCENARIOS.resolve("vehicles/dray.yaml");
    private static final Path BY_TAPE = SCENARIOS.resolve("measurements/carriage-by-tape.yaml");
    private static final Path RIDES = SCENARIOS.resolve("riders-words.yaml");

    @TempDir
    private Path folder;

    private Measurements written(Path vehicle, String unknowns, String facts) throws IOException {
        Path file = folder.resolve("yard.yaml");
        Files.writeString(
                file,
                "measurements: hidden\nvehicle: " + vehicle.toAbsolutePath() + "\n" + unknowns + "facts:\n" + facts);
        return MeasurementsFile.read(file);
    }

    private static CalibratedVehicle calibrated(Path vehicle, Measurements measurements) {
        return VehicleCalibration.of(
                VehicleDocument.read(vehicle),
                measurements,
                new Sources(MeasurementsFile::road, MeasurementsFile::recording));
    }

    /** Weights and heights are cheap; many vehicles can be drawn. What the data hardly narrow would hold the truth anyhow and is not counted. */
    @Test
    void scalesAndTapeGiveIntervalsThatHoldTheTruth() throws IOException {
        int held = 0;
        int sought = 0;
        int narrowed = 0;
        for (int seed = 0; seed < 6; seed++) {
            for (Path vehicle : List.of(PHAETON, DRAY)) {
                String laden = vehicle.equals(PHAETON) ? "two aboard" : "half laden";
                HiddenVehicle hidden = new HiddenVehicle(vehicle, seed)
                        .weigh("empty")
                        .weigh(laden)
                        .tape("empty", laden);
                CalibratedVehicle found = calibrated(vehicle, written(vehicle, "", hidden.facts()));
                for (int j = 0; j < found.ofVehicle(); j++) {
                    sought++;
                    if (found.fit().shrinkage(j) <= 0.1) {
                        continue;
                    }
                    double truth = hidden.value(found.fit().unknowns().get(j).path());
                    boolean within = found.fit().lower(j) <= truth
                            && truth <= found.fit().upper(j);
                    held += within ? 1 : 0;
                    narrowed++;
                }
                assertThat(found.fit().atRest()).isTrue();
            }
        }
        assertThat(sought).isGreaterThan(80);
        assertThat(narrowed).isGreaterThan(40);
        assertThat(held / (double) narrowed).isBetween(0.84, 0.96);
    }

    @Test
    void rollTellsTheHeightThatScalesCannot() throws IOException {
        String unknowns = "unknowns: [body.centre of mass.above ground, body.mass]\n";
        HiddenVehicle hidden = new HiddenVehicle(PHAETON, 5).weigh("empty");
        CalibratedVehicle scales = calibrated(PHAETON, written(PHAETON, unknowns, hidden.facts()));
        hidden.bounce(BounceKind.ROLL, "side", "two aboard", false).bounce(BounceKind.ROLL, "side", "empty", false);
        CalibratedVehicle both = calibrated(PHAETON, written(PHAETON, unknowns, hidden.facts()));
        assertThat(scales.fit().shrinkage(0)).isLessThan(0.01);
        assertThat(both.fit().shrinkage(0)).isGreaterThan(0.02);
        // tolerances that were not sought are told, not hidden
        assertThat(both.held()).extracting(Held::path).anyMatch(path -> path.contains("unsprung mass"));
    }

    @Test
    void aLoggedRideBehindAHorseGivesSpeedAndSpringsBack() throws IOException {
        Road road = ScenarioFile.read(RIDES).roads().get(0);
        HiddenVehicle hidden = new HiddenVehicle(PHAETON, 3)
                .ride(folder, road, RIDES, "two aboard", "driver's place", 2.0, true, false)
                .ride(folder, road, RIDES, "two aboard", "driver's place", 3.0, false, true);
        String unknowns = "unknowns: [\"axles[front].springs[0].rate\", \"axles[rear].springs[0].rate\"]\n";
        CalibratedVehicle found = calibrated(PHAETON, written(PHAETON, unknowns, hidden.facts()));
        RideOverlay ride = found.rides().get(0);
        assertThat(ride.explainedAfter()).isGreaterThan(0.85);
        assertThat(ride.speed()).isCloseTo(2.02, within(0.03));
        int steps = found.fit().unknowns().size() - 1;
        assertThat(found.fit().unknowns().get(steps).path()).contains("horse");
        assertThat(found.fit().value(steps)).isCloseTo(2.2, within(0.05));
        RideOverlay kept = found.rides().get(1);
        assertThat(kept.keptBack()).isTrue();
        assertThat(kept.explainedAfter()).isGreaterThan(0.7);
    }

    /** The log is made of the simulated rise by second differences, with noise. */
    @Test
    void aLoggedBounceGivesTheRateBack() throws IOException {
        String path = "axles[front].springs[0].rate";
        Vehicle truth = VehicleDocument.read(BY_TAPE).with(Map.of(path, "8.5 kN/m"));
        VehicleModel model =
                VehicleModel.assemble(truth, truth.loadCase("two aboard").orElseThrow(), Ground.UNYIELDING, true);
        Channel rise = new BounceTest(BounceKind.FRONT, Handling.pushTo(0.04))
                .run(model, 100)
                .traces()
                .get(0);
        Random chance = new Random(1);
        StringBuilder csv = new StringBuilder("time (s),z (m/s²)\n");
        for (int i = 1; i < rise.size() - 1; i++) {
            double acceleration = (rise.sample(i + 1) - 2 * rise.sample(i) + rise.sample(i - 1)) * 1e4;
            csv.append(String.format(
                    Locale.ROOT,
                    "%.3f,%.4f%n",
                    i / 100.0,
                    VehicleModel.GRAVITY + acceleration + 0.03 * chance.nextGaussian()));
        }
        Files.writeString(folder.resolve("front.csv"), csv);
        String facts = "  - bounce log: {test: front, with: two aboard, logs: {file: front.csv, unit: m/s², "
                + "place: {behind front axle: 0 m, above ground: 0.9 m}}}\n";
        VehicleDocument file = VehicleDocument.read(BY_TAPE);
        Measurements measured = written(BY_TAPE, "unknowns: [\"" + path + "\"]\n", facts);
        // everything else is as in the file, so that only this may move
        Adjustable<Vehicle> exact = new OnlyOneUncertain(file, path);
        CalibratedVehicle found = VehicleCalibration.of(
                exact, measured, new Sources(MeasurementsFile::road, MeasurementsFile::recording));
        assertThat(found.fit().residuals()).hasSize(2);
        assertThat(found.fit().value(0))
                .isCloseTo(8500, within(1.5 * found.fit().standardError(0)));
        assertThat(found.fit().standardError(0)).isLessThan(600);
    }

    /** A file of which one value alone has its tolerance. */
    private record OnlyOneUncertain(VehicleDocument file, String path) implements Adjustable<Vehicle> {
        @Override
        public Vehicle asWritten() {
            return file.asWritten();
        }

        @Override
        public List<NamedValue> values() {
            return List.of(file.value(path));
        }

        @Override
        public NamedValue value(String wanted) {
            return file.value(wanted);
        }

        @Override
        public Vehicle with(Map<String, String> texts) {
            return file.with(texts);
        }
    }

    @Test
    void aRideMarkedUnfitIsLeftOutWithItsReason() throws IOException {
        Road road = ScenarioFile.read(RIDES).roads().get(0);
        HiddenVehicle hidden = new HiddenVehicle(PHAETON, 4)
                .weigh("empty")
                .ride(folder, road, RIDES, "two aboard", "driver's place", 2.0, false, false);
        String facts = hidden.facts().replace("seat: driver's place", "seat: driver's place, rate: 100 Hz");
        String unfit = facts.substring(0, facts.lastIndexOf('}')) + ", horse: {unfit: the horse shied}}\n";
        CalibratedVehicle found = calibrated(PHAETON, written(PHAETON, "", unfit));
        assertThat(found.leftOut()).hasSize(1);
        assertThat(found.leftOut().get(0).reason()).contains("the horse shied");
        assertThat(found.rides()).isEmpty();
    }

    @Test
    void theCalibratedFileReadsBackWithTheSameSpreadAndCorrelation() throws IOException {
        HiddenVehicle hidden = new HiddenVehicle(PHAETON, 6).weigh("empty").weigh("two aboard");
        CalibratedVehicle found = calibrated(PHAETON, written(PHAETON, "", hidden.facts()));
        VehicleDocument document = VehicleDocument.read(PHAETON);
        Path file = folder.resolve("calibrated.yaml");
        Files.writeString(
                file, document.rewritten(found.values(), found.heldTogether().paths(), found.correlation(), "hidden"));
        VehicleDocument again = VehicleDocument.read(file);
        for (Map.Entry<String, Measure> entry : found.values().entrySet()) {
            Spread spread = Spread.of(again.value(entry.getKey()).measure().orElseThrow());
            Spread wanted = Spread.of(entry.getValue());
            assertThat(spread.central())
                    .isCloseTo(wanted.central(), within(0.05 * entry.getValue().tolerance()));
            assertThat(spread.deviation()).isCloseTo(wanted.deviation(), within(0.06 * wanted.deviation()));
        }
        int first = again.spread().paths().indexOf("body.mass");
        int second = again.spread().paths().indexOf("axles[0].unsprung mass");
        int i = List.copyOf(found.values().keySet()).indexOf("body.mass");
        int j = List.copyOf(found.values().keySet()).indexOf("axles[0].unsprung mass");
        assertThat(again.spread().correlation(first, second))
                .isCloseTo(found.correlation()[i][j], within(1e-5))
                .isNegative();
        assertThat(Files.readString(file)).contains("# A light carriage, invented");
    }

    @Test
    void measurementsThatTellNothingOfWhatIsSoughtAreRefused() throws IOException {
        HiddenVehicle hidden = new HiddenVehicle(PHAETON, 7).weigh("empty");
        Measurements measured =
                written(PHAETON, "unknowns: [\"axles[0].springs[0].bump stop.rate\"]\n", hidden.facts());
        assertThatThrownBy(() -> calibrated(PHAETON, measured))
                .isInstanceOf(CalibrationException.class)
                .hasMessageContaining("tell nothing")
                .hasMessageContaining("bump stop");
    }
}
