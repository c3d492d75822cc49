package org.ridewright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.ridewright.narrowing.Narrowing;
import org.ridewright.narrowing.UncertainValue;
import org.ridewright.quantity.Measures;
import org.ridewright.vehicle.Vehicle;

/** What measuring would narrow the answer most, in words and per cent. */
final class PriorityTable {
    /** Values that were measured are told from this share of the variance on. */
    private static final double WORTH_TELLING = 0.005;

    private PriorityTable() {}

    /** Rows of all guesses, in the order of the answer, numbered from 1. */
    static List<Map<String, Object>> guesses(Vehicle vehicle, Narrowing narrowing) {
        return rows(vehicle, narrowing, true);
    }

    /** Rows of values that were measured and still matter, numbered from 1. */
    static List<Map<String, Object>> stated(Vehicle vehicle, Narrowing narrowing) {
        return rows(vehicle, narrowing, false);
    }

    private static List<Map<String, Object>> rows(Vehicle vehicle, Narrowing narrowing, boolean guesses) {
        List<Map<String, Object>> rows = new ArrayList<>();
        int rank = 0;
        for (Narrowing.Row row : narrowing.rows()) {
            boolean told = row.value().isGuess() || row.share() >= WORTH_TELLING;
            if (row.value().isGuess() == guesses && told) {
                rank++;
                rows.add(Map.of(
                        "rank", Integer.toString(rank),
                        "what", ValueNames.plain(vehicle, row.value().path()),
                        "key", ValueNames.named(vehicle, row.value().path()),
                        "known", Measures.format(row.value().measure()),
                        "source", source(row.value()),
                        "usual", row.value().usualTolerance(),
                        "shares",
                                row.shares().stream()
                                        .map(PriorityTable::percent)
                                        .toList(),
                        "share", percent(row.share()),
                        "oneSided", row.refused().isPresent()));
            }
        }
        return rows;
    }

    private static String source(UncertainValue value) {
        return switch (value.knowledge()) {
            case LEFT_OUT -> "not in the file: " + value.measure().written();
            case ESTIMATED -> "estimated";
            case STATED -> value.measure().provenance().word();
        };
    }

    private static String percent(double share) {
        double percent = 100 * share;
        if (percent > 0 && percent < 0.5) {
            return "< 1";
        }
        return String.format(Locale.ROOT, "%.0f", percent);
    }
}
