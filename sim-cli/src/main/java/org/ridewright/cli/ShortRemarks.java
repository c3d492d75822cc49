package org.ridewright.cli;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.ride.RideResult;

/** First sentences of the remarks on ride tests, in lines of a terminal's width. */
final class ShortRemarks {
    private static final int WIDTH = 116;

    private ShortRemarks() {}

    static List<String> lines(List<RideResult> rides) {
        List<String> lines = new ArrayList<>();
        for (RideResult ride : rides) {
            if (!ride.remarks().isEmpty()) {
                lines.add("  " + Wording.test(ride));
            }
            for (String remark : ride.remarks()) {
                wrap(firstSentence(remark), lines);
            }
        }
        return lines;
    }

    /** Up to the first full stop that a capital follows. */
    static String firstSentence(String text) {
        return text.split("(?<=\\.)\\s+(?=\\p{Lu})", 2)[0];
    }

    static void wrap(String text, List<String> lines) {
        StringBuilder line = new StringBuilder("    -");
        for (String word : text.split(" ", -1)) {
            if (line.length() + 1 + word.length() > WIDTH) {
                lines.add(line.toString());
                line = new StringBuilder("     ");
            }
            line.append(' ').append(word);
        }
        lines.add(line.toString());
    }
}
