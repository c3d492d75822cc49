package org.ridewright.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class ValidationTest {
    private static final Path DOCUMENT = Path.of("..", "docs", "validation.md");

    @TestFactory
    Stream<DynamicContainer> everyNumberIsWithinToleranceOfItsSource() {
        return Validation.problems().stream()
                .map(problem -> DynamicContainer.dynamicContainer(
                        problem.title(), Validation.checks(problem).stream().map(ValidationTest::test)));
    }

    private static DynamicTest test(Check check) {
        return DynamicTest.dynamicTest(
                check.quantity() + ", " + check.source(),
                () -> assertThat(check.isMet())
                        .as(
                                "%s %s: expected %s, computed %s %s, difference %s, tolerance %s %s",
                                check.problem(),
                                check.quantity(),
                                check.expected(),
                                check.computed(),
                                check.unit(),
                                check.difference(),
                                check.tolerance(),
                                check.scale())
                        .isTrue());
    }

    @Test
    void everyProblemHasChecksAndEveryCheckADifferentName() {
        for (ReferenceProblem problem : Validation.problems()) {
            List<Check> checks = Validation.checks(problem);
            assertThat(checks).as(problem.title()).isNotEmpty();
            assertThat(checks.stream().map(check -> check.quantity() + check.source()))
                    .as(problem.title())
                    .doesNotHaveDuplicates();
        }
    }

    /** If this fails, write the page anew with the command that stands at its top. */
    @Test
    void theDocumentIsCurrent() throws IOException {
        List<String> committed = Files.readAllLines(DOCUMENT);
        List<Line> fresh = ValidationDocument.lines();
        List<String> stale = new ArrayList<>();
        for (int i = 0; i < Math.min(fresh.size(), committed.size()); i++) {
            if (!fresh.get(i).agreesWith(committed.get(i))) {
                stale.add(committed.get(i) + "\n  now " + fresh.get(i).text());
            }
        }
        assertThat(stale)
                .as("stale lines of docs/validation.md, to be written anew with the command at its top")
                .isEmpty();
        assertThat(committed).as("lines of docs/validation.md").hasSameSizeAs(fresh);
    }

    @Test
    void aNumberThatMovedIsStaleAndRoundOffIsNot() {
        Line line = new Line("| turn 2 | closed form | 32.50 | 32.51 |", 0, 0, 0.1, 0.1);
        assertThat(line.agreesWith("| turn 2 | closed form | 32.50 | 32.59 |")).isTrue();
        assertThat(line.agreesWith("| turn 2 | closed form | 32.50 | 32.62 |")).isFalse();
        assertThat(line.agreesWith("| turn 3 | closed form | 32.50 | 32.51 |")).isFalse();
        assertThat(line.agreesWith("| turn 2 | closed form | 32.50 |")).isFalse();
        assertThat(new Line("| a | < 1e-9 |", 0, 1e-8).agreesWith("| a | 2e-9 |"))
                .isTrue();
        assertThat(new Line("| a | < 1e-9 |", 0, 1e-8).agreesWith("| a | 2e-7 |"))
                .isFalse();
        assertThat(new Line("differs by +3.06 %", 0.02).agreesWith("differs by +3.07 %"))
                .isTrue();
        assertThat(new Line("differs by +3.06 %", 0.02).agreesWith("differs by +3.16 %"))
                .isFalse();
    }
}
