package org.ridewright.cli;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.friction.FrictionLab;
import org.ridewright.report.FrictionWords;
import org.ridewright.report.Section;

/** What the friction laboratory prints: the bands of the best, and the answer. */
final class FrictionTable {
    private FrictionTable() {}

    static List<String> lines(FrictionLab lab) {
        TextTable table = new TextTable(3);
        table.row(FrictionWords.BAND_HEADS);
        FrictionWords.bandRows(lab).forEach(table::row);
        List<String> lines = new ArrayList<>(table.lines());
        lines.add("");
        TextTable swings = new TextTable(1);
        swings.row(FrictionWords.ringDownHeads());
        FrictionWords.ringDownRows(lab).forEach(swings::row);
        for (Section section : FrictionWords.sections(lab)) {
            if (!section.paragraphs().isEmpty()) {
                lines.add(section.heading());
                lines.addAll(section.paragraphs());
                lines.add("");
            }
        }
        if (!lab.ringDowns().isEmpty()) {
            lines.addAll(swings.lines());
            lines.add(FrictionWords.ringDownNotes(lab));
            lines.add("");
        }
        lines.addAll(FrictionWords.summary(lab));
        lines.add("");
        return lines;
    }
}
