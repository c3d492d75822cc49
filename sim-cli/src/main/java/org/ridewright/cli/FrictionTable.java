package org.ridewright.cli;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.friction.FrictionLab;
import org.ridewright.report.FrictionWords;

/** What the friction laboratory prints: the bands of the best, and the answer. */
final class FrictionTable {
    private FrictionTable() {}

    static List<String> lines(FrictionLab lab) {
        TextTable table = new TextTable(3);
        table.row(FrictionWords.BAND_HEADS);
        FrictionWords.bandRows(lab).forEach(table::row);
        List<String> lines = new ArrayList<>(table.lines());
        lines.add("");
        lines.addAll(FrictionWords.answers(lab));
        lines.add("");
        return lines;
    }
}
