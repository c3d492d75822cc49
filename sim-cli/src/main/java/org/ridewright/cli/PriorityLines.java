package org.ridewright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.ridewright.narrowing.Answer;
import org.ridewright.narrowing.Narrowing;
import org.ridewright.quantity.Measures;
import org.ridewright.sheet.ValueNames;
import org.ridewright.vehicle.Vehicle;

/** What to measure first, for the terminal. */
final class PriorityLines {
    private PriorityLines() {}

    /** @param most how many values are listed */
    static List<String> lines(Vehicle vehicle, Narrowing narrowing, Answer answer, int most) {
        List<String> lines = new ArrayList<>();
        lines.add(vehicle.name() + ". " + answer.asked());
        lines.add("");
        TextTable table = new TextTable(2);
        table.row(List.of("not yet measured, by what measuring it would take away", "as it is", "% of variance"));
        List<Narrowing.Row> guesses =
                narrowing.rows().stream().filter(row -> row.value().isGuess()).toList();
        guesses.stream()
                .limit(most)
                .forEach(row -> table.row(List.of(
                        ValueNames.named(vehicle, row.value().path()),
                        Measures.format(row.value().measure()),
                        Wording.number(100 * row.share(), 0))));
        lines.addAll(table.lines());
        if (guesses.size() > most) {
            lines.add("  and %d more: see the sheet".formatted(guesses.size() - most));
        }
        lines.add("");
        lines.add(ValueNames.figures(narrowing).stream().collect(Collectors.joining("; ", "", ".")));
        lines.add("");
        return lines;
    }
}
