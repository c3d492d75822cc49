package org.ridewright.vehicle.check;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Guesses which known word a person meant. */
public final class NearestWord {
    private NearestWord() {}

    /**
     * The known word fewest letters away, if that is at most a third of the letters written; letter case, spaces and hyphens do not
     * count. Of equals the first.
     */
    public static Optional<String> to(String written, Collection<String> known) {
        String plain = plain(written);
        int bound = Math.max(1, plain.length() / 3);
        return known.stream()
                .filter(word -> distance(plain, plain(word)) <= bound)
                .min(Comparator.comparingInt(word -> distance(plain, plain(word))));
    }

    private static String plain(String word) {
        return word.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "");
    }

    /** Letters to change, leave out, put in or swap with their neighbour (optimal string alignment). */
    private static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                d[i][j] = i == 0 || j == 0 ? i + j : cheapest(d, a, b, i, j);
            }
        }
        return d[a.length()][b.length()];
    }

    private static int cheapest(int[][] d, String a, String b, int i, int j) {
        int change = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int least = Math.min(change, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(least, d[i - 2][j - 2] + 1) : least;
    }
}
