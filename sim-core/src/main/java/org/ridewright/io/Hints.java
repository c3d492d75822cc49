package org.ridewright.io;

import java.util.Collection;
import org.ridewright.vehicle.check.NearestWord;

/** Pieces of sentences for messages. */
final class Hints {
    private Hints() {}

    /** "write x" for the nearest known word, or advice to choose. */
    static String nearest(String written, Collection<String> known) {
        return NearestWord.to(written, known).map(near -> "write " + near).orElse("choose one of these");
    }

    /** Whether two phrases are the same but for letter case and spacing. */
    static boolean same(String written, String phrase) {
        return written.strip().replaceAll("\\s+", " ").equalsIgnoreCase(phrase);
    }

    static String article(String noun) {
        return "aeiou".indexOf(noun.charAt(0)) >= 0 ? "an" : "a";
    }
}
