package org.ridewright.study;

/**
 * Which of many levels a figure keeps: all of few, and of many as many at equal distances as a printed figure can show.
 *
 * @param count how many there are
 */
public record Levels(int count) {
    /** More levels than this are not told apart in print. */
    public static final int MOST = 401;

    /** How many are kept. */
    int kept() {
        return Math.min(count, MOST);
    }

    /** Number of the {@code slot}-th that is kept. */
    int level(int slot) {
        return count <= MOST ? slot : (int) Math.round(slot * (count - 1.0) / (MOST - 1));
    }

    /** Where a level is kept; −1 if it is not. */
    int slot(int level) {
        int slot = count <= MOST ? level : (int) Math.round(level * (MOST - 1.0) / (count - 1));
        return level(slot) == level ? slot : -1;
    }
}
