package org.ridewright.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Provenance;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.study.Answer;
import org.ridewright.study.Asked;
import org.ridewright.study.Correlated;
import org.ridewright.study.Limit;
import org.ridewright.study.Method;
import org.ridewright.study.Study;
import org.ridewright.study.Telling;

/** What study files say of a search, and of values that are correlated. */
class SearchFileTest {
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
            load cases: [{name: empty, aboard: []}]
            """;

    private static final String SCENARIO = """
            scenario: Two planks
            vehicles: [{file: quarter.yaml, speeds: [10 km/h, 20 km/h]}]
            roads:
              - name: low
                obstacles: [{plank: {at: 1 m, height: 30 mm, length: 150 mm}}]
              - name: high
                obstacles: [{plank: {at: 1 m, height: 60 mm, length: 150 mm}}]
            duration: 3 s
            """;

    private static final String HEAD = "study: Test\nbase: planks.yaml\nanswers: [peak, swing, cycles to rest]\n";
    private static final String VARY =
            "vary: {vary: \"vehicles[0].vehicle.axles[0].springs[0].rate\", called: rate, from: × 0.5, to: × 2}";

    @TempDir
    Path folder;

    @BeforeEach
    void writeFiles() throws IOException {
        Files.writeString(folder.resolve("quarter.yaml"), QUARTER);
        Files.writeString(folder.resolve("planks.yaml"), SCENARIO);
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

    private Method.Search search(String keys) {
        return (Method.Search)
                study(HEAD + "search: {" + VARY + ", " + keys + "}\n").method();
    }

    @Test
    void unlessStatedTheFirstAnswerIsSoughtAsTheWorstOfAllRideTestsWithoutLimits() {
        Method.Search search = search("best: least");

        assertThat(search.sought().asked()).isEqualTo(Asked.everywhere(0));
        assertThat(search.limits()).isEmpty();
        assertThat(search.looks()).isEqualTo(9);
        assertThat(search.runs()).isEqualTo(40);
    }

    @Test
    void anotherAnswerIsSoughtInTheRideTestsThatAreNamed() {
        Method.Search search = search("answer: swing, on: high, target: 25 mm");

        assertThat(search.sought().asked()).isEqualTo(new Asked(1, List.of(2, 3), List.of("high")));
        assertThat(search.sought().target()).contains(25.0);
    }

    @Test
    void limitsHaveAnAnswerASideAndABoundInItsUnitOrAnother() {
        Method.Search search = search("best: least, provided: [{answer: swing, at most: 40 mm, on: [high, 20 km/h]},"
                + " {answer: cycles to rest, below: 5}, {answer: swing, above: 0.01}]");

        assertThat(search.limits())
                .containsExactly(
                        new Limit(new Asked(1, List.of(3), List.of("high", "20 km/h")), Limit.Side.AT_MOST, 40),
                        new Limit(Asked.everywhere(2), Limit.Side.BELOW, 5),
                        new Limit(Asked.everywhere(1), Limit.Side.ABOVE, 0.01));
        assertThat(search.runs()).isEqualTo(80);
    }

    @Test
    void sentencesOfASearchSayWhatWasFoundWhatBindsAndWhatChanged() {
        Answer answer = study(HEAD + "search: {" + VARY + ", best: least}\nanswer:\n  sentences: [\"{r} {b} {c}\"]\n"
                        + "  blanks:\n    r: {found: rate}\n    b: {binding: limits}\n"
                        + "    c: {change: peak, from: as written, to: found, on: [low, 10 km/h]}\n")
                .answer()
                .orElseThrow();

        assertThat(answer.blanks())
                .containsEntry("r", new Telling.Found(0))
                .containsEntry("b", new Telling.Binding())
                .containsEntry("c", new Telling.Change(0, 0, 1, false, List.of("low", "10 km/h")));
    }

    static Stream<Arguments> refused() {
        return Stream.of(
                refusal(
                        "a limit on what is not asked",
                        limit("answer: a_w, below: 5"),
                        "is not among the answers",
                        "peak"),
                refusal(
                        "a limit without an answer",
                        limit("below: 5"),
                        "provided[0].answer: is missing",
                        "cycles to rest"),
                refusal("a limit without a bound", limit("answer: swing"), "is missing", "at most"),
                refusal(
                        "a limit with two bounds",
                        limit("answer: swing, below: 5, above: 3"),
                        "given beside",
                        "remove"),
                refusal("a bound of another kind", limit("answer: swing, below: 5 kg"), "5 kg", "length"),
                refusal("a limit on no road", limit("answer: swing, below: 5, on: middle"), "is no ride test", "low"),
                refusal(
                        "what is sought on no road",
                        HEAD + "search: {" + VARY + ", best: least, answer: peak, on: middle}\n",
                        "is no ride test",
                        "high"),
                refusal(
                        "what is sought and not asked",
                        HEAD + "search: {" + VARY + ", best: least, answer: peek}\n",
                        "is not among the answers",
                        "write peak"),
                refusal(
                        "a blank of a search in a sweep",
                        HEAD
                                + "answer: {sentences: [\"{x}\"], blanks: {x: {found: rate}}}\nsweep: {vary: \"vehicles[0].vehicle.axles[0].springs[0].rate\", values: [× 1, × 2]}\n",
                        "needs a search",
                        "value"),
                refusal(
                        "a blank of what the search does not vary",
                        HEAD + "answer: {sentences: [\"{x}\"], blanks: {x: {found: friction}}}\nsearch: {" + VARY
                                + ", best: least}\n",
                        "is not what the search varies",
                        "rate"));
    }

    private static String limit(String keys) {
        return HEAD + "search: {" + VARY + ", best: least, provided: [{" + keys + "}]}\n";
    }

    private static Arguments refusal(String what, String text, String fault, String remedy) {
        return Arguments.of(what, text, fault, remedy);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refused")
    void isRefusedWithARemedy(String what, String text, String fault, String remedy) {
        assertThatThrownBy(() -> study(text))
                .isInstanceOfSatisfying(
                        InputException.class,
                        e -> assertThat(e.problems())
                                .anySatisfy(problem -> assertThat(problem.render())
                                        .contains(fault)
                                        .contains(remedy)));
    }

    @Test
    void aSensitivityNamesTheValuesWhoseCorrelationItIgnores() throws IOException {
        Map<String, Measure> values = new LinkedHashMap<>();
        values.put("body.mass", new Measure(QuantityKind.MASS, 300, 10, Provenance.CALIBRATED, ""));
        values.put("axles[0].springs[0].rate", new Measure(QuantityKind.RATE, 20_000, 900, Provenance.CALIBRATED, ""));
        Path file = folder.resolve("quarter.yaml");
        Files.writeString(
                file, VehicleDocument.read(file).rewritten(values, new double[][] {{1, 0.8}, {0.8, 1}}, "a test"));

        Method.Indices indices = (Method.Indices)
                study(HEAD + "sensitivity: {method: sobol indices}\n").method();

        assertThat(indices.correlated()).singleElement().satisfies(pair -> {
            assertThat(pair.correlation()).isEqualTo(0.8);
            assertThat(List.of(pair.one(), pair.other()))
                    .anyMatch(name -> name.contains("mass"))
                    .anyMatch(name -> name.contains("rate"));
        });
        assertThat(Optional.of(indices.correlated().get(0)).map(Correlated::correlation))
                .contains(0.8);
    }
}
