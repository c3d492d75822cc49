package org.ridewright.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.ridewright.study.Answer;
import org.ridewright.study.CompareFindings;
import org.ridewright.study.Factor;
import org.ridewright.study.Findings;
import org.ridewright.study.Method;
import org.ridewright.study.Outcome;
import org.ridewright.study.RideMeasure;
import org.ridewright.study.Schedule;
import org.ridewright.study.Study;
import org.ridewright.study.StudyBench;
import org.ridewright.study.Telling;
import org.ridewright.study.Trial;

/** What study files say, and how those are refused that say what cannot be. */
class StudyFileTest {
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

    private static final String SCENARIO = """
            scenario: A plank
            vehicles: [{file: quarter.yaml, load cases: [empty], speeds: [10 km/h]}]
            road:
              name: plank
              obstacles: [{plank: {at: 1 m, height: 30 mm ± 1 mm, length: 150 mm}}]
            duration: 3 s
            """;

    private static final String HEAD = "study: Test\nbase: plank.yaml\nanswers: [peak]\n";
    private static final String SPEED = "vehicles[0].speeds[0]";
    private static final String RATE = "vehicles[0].vehicle.axles[wheel].springs[coil].rate";

    @TempDir
    Path folder;

    @BeforeEach
    void writeFiles() throws IOException {
        Files.writeString(folder.resolve("quarter.yaml"), QUARTER);
        Files.writeString(folder.resolve("plank.yaml"), SCENARIO);
        Files.writeString(folder.resolve("two.yaml"), SCENARIO.replace("[10 km/h]", "[10 km/h, 20 km/h]"));
    }

    private Study study(String text) {
        try {
            Path file = folder.resolve("study.yaml");
            Files.writeString(file, text);
            return StudyFile.read(file, "test");
        } catch (IOException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static String sweep(String keys) {
        return HEAD + "sweep:\n  - vary: \"" + SPEED + "\"\n" + keys.indent(4);
    }

    private static String answered(String sentence, String blank) {
        return HEAD + "compare: {variants: [{called: a}, {called: b}]}\nanswer:\n  sentences: [\"" + sentence
                + "\"]\n  blanks: {" + blank + "}\n";
    }

    static Stream<Arguments> refused() {
        return Stream.of(
                refusal("a scenario", SCENARIO, 1, "scenario", "base: study.yaml"),
                refusal("no base", "study: T\nanswers: [peak]\nsweep: []\n", 1, "base", "scenario file"),
                refusal(
                        "a base that is not there",
                        HEAD.replace("plank.yaml", "planks.yaml"),
                        2,
                        "is not there",
                        "write plank.yaml"),
                refusal("a base that is a folder", HEAD.replace("plank.yaml", "."), 2, "is a folder", "write"),
                refusal("no answers", "study: T\nbase: plank.yaml\nsweep: []\n", 1, "answers", "a_w"),
                refusal(
                        "an unknown measure",
                        HEAD.replace("peak", "peek"),
                        3,
                        "is not a measure of a ride",
                        "write peak"),
                refusal(
                        "an unknown place",
                        HEAD.replace("[peak]", "[{measure: peak, at: center of mass}]"),
                        3,
                        "is no seat or point",
                        "write centre of mass"),
                refusal(
                        "an answer asked twice",
                        HEAD.replace("[peak]", "[peak, peak]"),
                        3,
                        "asked twice",
                        "remove one"),
                refusal(
                        "an answer without a measure",
                        HEAD.replace("[peak]", "[{at: driver}]"),
                        3,
                        "measure",
                        "add 'measure"),
                refusal("no method", HEAD, 1, "is missing", "sweep"),
                refusal("two methods", HEAD + "sweep: []\nsearch: {}\n", 5, "given beside 'sweep'", "remove"),
                refusal("a misspelt method", HEAD + "sweeps: []\n", 4, "is not a key", "write sweep"),
                refusal(
                        "three values swept",
                        HEAD + "sweep: [{vary: a}, {vary: b}, {vary: c}]\n",
                        4,
                        "varies 3 values",
                        "sensitivity"),
                refusal(
                        "a path that leads nowhere",
                        sweep("from: 1 km/h\nto: 2 km/h\n").replace("speeds", "speed"),
                        5,
                        "speed",
                        "path"),
                refusal("no steps", sweep("called: v\n"), 5, "values", "from"),
                refusal(
                        "both list and range",
                        sweep("from: 1 km/h\nto: 2 km/h\nvalues: [3 km/h]\n"),
                        6,
                        "given beside",
                        "remove"),
                refusal("one end only", sweep("from: 1 km/h\n"), 5, "to", "end of the range"),
                refusal("an end in another unit", sweep("from: 1 kg\nto: 2 km/h\n"), 6, "speed", "km/h"),
                refusal("an end without unit", sweep("from: 1\nto: 2 km/h\n"), 6, "has no unit", "write it as"),
                refusal("ends exchanged", sweep("from: 3 km/h\nto: 2 km/h\n"), 7, "is below 'from'", "exchange"),
                refusal("equal ends", sweep("from: 3 km/h\nto: 3 km/h\n"), 7, "is the same as 'from'", "unlike ends"),
                refusal("a step twice", sweep("values: [3 km/h, 4 km/h, 3.0 km/h]\n"), 6, "listed before", "remove"),
                refusal("a multiple twice", sweep("values: [× 2, × 2.0]\n"), 6, "listed before", "remove"),
                refusal(
                        "a step with a tolerance",
                        sweep("values: [3 km/h ± 1 km/h, 4 km/h]\n"),
                        6,
                        "has a tolerance",
                        "leave the tolerance out"),
                refusal(
                        "two values of one name",
                        HEAD + "sweep:\n  - {vary: \"" + SPEED + "\", called: v, from: 1 km/h, to: 2 km/h}\n"
                                + "  - {vary: duration, called: v, from: 2 s, to: 3 s}\n",
                        5,
                        "both called 'v'",
                        "another name"),
                refusal(
                        "both of two changes that cannot be, the first",
                        HEAD + "with:\n  duration: -3 s\n  durations: 3 s\nsweep: []\n",
                        5,
                        "is negative",
                        "a time > 0 s"),
                refusal(
                        "both of two changes that cannot be, the second",
                        HEAD + "with:\n  duration: -3 s\n  durations: 3 s\nsweep: []\n",
                        6,
                        "durations",
                        "duration"),
                refusal(
                        "equal ratios from nothing",
                        sweep("from: 0 km/h\nto: 2 km/h\nspacing: logarithmic\n"),
                        6,
                        "cannot begin",
                        "linear"),
                refusal("a multiple and a value", sweep("from: × 0.5\nto: 2 km/h\n"), 7, "is no multiple", "both"),
                refusal("one step", sweep("from: 1 km/h\nto: 2 km/h\nsteps: 1\n"), 8, "1 is too few", "at least 2"),
                refusal("minus three draws", HEAD + "uncertainty: {draws: -3}\n", 4, "-3 is too few", "at least 2"),
                refusal(
                        "a misspelt spacing",
                        sweep("from: 1 km/h\nto: 2 km/h\nspacing: log\n"),
                        8,
                        "is not a spacing",
                        "logarithmic"),
                refusal(
                        "a range of words",
                        HEAD + "sweep: {vary: \"vehicles[0].load cases[0]\", from: empty, to: laden}\n",
                        4,
                        "is a word",
                        "values"),
                refusal(
                        "a word that may not stand there",
                        HEAD + "sweep: {vary: \"vehicles[0].load cases[0]\", values: [laiden]}\n",
                        4,
                        "is not the name of a load case; expected empty or laden",
                        "write laden"),
                refusal(
                        "a change that cannot be",
                        HEAD + "with: {duration: -3 s}\nsweep: []\n",
                        4,
                        "cannot be",
                        "write 3 s"),
                refusal("one variant", HEAD + "compare: {variants: [{called: a}]}\n", 4, "has 1 item", "as it is"),
                refusal(
                        "two variants of one name",
                        HEAD + "compare: {variants: [{called: a}, {called: a}]}\n",
                        4,
                        "name of another",
                        "another name"),
                refusal(
                        "a comparison of nothing known",
                        HEAD + "compare: {between: wheels}\n",
                        4,
                        "is not what is compared",
                        "vehicles or load cases"),
                refusal(
                        "draws of a kind unknown",
                        HEAD + "uncertainty: {method: halton}\n",
                        4,
                        "is not a kind of draws",
                        "sobol"),
                refusal("one draw", HEAD + "uncertainty: {draws: 1}\n", 4, "1 is too few", "at least 2"),
                refusal(
                        "draws of what has no tolerance",
                        HEAD + "uncertainty: {of: \"" + SPEED + "\"}\n",
                        4,
                        "has no tolerance",
                        "take it off"),
                refusal(
                        "draws of what is not there",
                        HEAD + "uncertainty: {of: \"vehicles[0].vehicle.axles[9].track\"}\n",
                        4,
                        "axles",
                        "correct"),
                refusal("odd levels", HEAD + "sensitivity: {method: morris, levels: 3}\n", 4, "is odd", "write 4"),
                refusal(
                        "draws of a screening",
                        HEAD + "sensitivity: {method: morris, draws: 30}\n",
                        4,
                        "belongs to the method",
                        "trajectories"),
                refusal(
                        "a search for nothing",
                        HEAD + "search: {vary: {vary: \"" + SPEED + "\", from: 1 km/h, to: 2 km/h}}\n",
                        4,
                        "best",
                        "target"),
                refusal("a search of nothing", HEAD + "search: {best: least}\n", 4, "vary", "from: 4 km/h"),
                refusal(
                        "a search for what is no word",
                        HEAD + "search: {best: lowest, vary: {vary: \"" + SPEED + "\", from: 1 km/h, to: 2 km/h}}\n",
                        4,
                        "is not what is best",
                        "least or greatest"),
                refusal(
                        "a blank that nothing fills",
                        answered("Peak {peek}.", "peak: {change: peak, from: a, to: b}"),
                        6,
                        "is a blank that nothing fills",
                        "write peak"),
                refusal(
                        "what fills no blank",
                        answered("Peak.", "peak: {change: peak, from: a, to: b}"),
                        7,
                        "fills no blank",
                        "{peak}"),
                refusal(
                        "a blank of what is not asked",
                        answered("{x}", "x: {change: a_w, from: a, to: b}"),
                        7,
                        "is not among the answers",
                        "peak"),
                refusal(
                        "a blank of what is not compared",
                        answered("{x}", "x: {change: peak, from: a, to: c}"),
                        7,
                        "is not one of what is compared",
                        "a or b"),
                refusal(
                        "a blank on no ride test",
                        answered("{x}", "x: {change: peak, from: a, to: b, on: setts}"),
                        7,
                        "is no ride test",
                        "remove 'on'"),
                refusal(
                        "a blank on several ride tests",
                        answered("{x}", "x: {change: peak, from: a, to: b}").replace("plank.yaml", "two.yaml"),
                        7,
                        "leaves 2 ride tests",
                        "10 km/h or 20 km/h"),
                refusal(
                        "the best of what has no axis",
                        answered("{x}", "x: {best: peak}"),
                        7,
                        "needs a value that varies",
                        "order"),
                refusal(
                        "a blank filled in two ways",
                        answered("{x}", "x: {best: peak, order: peak}"),
                        7,
                        "given beside",
                        "remove"),
                refusal(
                        "sentences of a sensitivity",
                        HEAD + "answer: {sentences: [Good.]}\nsensitivity: {method: morris}\n",
                        4,
                        "cannot be made from this kind of study",
                        "remove 'answer'"));
    }

    private static Arguments refusal(String what, String text, int line, String fault, String remedy) {
        return Arguments.of(what, text, line, fault, remedy);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refused")
    void isRefusedWithItsPlaceAndARemedy(String what, String text, int line, String fault, String remedy) {
        assertThatThrownBy(() -> study(text))
                .isInstanceOfSatisfying(
                        InputException.class,
                        e -> assertThat(e.problems()).anySatisfy(problem -> {
                            assertThat(problem.line()).isEqualTo(line);
                            assertThat(problem.render()).contains(fault).containsIgnoringCase(remedy);
                        }));
    }

    @Test
    void blanksMeanQuestionsThingsLevelsAndRideTests() {
        Answer answer = study(
                        HEAD
                                + "uncertainty: {draws: 4, along: {vary: \"" + SPEED
                                + "\", from: 4 km/h, to: 16 km/h, steps: 4}}\n"
                                + "answer:\n  sentences: [\"{up} and {where}.\"]\n  blanks:\n"
                                + "    up: {change: peak, from: 4 km/h, to: 12.0 km/h, on: plank}\n    where: {first: peak, above: 3}\n")
                .answer()
                .orElseThrow();

        assertThat(answer.blanks())
                .containsEntry("up", new Telling.Change(0, 0, 2, false, List.of("plank")))
                .containsEntry("where", new Telling.First(0, true, 3, List.of()));
    }

    @Test
    void valuesBetweenTwoEndsAreDrawnBesideTolerancesAndWholeOnesAreWhole() throws IOException {
        Files.writeString(
                folder.resolve("plank.yaml"),
                SCENARIO.replace("duration", "  surfaces: [{spectrum: {class: C, seed: 3}}]\nduration"));
        Study study = study(HEAD
                + "compare:\n  draws: 4\n  ranges:\n    - {vary: \"road.surfaces[0].spectrum.seed\", from: 1, to: 90}\n"
                + "    - {vary: \"" + SPEED
                + "\", from: 8 km/h, to: 12 km/h}\n  variants: [{called: a}, {called: b}]\n");

        for (long run = 2; run < study.schedule().size(); run += 2) {
            Trial first = study.schedule().trial(run);
            Trial second = study.schedule().trial(run + 1);
            assertThat(first.texts().get("road.surfaces[0].spectrum.seed")).matches("\\d{1,2}");
            assertThat(first.texts()).containsKey(SPEED).isEqualTo(second.texts());
            assertThat(new StudyBench(study).ride(first).hasFailed()).isFalse();
        }
    }

    @Test
    void anEmptyTextTakesAKeyAway() {
        Study study = study(HEAD + "compare: {variants: [{called: a}, {called: b, with: "
                + "{\"vehicles[0].vehicle.axles[0].dampers\": \"\"}}]}\n");

        assertThat(study.variants()
                        .get(1)
                        .scenario()
                        .with(study.variants().get(1).texts())
                        .entrants()
                        .get(0)
                        .vehicle()
                        .axles()
                        .get(0)
                        .dampers())
                .isEmpty();
    }

    @Test
    void faultsOfTheBaseAreToldAtTheirPlaceInIt() throws IOException {
        Files.writeString(folder.resolve("plank.yaml"), SCENARIO.replace("30 mm", "30 kg"));

        assertThatThrownBy(() -> study(HEAD + "sweep: []\n"))
                .isInstanceOfSatisfying(
                        InputException.class,
                        e -> assertThat(e.problems())
                                .anySatisfy(p -> assertThat(p.file()).endsWith("plank.yaml")));
    }

    @Test
    void stepsRunFromEndToEndInTheAuthorsUnit() {
        Study study = study(sweep("from: 4 km/h\nto: 16 km/h\nsteps: 4\n"));
        Schedule schedule = study.schedule();

        assertThat(schedule.size()).isEqualTo(5);
        assertThat(schedule.trial(0).texts()).isEmpty();
        assertThat(schedule.trial(2).texts()).containsEntry(SPEED, "8.0 km/h");
        assertThat(schedule.trial(4).texts()).containsEntry(SPEED, "16.0 km/h");
        assertThat(schedule.heads().get(0)).endsWith("(km/h)");
        assertThat(study.asWritten(
                        ((Method.Sweep) study.method()).swept().get(0).factor()))
                .hasValueCloseTo(10.0, within(1e-12));
    }

    @Test
    void stepsOfEqualRatio() {
        Study study = study(sweep("from: 1 km/h\nto: 100 km/h\nsteps: 3\nspacing: logarithmic\n"));

        assertThat(((Method.Sweep) study.method()).swept().get(0).coordinates()).containsExactly(1.0, 10.0, 100.0);
    }

    @Test
    void everyCombinationOfTwoValues() {
        Study study = study(HEAD + "sweep:\n  - {vary: \"" + SPEED + "\", values: [5 km/h, 9 km/h]}\n" + "  - {vary: \""
                + RATE + "\", from: × 0.5, to: × 2, steps: 3}\n");
        Schedule schedule = study.schedule();

        assertThat(schedule.size()).isEqualTo(7);
        assertThat(schedule.trial(4).texts()).containsEntry(SPEED, "9 km/h").containsEntry(RATE, "× 0.5");
    }

    @Test
    void drawsAreTakenOfEveryToleranceOfScenarioAndVehicle() {
        Study study = study(HEAD + "uncertainty: {draws: 4}\n");

        assertThat(study.schedule().heads())
                .containsExactlyInAnyOrder(
                        "road.obstacles[0].plank.height (m)",
                        "vehicles[0].vehicle.body.mass (kg)",
                        "vehicles[0].vehicle.axles[0].wheels.contact rate (N/m)",
                        "vehicles[0].vehicle.axles[0].springs[0].rate (N/m)");
    }

    @Test
    void aStarChoosesTheToleranceOfEveryAxle() {
        Study study = study(
                HEAD
                        + "sensitivity: {method: sobol indices, draws: 8, of: \"vehicles[0].vehicle.axles[*].springs[*].rate\"}\n");

        assertThat(((Method.Indices) study.method()).factors())
                .extracting(Factor::name)
                .containsExactly("coil, rate");
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

    @Test
    void aRunThatCannotBeRiddenIsARowWithItsReason() {
        Study study = study(sweep("from: 0 km/h\nto: 10 km/h\nsteps: 2\n"));
        Outcome outcome = new StudyBench(study).ride(study.schedule().trial(1));

        assertThat(outcome.tests()).isEmpty();
        assertThat(outcome.failure()).contains("speeds[0]");
        assertThat(new StudyBench(study).ride(study.schedule().trial(2)).answer(0, 0))
                .isPositive();
    }

    @Test
    void loadCasesSideBySideShareTheirDraws() {
        Study study = study((HEAD + "compare: {between: load cases, draws: 16}\n").replace("plank.yaml", "both.yaml"));
        CompareFindings findings = (CompareFindings) ridden(study);

        assertThat(findings.things()).containsExactly("empty", "laden");
        assertThat(findings.rows()).hasSize(1);
        int best = findings.best(0, 0);
        int other = 1 - best;
        double own = findings.spread(other, 0, 0).quantile(0.95)
                - findings.spread(other, 0, 0).quantile(0.05);
        double difference = findings.difference(other, 0, 0).quantile(0.95)
                - findings.difference(other, 0, 0).quantile(0.05);
        assertThat(difference).as("what is common cancels").isLessThan(own);
    }

    @BeforeEach
    void writeBoth() throws IOException {
        Files.writeString(
                folder.resolve("both.yaml"), SCENARIO.replace("load cases: [empty]", "load cases: [empty, laden]"));
    }

    @Test
    void variantsKeepWhatMakesThemThroughEveryDraw() {
        Study study = study(HEAD + "compare:\n  variants:\n    - called: soft\n      with:\n        \""
                + RATE.replace("wheel", "0").replace("coil", "0")
                + "\": 15 kN/m\n    - called: as it is\n  draws: 4\n");
        Schedule schedule = study.schedule();

        assertThat(schedule.size()).isEqualTo(10);
        assertThat(schedule.trial(4).texts().get(RATE.replace("wheel", "0").replace("coil", "0")))
                .isEqualTo("15 kN/m");
        assertThat(schedule.trial(4).texts().get("vehicles[0].vehicle.body.mass"))
                .isEqualTo(schedule.trial(5).texts().get("vehicles[0].vehicle.body.mass"));
    }

    @Test
    void anotherVehicleFileMakesOtherRunsButAnotherCommentInTheStudyDoesNot() throws IOException {
        String text = sweep("from: 4 km/h\nto: 16 km/h\n");
        String before = study(text).fingerprint();
        assertThat(study("# a comment\n" + text).fingerprint()).isEqualTo(before);

        Files.writeString(folder.resolve("quarter.yaml"), QUARTER.replace("40 kg", "41 kg"));
        assertThat(study(text).fingerprint()).isNotEqualTo(before);
    }

    @Test
    void everyMeasureHasANumberOnAVehicleThatHasEverything() {
        String all = String.join(", ", RideMeasure.words());
        Path dray = Path.of("../scenarios/gate.yaml").toAbsolutePath().normalize();
        Study study = study("study: T\nbase: " + dray + "\nanswers: [" + all
                + "]\ncompare: {variants: [{called: as it is}, {called: the same}]}\n");
        Outcome outcome = new StudyBench(study).ride(study.schedule().trial(0));

        for (int q = 0; q < study.questions().size(); q++) {
            if (study.questions().get(q).band().filter(b -> b.nominal() < 10).isPresent()) {
                continue; // not resolved in so short a ride
            }
            assertThat(outcome.answer(0, q)).as(study.questions().get(q).name()).isFinite();
        }
        assertThat(List.of(outcome.tests().get(0).labels().get(0))).containsExactly("Mineral-water dray");
    }
}
