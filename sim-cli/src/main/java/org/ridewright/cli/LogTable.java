package org.ridewright.cli;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.comfort.VibrationMetrics;
import org.ridewright.report.LogResult;

/** What the measuring of a log prints: one line for each direction. */
final class LogTable {
    private static final List<String> HEADS = List.of("", "", "a_w", "MTVV", "VDV", "peak", "crest", "peak");
    private static final List<String> UNITS =
            List.of("direction", "weighting", "m/s²", "m/s²", "m/s^1.75", "m/s²", "factor", "unweighted");
    private static final int WORD_COLUMNS = 2;

    private LogTable() {}

    static List<String> lines(LogResult result) {
        TextTable table = new TextTable(WORD_COLUMNS);
        table.row(HEADS);
        table.row(UNITS);
        for (LogResult.Direction direction : result.directions()) {
            VibrationMetrics m = direction.metrics();
            table.row(List.of(
                    direction.name(),
                    direction.weighting(),
                    Wording.number(m.rms(), 3),
                    Wording.number(m.mtvv(), 2),
                    Wording.number(m.vdv(), 2),
                    Wording.number(m.peak(), 2),
                    Wording.number(m.crestFactor(), 1),
                    Wording.number(m.unweightedPeak(), 2)));
        }
        List<String> lines = new ArrayList<>();
        lines.add(result.name() + ": " + result.place() + ", " + result.extent());
        lines.add("");
        lines.addAll(table.lines());
        lines.add("");
        result.answers().forEach(answer -> ShortRemarks.wrap(answer, lines));
        lines.add("");
        lines.add("To keep in mind:");
        result.remarks().forEach(remark -> ShortRemarks.wrap(ShortRemarks.firstSentence(remark), lines));
        lines.add("");
        return lines;
    }
}
