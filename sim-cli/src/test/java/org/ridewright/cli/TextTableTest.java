package org.ridewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class TextTableTest {
    @Test
    void wordsStandLeftNumbersRightAndHeadingsWidenNoColumn() {
        TextTable table = new TextTable(1);
        table.row(List.of("road", "m/s²"));
        table.heading("a vehicle with a long name");
        table.row(List.of("ford", "1.25"));
        table.row(List.of("gateway", "12.50"));
        assertThat(table.lines())
                .containsExactly(
                        "  road      m/s²", "", "a vehicle with a long name", "  ford      1.25", "  gateway  12.50");
    }

    @Test
    void aNumberThatRoundsToNothingHasNoSign() {
        assertThat(Wording.number(-1e-9, 2)).isEqualTo("0.00");
        assertThat(Wording.number(-0.126, 2)).isEqualTo("-0.13");
        assertThat(Wording.number(Double.NaN, 2)).isEqualTo("–");
    }

    @Test
    void aRemarkIsCutAfterItsFirstSentenceNotInsideANumber() {
        assertThat(ShortRemarks.firstSentence("At 1.5 m it struck. With 2.0 m it would not."))
                .isEqualTo("At 1.5 m it struck.");
    }

    @Test
    void fileNamesHoldNothingThatAFileSystemRefuses() {
        assertThat(RunFiles.plain("A/B: \"dray\"?..")).isEqualTo("a-b-dray");
        assertThat(RunFiles.plain("///")).isEqualTo("unnamed");
        assertThat(RunFiles.plain("x".repeat(500))).hasSize(40);
    }
}
