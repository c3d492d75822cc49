package org.ridewright.cli;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.report.RemarkGroup;
import org.ridewright.ride.RideResult;

/** First sentences of the remarks on ride tests, each said once, in lines of a terminal's width. */
final class ShortRemarks {
    private static final int WIDTH = 116;

    private ShortRemarks() {}

    static List<String> lines(List<RideResult> rides) {
        List<String> lines = new ArrayList<>();
        for (RemarkGroup group : RemarkGroup.of(rides, ShortRemarks::firstSentence)) {
            wrap(group.text(), lines);
            group.rides().forEach(concerned -> wrap(concerned, "      ", lines));
        }
        return lines;
    }

    /** Up to the first full stop that a capital follows. */
    static String firstSentence(String text) {
        return text.split("(?<=\\.)\\s+(?=\\p{Lu})", 2)[0];
    }

    static void wrap(String text, List<String> lines) {
        wrap(text, "    -", lines);
    }

    private static void wrap(String text, String opening, List<String> lines) {
        StringBuilder line = new StringBuilder(opening);
        for (String word : text.split(" ", -1)) {
            if (line.length() + 1 + word.length() > WIDTH) {
                lines.add(line.toString());
                line = new StringBuilder(opening.replace('-', ' '));
            }
            line.append(' ').append(word);
        }
        lines.add(line.toString());
    }
}
