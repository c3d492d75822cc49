package org.ridewright.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ridewright.quantity.JointSpread;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.NamedValue;
import org.ridewright.quantity.Provenance;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.quantity.UnfitValueException;
import org.ridewright.ride.Scenario;
import org.ridewright.vehicle.Friction;
import org.ridewright.vehicle.Vehicle;

/** Every value of a file has a name by which it can be looked up and exchanged, in the description and in the text. */
class DocumentsTest {
    private static final Path SCENARIOS = Path.of("../scenarios");

    @TempDir
    Path folder;

    private static VehicleDocument phaeton() {
        return VehicleDocument.read(SCENARIOS.resolve("vehicles/phaeton.yaml"));
    }

    private static double rate(Vehicle vehicle, int axle) {
        return vehicle.axles().get(axle).springs().get(0).elasticity()
                        instanceof org.ridewright.vehicle.Elasticity.Rate rate
                ? rate.rate().value()
                : Double.NaN;
    }

    @ParameterizedTest
    @ValueSource(strings = {"dray", "lorry", "saloon", "trailer", "van", "phaeton"})
    void writingWhatStandsThereChangesNothing(String name) {
        VehicleDocument document = VehicleDocument.read(SCENARIOS.resolve("vehicles/" + name + ".yaml"));
        Map<String, String> same = new LinkedHashMap<>();
        document.values().forEach(value -> same.put(value.path(), value.written()));

        assertThat(document.with(same)).isEqualTo(document.asWritten());
        assertThat(document.values()).filteredOn(v -> v.measure().isPresent()).hasSizeGreaterThan(40);
    }

    @ParameterizedTest
    @CsvSource({
        "axles[0].springs[0].rate, axles[0].springs[0].rate",
        "axles[front].springs[front springs].rate, axles[0].springs[0].rate",
        "axles[rear].wheels.diameter, axles[1].wheels.diameter",
        "'load cases[two aboard].aboard[driver].mass', 'load cases[1].aboard[0].mass'"
    })
    void anItemMayBeCalledByItsNumberOrItsName(String written, String counted) {
        assertThat(phaeton().value(written).path()).isEqualTo(counted);
    }

    @Test
    void oneValueChangesAndNoOther() {
        VehicleDocument document = phaeton();
        Vehicle changed = document.with(Map.of("axles[rear].springs[0].rate", "21000.0 N/m"));

        assertThat(rate(changed, 1)).isEqualTo(21000);
        assertThat(rate(changed, 0)).isEqualTo(rate(document.asWritten(), 0));
        assertThat(rate(document.asWritten(), 1)).isEqualTo(17000);
    }

    @Test
    void aStarMeansEveryItemAndACrossAFactor() {
        Vehicle changed = phaeton().with(Map.of("axles[*].springs[*].rate", "× 1.5"));

        assertThat(rate(changed, 0)).isCloseTo(21000, within(1e-9));
        assertThat(rate(changed, 1)).isCloseTo(25500, within(1e-9));
    }

    @Test
    void aMultipleStaysAMultiple() {
        Vehicle changed = phaeton().with(Map.of("axles[front].springs[0].friction.locked rate", "3.0"));

        assertThat(changed.axles().get(0).springs().get(0).friction().lockedRate())
                .isInstanceOfSatisfying(
                        Friction.LockedRate.MultipleOfRate.class,
                        multiple -> assertThat(multiple.multiple().value()).isEqualTo(3));
    }

    @Test
    void aKeyMayBeAddedOrTakenOutAndAGroupExchanged() {
        VehicleDocument document = phaeton();

        assertThat(document.with(Map.of("axles[front].anti-roll bar", "5 kN m/rad"))
                        .axles()
                        .get(0)
                        .antiRollBar())
                .isPresent();
        assertThat(document.with(Map.of("axles[front].springs[0].friction", ""))
                        .axles()
                        .get(0)
                        .springs()
                        .get(0)
                        .friction()
                        .shareOfLoad()
                        .value())
                .isZero();
        assertThat(document.with(Map.of("seats[0].cushion", "{rate: 30 N/mm, damping ratio: 0.2}"))
                        .seats()
                        .get(0)
                        .stages())
                .hasSize(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "axles[middle].track | has no middle; there are front, rear",
                "axles[rea].track | write rear",
                "axles[7].track | has 2 items, counted from 0",
                "axles.track | say which of its items",
                "body[0].mass | is a group of keys, not a list",
                "body.mass.kg | end the path there",
                "axles[0].springs[0].rat | is no single value of the file; write axles[0].springs[0].rate",
                "axles[0]]. | is no path to a value"
            })
    void aPathThatLeadsNowhereIsToldWithWhatIsThere(String path, String said) {
        assertThatThrownBy(() -> phaeton().value(path))
                .isInstanceOf(UnfitValueException.class)
                .hasMessageContaining(said);
    }

    @Test
    void aValueThatCannotBeIsRefusedAtItsLine() {
        assertThatThrownBy(() -> phaeton().with(Map.of("body.mass", "-3 kg")))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("phaeton.yaml:8:");
        assertThatThrownBy(() -> phaeton().with(Map.of("body.mas", "3 kg")))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("is not a key of a body");
    }

    @Test
    void aPartMarkedOnceAndUsedAgainIsOneValue() throws IOException {
        Path file = folder.resolve("marked.yaml");
        String text = Files.readString(SCENARIOS.resolve("vehicles/phaeton.yaml"))
                .replaceFirst(
                        "friction:\\n          share of load: 0.06 ± 25 %",
                        "friction: &dry\n          share of load: 0.06 ± 25 %")
                .replaceFirst("(?s)(rear springs.*?)friction:\\n.*?(        bump stop)", "$1friction: *dry\n$2");
        Files.writeString(file, text);
        VehicleDocument document = VehicleDocument.read(file);
        String rear = "axles[rear].springs[0].friction.share of load";

        Vehicle changed = document.with(Map.of(rear, "0.05"));

        for (int axle = 0; axle < 2; axle++) {
            assertThat(changed.axles()
                            .get(axle)
                            .springs()
                            .get(0)
                            .friction()
                            .shareOfLoad()
                            .value())
                    .isEqualTo(0.05);
        }
        Measure share = new Measure(QuantityKind.RATIO, 0.071, 0.004, Provenance.CALIBRATED, "");
        assertThat(document.rewritten(Map.of(rear, share), new double[][] {{1}}, "a test"))
                .contains("share of load: 0.0710 ± 0.0040 (calibrated)")
                .contains("friction: *dry");
    }

    @Test
    void theRewrittenFileKeepsCommentsUnitsAndEverythingElse() throws IOException {
        VehicleDocument document = phaeton();
        Map<String, Measure> values = new LinkedHashMap<>();
        values.put(
                "axles[front].springs[0].rate",
                new Measure(QuantityKind.RATE, 14321.7, 234.5, Provenance.CALIBRATED, ""));
        values.put(
                "axles[front].springs[0].friction.locked rate",
                new Measure(QuantityKind.RATIO, 1.634, 0.21, Provenance.CALIBRATED, ""));
        String before = Files.readString(SCENARIOS.resolve("vehicles/phaeton.yaml"));
        String after = document.rewritten(values, new double[][] {{1, -0.4}, {-0.4, 1}}, "a test");
        Path file = folder.resolve("phaeton-calibrated.yaml");
        Files.writeString(file, after);

        List<String> kept = before.lines()
                .filter(line -> !line.contains("rate: 14 kN/m") && !line.contains("locked rate: 1.5"))
                .toList();
        assertThat(after.lines()).containsSubsequence(kept);
        assertThat(after).contains("rate: 14.32 ± 0.23 kN/m (calibrated)").contains("1.63 ± 0.21 (calibrated) times");
        VehicleDocument again = VehicleDocument.read(file);
        assertThat(rate(again.asWritten(), 0)).isEqualTo(14320);
        assertThat(again.spread()
                        .correlation(
                                again.spread().paths().indexOf("axles[0].springs[0].rate"),
                                again.spread().paths().indexOf("axles[0].springs[0].friction.locked rate")))
                .isEqualTo(-0.4);
        // a second calibration takes the place of the first
        String twice = again.rewritten(values, new double[][] {{1, 0}, {0, 1}}, "again");
        assertThat(twice.split("calibration:", -1)).hasSize(2);
        assertThat(twice).contains("again").doesNotContain("from: \"a test\"");
    }

    @Test
    void aDrawTakesEachValueAsFarAsItsToleranceSays() {
        JointSpread spread = phaeton().spread();
        double[] w = new double[spread.size()];
        java.util.Arrays.fill(w, 1);
        List<NamedValue> values = phaeton().values();

        List<Double> drawn = spread.values(w);

        for (int i = 0; i < w.length; i++) {
            String path = spread.paths().get(i);
            Measure measure = values.stream()
                    .filter(v -> v.path().equals(path))
                    .findFirst()
                    .orElseThrow()
                    .measure()
                    .orElseThrow();
            assertThat(drawn.get(i)).isCloseTo(measure.value() + measure.tolerance(), within(1e-6 * measure.value()));
        }
        assertThat(phaeton().with(spread.texts(new double[w.length]))).isNotNull();
    }

    @Test
    void contradictingCorrelationsAreRefused() {
        List<NamedValue> three = phaeton().values().stream()
                .filter(v -> v.measure().filter(m -> m.tolerance() > 0).isPresent())
                .limit(3)
                .toList();

        assertThatThrownBy(() -> new JointSpread(three, new double[][] {{1, 0.9, 0.9}, {0.9, 1, -0.9}, {0.9, -0.9, 1}}))
                .isInstanceOf(UnfitValueException.class);
    }

    @Test
    void aScenarioReachesIntoItsVehicles() {
        ScenarioDocument document = ScenarioDocument.read(SCENARIOS.resolve("gate.yaml"));
        String path = document.values().stream()
                .map(NamedValue::path)
                .filter(p -> p.matches("vehicles\\[1]\\.vehicle\\.axles\\[0]\\.track"))
                .findFirst()
                .orElseThrow();

        Scenario changed = document.with(Map.of(path, "1.5 m"));

        assertThat(changed.entrants()
                        .get(1)
                        .vehicle()
                        .axles()
                        .get(0)
                        .track()
                        .orElseThrow()
                        .value())
                .isEqualTo(1.5);
        assertThat(changed.entrants().get(0))
                .isEqualTo(document.asWritten().entrants().get(0));
        assertThat(document.value("vehicles[saloon].vehicle.axles[0].track").path())
                .isEqualTo(document.value("vehicles[saloon.yaml].vehicle.axles[0].track")
                        .path());
    }
}
