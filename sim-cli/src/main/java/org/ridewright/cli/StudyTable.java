package org.ridewright.cli;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.report.StudySummary;
import org.ridewright.study.Findings;
import org.ridewright.study.SearchRun;
import org.ridewright.study.Study;

/** What a study found, at the terminal. */
final class StudyTable {
    /** Rows that a terminal shows without scrolling. */
    private static final int MOST = 30;

    private StudyTable() {}

    static List<String> lines(Findings findings) {
        List<String> answer = StudySummary.answer(findings);
        List<String> lines = lines(StudySummary.of(findings), answer.isEmpty());
        if (!answer.isEmpty()) {
            // below the numbers, where a terminal ends
            lines.addAll(answer);
        }
        if (findings.failed() > 0) {
            lines.add("");
            lines.add(findings.failed() + " of " + findings.runs()
                    + " runs could not be ridden in full; runs.csv says why.");
        }
        return lines;
    }

    static List<String> lines(Study study, SearchRun.Result result) {
        List<String> lines = lines(StudySummary.of(study, result), true);
        List<String> answer = StudySummary.answer(study, result);
        if (!answer.isEmpty()) {
            lines.add("");
            lines.addAll(answer);
        }
        return lines;
    }

    /** @param told whether the sentences that the program makes by itself stand below the table */
    private static List<String> lines(StudySummary summary, boolean told) {
        TextTable table = new TextTable(summary.words());
        table.row(summary.heads());
        summary.rows().stream().limit(MOST).forEach(table::row);
        List<String> lines = new ArrayList<>(table.lines());
        if (summary.rows().size() > MOST) {
            lines.add("  … and " + (summary.rows().size() - MOST) + " more rows in the report");
        }
        lines.add("");
        if (told) {
            summary.sentences().stream().limit(8).forEach(lines::add);
        }
        return lines;
    }
}
