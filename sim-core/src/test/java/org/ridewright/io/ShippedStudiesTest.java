package org.ridewright.io;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ridewright.study.Answer;
import org.ridewright.study.Study;

/** The studies that come with the program are in order, on its page, and answer in two sentences. */
class ShippedStudiesTest {
    private static final Path STUDIES = Path.of("..", "scenarios", "studies");
    private static final String PAGE = SampleFiles.text(Path.of("..", "docs", "studies.md"));

    static List<Path> studies() throws IOException {
        try (Stream<Path> files = Files.list(STUDIES)) {
            return files.filter(f -> SampleFiles.text(f).startsWith("study:"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("studies")
    void eachIsInOrderAndOnThePage(Path file) {
        Study study = StudyFile.read(file, "test");

        assertThat(study.schedule().size()).isPositive();
        assertThat(PAGE).contains("`" + file.getFileName().toString().replace(".yaml", "") + "`");
    }

    @Test
    void tenOfThemAnswerAQuestionInTwoSentencesFilledFromTheirNumbers() throws IOException {
        List<Study> answering = studies().stream()
                .map(f -> StudyFile.read(f, "test"))
                .filter(s -> s.answer().isPresent())
                .toList();

        assertThat(answering).hasSize(10).allSatisfy(study -> {
            Answer answer = study.answer().orElseThrow();
            assertThat(study.name()).endsWith("?");
            assertThat(answer.sentences())
                    .hasSize(2)
                    .allSatisfy(s -> assertThat(Answer.blanks(s)).isNotEmpty());
            Set<String> used = answer.sentences().stream()
                    .flatMap(s -> Answer.blanks(s).stream())
                    .collect(Collectors.toCollection(TreeSet::new));
            assertThat(used).containsExactlyInAnyOrderElementsOf(answer.blanks().keySet());
        });
    }
}
