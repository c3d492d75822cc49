package org.ridewright.quantity;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the known word that a misspelt one was most likely meant to be. */
final class Spelling {
    private Spelling() {}

    /**
     * The candidate that differs by letter case or spacing alone, else the one with fewest letters wrong, missing, added or swapped:
     * at most one, two from six letters on. The first of equals wins.
     */
    static Optional<String> nearest(String word, Collection<String> candidates) {
        String wanted = plain(word);
        int allowed = wanted.length() >= 6 ? 2 : 1;
        String best = null;
        int least = allowed + 1;
        for (String candidate : candidates) {
            int distance = distance(wanted, plain(candidate));
            // a one-letter symbol is one letter away from every other
            if (distance < least && distance < Math.max(1, wanted.length())) {
                least = distance;
                best = candidate;
            }
        }
        return Optional.ofNullable(best);
    }

    private static String plain(String word) {
        return word.toLowerCase(Locale.ROOT)
                .replace(" ", "")
                .replace("·", "")
                .replace("^", "")
                .replace('²', '2')
                .replace('³', '3');
    }

    /** Number of single-letter edits and swaps of neighbours between two words (optimal string alignment). */
    static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + change);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
