package org.ridewright.cli;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.modal.Condition;
import org.ridewright.modal.ModalAnalysis;
import org.ridewright.report.ModesTables;

/** What a search for modes prints: under each load and condition of the springs, one line for each mode. */
final class ModesTable {
    private static final List<String> HEADS = List.of("", "natural", "damped", "damping", "centre");
    private static final List<String> UNITS = List.of("mode", "Hz", "Hz", "%", "m");
    private static final List<String> NOTES = List.of(
            "natural: without dampers and friction losses; damped: with dampers and tyres. centre: where along the body, behind the",
            "front axle, a bounce or pitch leaves it still. sliding: friction left out; locked: friction that never lets go. What",
            "a bounce test counts usually lies between the two. The report has shapes, shares of energy and what reaches the seats.");
    private static final String ROLLING =
            "wheels rolling freely: a bounce test holds them by the brake, which gives pitch and bounce other frequencies (bounce).";

    private ModesTable() {}

    static List<String> lines(List<ModalAnalysis> all) {
        TextTable table = new TextTable(1);
        table.row(HEADS);
        table.row(UNITS);
        for (ModalAnalysis each : all) {
            for (Condition condition : Condition.values()) {
                if (condition == Condition.SLIDING || each.rubs()) {
                    table.heading(each.model().vehicle().name() + ", "
                            + each.model().loadCase().name()
                            + (each.rubs() ? ", springs " + condition.word() : ", no dry friction")
                            + (each.rolls() ? ", wheels rolling freely" : ""));
                    for (List<String> row : ModesTables.rows(each, condition)) {
                        table.row(List.of(row.get(1), row.get(2), row.get(3), row.get(4), row.get(5)));
                    }
                }
            }
        }
        List<String> lines = new ArrayList<>(table.lines());
        lines.add("");
        lines.addAll(NOTES);
        if (all.stream().anyMatch(ModalAnalysis::rolls)) {
            lines.add(ROLLING);
        }
        lines.add("");
        return lines;
    }
}
