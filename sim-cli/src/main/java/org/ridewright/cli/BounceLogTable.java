package org.ridewright.cli;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.report.BounceLogPage;
import org.ridewright.report.BounceLogResult;
import org.ridewright.report.BounceLogResult.Motion;
import org.ridewright.report.BounceLogWords;

/** What the measuring of a log's bounce tests prints: one line a release. */
final class BounceLogTable {
    private BounceLogTable() {}

    static List<String> lines(BounceLogResult result) {
        List<String> lines = new ArrayList<>();
        lines.add(result.name() + ": " + result.direction().word() + ", " + result.extent());
        for (Motion motion : result.motions()) {
            lines.add("");
            if (result.motions().size() > 1) {
                lines.add(motion.name());
            }
            TextTable table = new TextTable(1);
            table.row(List.of("", "at", "", "in", "ride frequency", "", "damping", "friction", ""));
            table.row(List.of("release", "s", "cycles", "s", "Hz", "decay", "ratio", "% of weight", "F/k"));
            BounceLogWords.rows(motion).forEach(table::row);
            lines.addAll(table.lines());
        }
        lines.add("");
        result.answers().forEach(answer -> ShortRemarks.wrap(answer, lines));
        List<String> remarks = BounceLogPage.remarks(result);
        if (!remarks.isEmpty()) {
            lines.add("");
            lines.add("To keep in mind:");
            remarks.forEach(remark -> ShortRemarks.wrap(ShortRemarks.firstSentence(remark), lines));
        }
        lines.add("");
        return lines;
    }
}
