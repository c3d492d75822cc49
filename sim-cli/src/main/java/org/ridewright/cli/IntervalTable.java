package org.ridewright.cli;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.report.Headline;
import org.ridewright.uncertainty.UncertainRides;

/** What a run with uncertainty prints besides: the first numbers of each ride test with their intervals. */
final class IntervalTable {
    private static final int WORD_COLUMNS = 2;

    private IntervalTable() {}

    static List<String> lines(UncertainRides.Outcome outcome) {
        TextTable table = new TextTable(WORD_COLUMNS);
        table.row(Headline.HEADS);
        Headline.rows(outcome.rides()).forEach(table::row);
        List<String> lines = new ArrayList<>();
        lines.add("In brackets the interval that holds nine tenths of the rides, with " + outcome.uncertainValues()
                + " values drawn within their tolerances"
                + (outcome.replaced() > 0
                        ? " (" + outcome.replaced() + " draws were replaced: no vehicle can be so)"
                        : "")
                + ":");
        lines.addAll(table.lines());
        lines.add("");
        return lines;
    }
}
