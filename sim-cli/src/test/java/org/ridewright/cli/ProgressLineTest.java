package org.ridewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProgressLineTest {
    private final StringWriter out = new StringWriter();
    private long now;
    private final ProgressLine line = new ProgressLine(new PrintWriter(out), () -> now);

    @Test
    void theTimeLeftFollowsFromThePaceOfThisSessionAlone() {
        line.at(50, 100);
        now = 10_000_000_000L;
        line.at(60, 100);

        assertThat(out.toString()).contains("60 of 100 runs, 41 s left");
    }

    @Test
    void theLineIsWipedInTheEnd() {
        line.at(1, 2);
        line.clear();

        assertThat(out.toString()).endsWith(" \r");
    }

    @Test
    void theLineIsDrawnAFewTimesASecondAndAtTheEnd() {
        for (int i = 0; i <= 1000; i++) {
            line.at(i, 1000);
            now += 1_000_000;
        }

        assertThat(out.toString().split("\r")).hasSizeBetween(5, 9);
        assertThat(out.toString()).contains("1000 of 1000 runs");
    }

    @ParameterizedTest
    @CsvSource({"12, 13 s", "59, 1 min", "61, 2 min", "3599, 1 h 0 min", "7300, 2 h 2 min"})
    void timesInWords(long seconds, String words) {
        assertThat(ProgressLine.words(Duration.ofSeconds(seconds))).isEqualTo(words);
    }
}
