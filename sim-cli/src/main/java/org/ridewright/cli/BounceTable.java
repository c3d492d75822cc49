package org.ridewright.cli;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.bounce.BounceKind;
import org.ridewright.bounce.BounceRemarks;
import org.ridewright.bounce.BounceResult;
import org.ridewright.bounce.Count;
import org.ridewright.bounce.LoadCaseBounces;
import org.ridewright.modal.Condition;

/** What bounce tests print: one line for each load case and test. */
final class BounceTable {
    private static final List<String> HEADS =
            List.of("", "", "moved", "force", "cycles", "time", "ride", "first", "last", "sliding", "locked");
    private static final List<String> UNITS =
            List.of("load case", "test", "mm", "N", "", "s", "Hz", "Hz", "Hz", "Hz", "Hz");
    private static final int WORD_COLUMNS = 2;
    private static final List<String> NOTES = List.of(
            "ride: as the bounce test counts it; first, last: of its first and last cycle.",
            "sliding, locked: natural frequency with springs that slide freely, and with springs that friction holds;");
    private static final double MILLI = 1000;

    private BounceTable() {}

    static List<String> lines(List<LoadCaseBounces> all, boolean braked) {
        TextTable table = new TextTable(WORD_COLUMNS);
        table.row(HEADS);
        table.row(UNITS);
        for (LoadCaseBounces bounces : all) {
            bounces.results().forEach(result -> table.row(row(bounces, result)));
        }
        List<String> lines = new ArrayList<>(table.lines());
        lines.add("");
        lines.addAll(NOTES);
        if (all.get(0).model().coordinates().pitch() >= 0) {
            lines.add(
                    braked
                            ? "wheels held by the brake: modes, with wheels rolling freely, has others of pitch and bounce."
                            : "wheels rolling freely: a bounce test in the yard is made with the wheels held by the brake.");
        }
        for (LoadCaseBounces bounces : all) {
            List<String> remarks = BounceRemarks.of(bounces);
            if (!remarks.isEmpty()) {
                lines.add("");
                lines.add(bounces.model().loadCase().name() + ":");
                remarks.forEach(remark -> lines.add("  " + remark + "."));
            }
        }
        lines.add("");
        return lines;
    }

    private static List<String> row(LoadCaseBounces bounces, BounceResult result) {
        Count count = result.count();
        BounceKind kind = result.test().kind();
        return List.of(
                bounces.model().loadCase().name(),
                kind.word(),
                Wording.number(MILLI * result.depth(), 1),
                Wording.number(result.force(), 0),
                Wording.number(count.cycles(), 1),
                Wording.number(count.isHeld() ? Double.NaN : count.duration(), 2),
                Wording.number(count.frequency().orElse(Double.NaN), 2),
                Wording.number(count.firstFrequency().orElse(Double.NaN), 2),
                Wording.number(count.lastFrequency().orElse(Double.NaN), 2),
                Wording.number(bounces.partner(kind, Condition.SLIDING).frequency(), 2),
                Wording.number(bounces.partner(kind, Condition.LOCKED).frequency(), 2));
    }
}
