package org.ridewright.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A ride test is known by its labels, not by its place. */
class TestMatchTest {
    private static final List<String> EMPTY = List.of("dray", "empty", "lane", "8 km/h");
    private static final List<String> LADEN = List.of("dray", "laden", "lane", "8 km/h");

    private static Outcome ridden(List<List<String>> labels) {
        return new Outcome(
                labels.stream()
                        .map(l -> new Outcome.Line(l, List.of((double) l.hashCode()), ""))
                        .toList(),
                "");
    }

    @Test
    void testsInAnotherOrderAreFoundAgain() {
        TestMatch match = new TestMatch(List.of(EMPTY, LADEN), Set.of());

        assertThat(match.arranged(ridden(List.of(LADEN, EMPTY)))).isEqualTo(ridden(List.of(EMPTY, LADEN)));
    }

    @Test
    void aLabelThatVariesTellsNothing() {
        List<String> faster = List.of("dray", "empty", "lane", "12 km/h");
        TestMatch match = new TestMatch(List.of(EMPTY), Set.of(TestLabels.SPEED));

        assertThat(match.arranged(ridden(List.of(faster))).answer(0, 0)).isEqualTo(faster.hashCode());
    }

    @Test
    void anotherTestThanAsWrittenIsAFailureThatSaysSo() {
        Outcome outcome = new TestMatch(List.of(EMPTY), Set.of(TestLabels.SPEED)).arranged(ridden(List.of(LADEN)));

        assertThat(outcome.tests()).isEmpty();
        assertThat(outcome.failure()).contains("laden", "in place of", "empty");
    }

    @Test
    void aMissingTestDoesNotMoveTheOthersUp() {
        Outcome outcome =
                new TestMatch(List.of(EMPTY, LADEN), Set.of(TestLabels.LOAD_CASE)).arranged(ridden(List.of(LADEN)));

        assertThat(outcome.failure()).contains("2").contains("1");
    }

    @Test
    void pathsSayWhichLabelsFollowThem() {
        assertThat(TestLabels.following(List.of("vehicles[*].speeds[0]"))).containsExactly(TestLabels.SPEED);
        assertThat(TestLabels.following(List.of("vehicles[0].load cases"))).containsExactly(TestLabels.LOAD_CASE);
        assertThat(TestLabels.following(List.of("vehicles[0].file")))
                .containsExactlyInAnyOrder(TestLabels.VEHICLE, TestLabels.LOAD_CASE);
        assertThat(TestLabels.following(List.of("road"))).containsExactly(TestLabels.ROAD);
        assertThat(TestLabels.following(List.of("vehicles[0].vehicle.axles[0].springs[0].rate", "road.obstacles[0]")))
                .isEmpty();
    }
}
