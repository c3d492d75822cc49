package org.ridewright.cli;

import java.util.List;
import java.util.stream.Stream;
import org.ridewright.fieldwork.Fact;
import org.ridewright.fieldwork.Finding;
import org.ridewright.fieldwork.Findings;
import org.ridewright.fieldwork.Measurements;
import org.ridewright.quantity.Measures;

/** Prints what the facts of a measurements file say directly. */
final class FindingsTable {
    private FindingsTable() {}

    /** The table with a heading for each fact, and a line of how many there are; remarks below. */
    static List<String> lines(Measurements measurements) {
        List<Finding> findings = Findings.of(measurements);
        TextTable table = new TextTable(2);
        Fact last = null;
        for (Finding finding : findings) {
            if (finding.fact() != last) {
                last = finding.fact();
                table.heading(last.label() + (last.keepBack() ? " (kept back)" : ""));
            }
            table.row(List.of(finding.what(), Measures.format(finding.value())));
        }
        List<String> remarks = findings.stream()
                .filter(finding -> !finding.remark().isEmpty())
                .map(finding -> "  " + finding.fact().label() + ": " + finding.what() + ": " + finding.remark())
                .distinct()
                .toList();
        long kept = measurements.facts().stream().filter(Fact::keepBack).count();
        String count = counted(measurements.facts().size()) + (kept > 0 ? ", " + kept + " kept back" : "");
        List<String> opening = findings.isEmpty()
                ? List.of(count)
                : List.of(count + ". Directly, each ± one standard uncertainty, they say:");
        return Stream.of(
                        opening,
                        table.lines(),
                        remarks.isEmpty() ? List.<String>of() : List.of("", "Bear in mind:"),
                        remarks)
                .flatMap(List::stream)
                .toList();
    }

    private static String counted(int facts) {
        return facts == 1 ? "1 fact" : facts + " facts";
    }
}
