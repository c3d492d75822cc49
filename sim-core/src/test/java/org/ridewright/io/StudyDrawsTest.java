package org.ridewright.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ridewright.ride.Scenario;
import org.ridewright.study.CompareFindings;
import org.ridewright.study.Findings;
import org.ridewright.study.Method;
import org.ridewright.study.Outcome;
import org.ridewright.study.QuantileSketch;
import org.ridewright.study.Schedule;
import org.ridewright.study.Study;
import org.ridewright.study.StudyBench;
import org.ridewright.study.SweepFindings;
import org.ridewright.study.Trial;
import org.ridewright.vehicle.Vehicle;

/** What is common to things that are compared is drawn alike for them, and cancels; what is not is not. */
class StudyDrawsTest {
    private static final String QUARTER = """
            vehicle: Test quarter
            layout: quarter
            body: {mass: 300 kg ± 5 %}
            axles:
              - name: wheel
                behind front axle: 0 m
                unsprung mass: 40 kg
                wheels: {diameter: 0.6 m, tyre: pneumatic, path: disc, contact rate: 180 kN/m ± 10 %, contact damping ratio: 0.15}
                springs: [{name: coil, kind: coil, rate: 20 kN/m ± 8 %}]
                dampers: [{name: strut, bump: 1200 N s/m, rebound: 1200 N s/m}]
            load cases: [{name: empty, aboard: []}, {name: laden, aboard: [{cargo: sand, mass: 100 kg}]}]
            """;

    private static final String RATE = "vehicles[0].vehicle.axles[0].springs[0].rate";
    private static final String HEAD = "study: Test\nbase: plank.yaml\nanswers: [peak, swing]\n";

    @TempDir
    Path folder;

    @BeforeEach
    void writeFiles() throws IOException {
        Files.writeString(folder.resolve("quarter.yaml"), QUARTER);
        Files.writeString(folder.resolve("copy.yaml"), QUARTER.replace("Test quarter", "Copy"));
        scenario("plank", "{file: quarter.yaml, load cases: [empty], speeds: [10 km/h]}");
        scenario("other", "{file: copy.yaml, load cases: [empty], speeds: [10 km/h]}");
    }

    private void scenario(String name, String vehicles) throws IOException {
        Files.writeString(
                folder.resolve(name + ".yaml"),
                "scenario: A plank\nvehicles: [" + vehicles
                        + "]\nroads:\n  - {name: low, obstacles: [{plank: {at: 1 m, height: 20 mm, length: 150 mm}}]}\n"
                        + "  - {name: high, obstacles: [{plank: {at: 1 m, height: 40 mm, length: 150 mm}}]}\nduration: 2 s\n");
    }

    private Study study(String method) {
        try {
            Path file = folder.resolve("study.yaml");
            Files.writeString(file, HEAD + method);
            return StudyFile.read(file, "test");
        } catch (IOException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static Findings ridden(Study study) {
        Findings findings = Findings.of(study);
        Schedule schedule = study.schedule();
        StudyBench bench = new StudyBench(study);
        for (long run = 0; run < schedule.size(); run++) {
            Trial trial = schedule.trial(run);
            findings.take(trial, bench.ride(trial));
        }
        return findings;
    }

    private static String variants(String path, String text) {
        return "compare:\n  draws: 8\n  variants:\n    - called: as it is\n    - called: other\n      with:\n        \""
                + path + "\": " + text + "\n";
    }

    private static List<String> column(Study study, String head, int variant) {
        Schedule schedule = study.schedule();
        int at = schedule.heads().indexOf(head);
        assertThat(at).as(head).isNotNegative();
        return LongStream.range(study.variants().size(), schedule.size())
                .mapToObj(schedule::trial)
                .filter(trial -> trial.variant() == variant)
                .map(trial -> trial.cells().get(at))
                .toList();
    }

    @Test
    void onceAValueIsNoChangeAtAll() {
        CompareFindings findings =
                (CompareFindings) ridden(study(variants("vehicles[*].vehicle.axles[*].springs[*].rate", "× 1.0")));

        for (int r = 0; r < 2; r++) {
            for (int q = 0; q < 2; q++) {
                QuantileSketch one = findings.spread(0, r, q);
                QuantileSketch other = findings.spread(1, r, q);
                assertThat(one.high() - one.low()).as("it is spread").isPositive();
                for (double share : new double[] {0, 0.5, 1}) {
                    assertThat(other.quantile(share)).isEqualTo(one.quantile(share));
                }
                assertThat(findings.best(r, q)).as("two alike").isEqualTo(-1);
            }
        }
    }

    @Test
    void theTableOfRunsHasTheValueThatWasUsed() {
        Study study = study(variants("vehicles[0].vehicle.axles[*].springs[*].rate", "× 1.5"));
        List<String> asItIs = column(study, RATE + " (N/m)", 0);
        List<String> other = column(study, RATE + " (N/m)", 1);

        for (int d = 0; d < 8; d++) {
            double drawn = Double.parseDouble(asItIs.get(d));
            assertThat(drawn).isNotEqualTo(20_000);
            assertThat(Double.parseDouble(other.get(d))).isEqualTo(1.5 * drawn, within(1e-9));
        }
    }

    @Test
    void aValueThatAVariantStatesIsInTheTableAsStated() {
        Study stated = study(variants(RATE, "15 kN/m"));

        assertThat(column(stated, RATE + " (N/m)", 1)).containsOnly("15000.0");
    }

    @Test
    void alongMultiplesOfAnUncertainValueItStaysUncertain() {
        Study study = study("uncertainty: {draws: 4, along: {vary: \"" + RATE + "\", values: [× 0.5, × 1]}}\n");
        Schedule schedule = study.schedule();
        int at = schedule.heads().indexOf(RATE + " (N/m)");

        for (int d = 0; d < 4; d++) {
            double half = Double.parseDouble(schedule.trial(1L + d).cells().get(at));
            double whole = Double.parseDouble(schedule.trial(5L + d).cells().get(at));
            assertThat(half).isEqualTo(0.5 * whole, within(1e-9));
            assertThat(whole).isNotEqualTo(20_000);
        }
    }

    @Test
    void vehiclesOfTwoFilesAreDrawnApart() {
        Study study = study(
                "compare:\n  draws: 8\n  variants:\n    - called: one\n    - called: other\n      base: other.yaml\n");

        assertThat(column(study, RATE + " (N/m)", 0)).doesNotContainAnyElementsOf(column(study, RATE + " (N/m)", 1));
    }

    @Test
    void aVehicleIsDrawnAlikeInTwoScenarios() throws IOException {
        scenario("other", "{file: quarter.yaml, load cases: [empty], speeds: [10 km/h]}");
        Study study = study(
                "compare:\n  draws: 8\n  variants:\n    - called: one\n    - called: other\n      base: other.yaml\n");

        assertThat(column(study, RATE + " (N/m)", 0)).isEqualTo(column(study, RATE + " (N/m)", 1));
    }

    @Test
    void vehiclesWithUnlikeSpeedsAreComparedOnTheSameRoadAtTheSameSpeed() throws IOException {
        scenario(
                "plank",
                "{file: quarter.yaml, load cases: [empty], speeds: [10 km/h]}, {file: copy.yaml, load cases: [empty], speeds: [10 km/h, 20 km/h]}");
        CompareFindings findings = (CompareFindings) ridden(study("compare: {between: vehicles}\n"));

        assertThat(findings.rows()).containsExactly("low", "high");
        for (int r = 0; r < 2; r++) {
            assertThat(findings.value(0, r, 0)).isEqualTo(findings.value(1, r, 0));
        }
        assertThat(findings.leftOut()).hasSize(2).allMatch(test -> test.contains("20 km/h"));
    }

    @Test
    void whatHasNoTestInCommonIsRefused() throws IOException {
        scenario(
                "plank",
                "{file: quarter.yaml, load cases: [empty], speeds: [10 km/h]}, {file: copy.yaml, load cases: [empty], speeds: [20 km/h]}");

        assertThatThrownBy(() -> study("compare: {between: vehicles}\n"))
                .hasMessageContaining("no ride test in common")
                .hasMessageContaining("same speed");
    }

    @Test
    void aStepWithOtherRideTestsIsARowWithItsReason() throws IOException {
        scenario(
                "plank",
                "{file: quarter.yaml, load cases: [empty, laden], speeds: [10 km/h]}, {file: copy.yaml, load cases: [empty], speeds: [10 km/h]}");
        Study study = study(
                "sweep: {vary: 'vehicles[0].load cases', values: ['[empty, laden]', '[laden]', '[laden, empty]']}\n");
        SweepFindings findings = (SweepFindings) ridden(study);

        assertThat(findings.failed()).isEqualTo(1);
        assertThat(findings.reasons()).singleElement().asString().contains("ride tests", "6", "4");
        for (int t = 0; t < findings.tests().size(); t++) {
            double[][] steps = findings.values(t, 0);
            assertThat(steps[0][0]).isEqualTo(findings.asWritten(t, 0));
            assertThat(steps[1][0]).isNaN();
            assertThat(steps[2][0]).as("whatever the order").isEqualTo(findings.asWritten(t, 0));
        }
    }

    @Test
    void anotherVehicleIsAsUncertainAsItsOwnFileSays() throws IOException {
        Files.writeString(
                folder.resolve("sure.yaml"),
                QUARTER.replace("Test quarter", "Sure").replace("20 kN/m ± 8 %", "15 kN/m ± 0.01 %"));
        Study variant = study(variants("vehicles[0].file", "sure.yaml"));
        Study whole = study("with: {\"vehicles[0].file\": sure.yaml}\nuncertainty: {draws: 8}\n");

        for (Study study : List.of(variant, whole)) {
            assertThat(column(study, RATE + " (N/m)", study.variants().size() - 1))
                    .allSatisfy(cell -> assertThat(Double.parseDouble(cell)).isEqualTo(15_000, within(10.0)))
                    .doesNotHaveDuplicates();
        }
        assertThat(((CompareFindings) ridden(variant)).value(1, 0, 0)).isPositive();
    }

    @Test
    void changesToAnotherVehicleAreMadeInThatOne() throws IOException {
        Files.writeString(folder.resolve("other-rate.yaml"), QUARTER.replace("20 kN/m ± 8 %", "10 kN/m"));
        Study study = study("with: {\"vehicles[0].file\": other-rate.yaml, \"" + RATE + "\": × 2, "
                + "\"vehicles[quarter].vehicle.body.mass\": 200 kg}\nuncertainty: {draws: 4}\n");
        Vehicle vehicle =
                scenarioOf(study, study.schedule().trial(1)).entrants().get(0).vehicle();

        assertThat(vehicle.axles().get(0).springs().get(0).toString()).contains("value=20000.0");
        assertThat(vehicle.body().mass().orElseThrow().value()).isEqualTo(200);
    }

    @Test
    void aToleranceThatAChangeStatesIsDrawn() {
        Study whole = study("with: {\"" + RATE + "\": 18 kN/m ± 10 %}\nuncertainty: {draws: 64}\n");
        Study variant = study(variants(RATE, "18 kN/m ± 10 %"));

        double[] rates = column(whole, RATE + " (N/m)", 0).stream()
                .mapToDouble(Double::parseDouble)
                .toArray();
        assertThat(Arrays.stream(rates).map(Math::log).average().orElseThrow())
                .isEqualTo(Math.log(18_000), within(0.02));
        assertThat(Arrays.stream(rates).max().orElseThrow()
                        / Arrays.stream(rates).min().orElseThrow())
                .as("four standard deviations or so")
                .isBetween(1.3, 1.8);
        assertThat(column(variant, RATE + " (N/m)", 1)).doesNotHaveDuplicates();
        assertThat(Double.parseDouble(column(variant, RATE + " (N/m)", 1).get(0)) / 18_000)
                .as("another value than the file's, drawn apart from it")
                .isNotCloseTo(
                        Double.parseDouble(column(variant, RATE + " (N/m)", 0).get(0)) / 20_000, within(1e-3));
    }

    @Test
    void aValueThatIsStatedAnewIsNoLongerKnownTogetherWithWhatWasCalibrated() throws IOException {
        Files.writeString(
                folder.resolve("quarter.yaml"),
                QUARTER + "calibration:\n  from: a bounce test\n  of: ['body.mass', 'axles[0].springs[0].rate']\n"
                        + "  correlation: [[1, 0.8], [0.8, 1]]\n");
        String method = "sensitivity: {method: morris}\n";
        Study stated = study("with: {\"" + RATE + "\": 18 kN/m ± 10 %}\n" + method);

        assertThat(((Method.Screening) study(method).method()).correlated()).hasSize(1);
        assertThat(((Method.Screening) stated.method()).correlated()).isEmpty();
    }

    @Test
    void aChangeWithoutToleranceStaysBesideOneThatHasIt() {
        Study study = study("with: {\"vehicles[*].vehicle.axles[*].springs[*].rate\": 30 kN/m, \"" + RATE
                + "\": 18 kN/m ± 10 %}\nuncertainty: {draws: 8}\n");

        assertThat(column(study, RATE + " (N/m)", 0))
                .doesNotHaveDuplicates()
                .allSatisfy(cell -> assertThat(Double.parseDouble(cell)).isBetween(12_000.0, 26_000.0));
    }

    @Test
    void tolerancesThatCannotBeReadOrAreThoseOfUnlikeVehiclesAreRefused() {
        assertThatThrownBy(() -> study("uncertainty: {draws: 4, along: {vary: 'vehicles[0].file', "
                        + "values: [quarter.yaml, copy.yaml]}}\n"))
                .hasMessageContaining("puts another vehicle in its place at each step")
                .hasMessageContaining("compare variants");
        for (String method : List.of("uncertainty: {draws: 4}\n", "sensitivity: {method: morris}\n")) {
            assertThatThrownBy(() -> study(
                            "with: {\"vehicles[0]\": \"{file: copy.yaml, load cases: [empty], speeds: [9 km/h]}\"}\n"
                                    + method))
                    .hasMessageContaining("are not read")
                    .hasMessageContaining("vehicles[0].file");
            assertThatThrownBy(() -> study("with: {\"vehicles[0].vehicle.axles[0].springs[0].friction\": "
                            + "\"{constant: 50 N ± 10 %}\"}\n" + method))
                    .hasMessageContaining("are not read");
        }
    }

    private static Scenario scenarioOf(Study study, Trial trial) {
        return study.variants().get(0).scenario().with(trial.texts());
    }

    @Test
    void partOfWhatWasCalibratedTogetherIsNotDrawnAlone() throws IOException {
        Files.writeString(
                folder.resolve("quarter.yaml"),
                QUARTER + "calibration:\n  from: a bounce test\n  of: ['body.mass', 'axles[0].springs[0].rate']\n"
                        + "  correlation: [[1, 0.8], [0.8, 1]]\n");

        assertThatThrownBy(() -> study("uncertainty: {draws: 4, of: '" + RATE + "'}\n"))
                .hasMessageContaining("calibrated together")
                .hasMessageContaining("vehicles[0].vehicle.body.mass");
        assertThat(study("uncertainty: {draws: 4, of: ['" + RATE + "', 'vehicles[0].vehicle.body.mass']}\n")
                        .schedule()
                        .heads())
                .hasSize(2);
        assertThat(study("sensitivity: {method: morris, of: '" + RATE + "'}\n")
                        .schedule()
                        .size())
                .as("a screening moves one value at a time anyway")
                .isEqualTo(41);
    }

    @Test
    void multiplesAreTriedBeforeAnythingIsRidden() throws IOException {
        Files.writeString(
                folder.resolve("quarter.yaml"),
                QUARTER.replace(
                        "rate: 20 kN/m ± 8 %}",
                        "rate: 20 kN/m, friction: {share of load: 0.1}}, {name: aid, kind: coil, rate: 5 kN/m, friction: {constant: 50 N}}"));
        String path = "vehicles[0].vehicle.axles[0].springs[*].friction.share of load";
        assertThatThrownBy(() -> study("sweep: {vary: '" + path + "', from: × 0.5, to: × 2}\n"))
                .hasMessageContaining("no number there that could be multiplied");
        assertThatThrownBy(() -> study("sweep: {vary: '" + RATE + "', values: [× 1.2.3]}\n"))
                .hasMessageContaining("'× 1.2.3' is no multiple");
        assertThatThrownBy(() -> study("sweep: {vary: '" + RATE + "', from: × 1.2.3, to: × 2}\n"))
                .hasMessageContaining("'× 1.2.3' is no multiple");
        assertThatThrownBy(() -> study(variants(RATE, "× 1.2.3"))).hasMessageContaining("'× 1.2.3' is no multiple");
    }

    @Test
    void moreThanAThousandRangesAndTolerancesAreRefused() {
        StringBuilder ranges = new StringBuilder("  ranges:\n");
        for (int i = 0; i < 1000; i++) {
            ranges.append("    - {vary: 'vehicles[0].speeds[0]', called: v" + i + ", from: 4 km/h, to: 8 km/h}\n");
        }
        assertThatThrownBy(() -> study("uncertainty:\n  draws: 2\n" + ranges))
                .hasMessageContaining("varies 1003 values");
        assertThatThrownBy(() -> study("compare:\n  between: load cases\n  draws: 2\n" + ranges))
                .hasMessageContaining("varies 1003 values");
    }

    @Test
    void aBaseThatCannotBeRiddenLeavesTheOtherRunsTheirRows() {
        Study study = study("uncertainty: {draws: 4}\n");
        Findings findings = Findings.of(study);
        Schedule schedule = study.schedule();
        StudyBench bench = new StudyBench(study);
        findings.take(schedule.trial(0), Outcome.failed("it tips"));
        for (int run = 1; run < schedule.size(); run++) {
            findings.take(schedule.trial(run), bench.ride(schedule.trial(run)));
        }

        assertThat(findings.baseFailure()).isEqualTo("it tips");
        assertThat(findings.base()).hasSize(2);
        assertThat(findings.failed()).isEqualTo(1);
    }

    @Test
    void aValueWithWhichOneVehicleCannotBeLeavesTheOthersTheirRows() throws IOException {
        scenario(
                "plank",
                "{file: quarter.yaml, load cases: [empty], speeds: [10 km/h]}, {file: copy.yaml, load cases: [empty], speeds: [10 km/h]}");
        Study study = study(
                "sweep: {vary: 'vehicles[0].vehicle.axles[0].wheels.contact damping ratio', from: -0.2, to: 0.2, steps: 2}\n");
        SweepFindings findings = (SweepFindings) ridden(study);

        for (int t = 0; t < 4; t++) {
            boolean copy = findings.tests().get(t).startsWith("Copy");
            double[][] steps = findings.values(t, 0);
            assertThat(Double.isFinite(steps[0][0])).as(findings.tests().get(t)).isEqualTo(copy);
            assertThat(steps[1][0]).isFinite();
        }
        assertThat(findings.failed()).isEqualTo(1);
        assertThat(findings.reasons()).singleElement().asString().contains("damping ratio");
    }
}
