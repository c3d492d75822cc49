package org.ridewright.report;

import java.util.List;

/** Several things in a sentence. */
final class Listed {
    private Listed() {}

    /** "one, two and three"; nothing of none. */
    static String of(List<String> words) {
        int last = words.size() - 1;
        return last < 0
                ? ""
                : last == 0 ? words.get(0) : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }
}
