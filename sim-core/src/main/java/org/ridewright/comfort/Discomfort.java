package org.ridewright.comfort;

import java.util.Arrays;
import java.util.List;

/**
 * The standard's words for vibration total values. The bands overlap on purpose: one value may have two words.
 *
 * <p>They are meant for public transport and its steady vibration; expectations, duration and what the passenger is doing
 * shift them, and a single bump is no steady vibration. State a_v beside the words.
 *
 * <p>Source: ISO 2631-1:1997, annex C.2.3; the limits of the two strongest words from memory.
 */
public enum Discomfort {
    NOT_UNCOMFORTABLE("not uncomfortable", 0, 0.315),
    A_LITTLE_UNCOMFORTABLE("a little uncomfortable", 0.315, 0.63),
    FAIRLY_UNCOMFORTABLE("fairly uncomfortable", 0.5, 1),
    UNCOMFORTABLE("uncomfortable", 0.8, 1.6),
    VERY_UNCOMFORTABLE("very uncomfortable", 1.25, 2.5),
    EXTREMELY_UNCOMFORTABLE("extremely uncomfortable", 2, Double.POSITIVE_INFINITY);

    private final String label;
    private final double lower;
    private final double upper;

    Discomfort(String label, double lower, double upper) {
        this.label = label;
        this.lower = lower;
        this.upper = upper;
    }

    /**
     * All words that hold for a vibration total value, mildest first; never empty.
     *
     * @param total a_v (m/s²), ≥ 0
     * @throws IllegalArgumentException if it is negative or not a number
     */
    public static List<Discomfort> words(double total) {
        if (!(total >= 0)) {
            throw new IllegalArgumentException("a_v must be ≥ 0 m/s², got " + total + " m/s²");
        }
        return Arrays.stream(values()).filter(word -> word.holds(total)).toList();
    }

    /**
     * The words as what riders of public transport are likely to say; where bands overlap, some will say the one and some the other.
     *
     * @param total a_v (m/s²), ≥ 0
     */
    public static String likely(double total) {
        List<Discomfort> words = words(total);
        return words.size() == 1
                ? "likely to be called " + words.get(0).label
                : "likely to be called " + words.get(0).label + " by some, " + words.get(1).label + " by others";
    }

    /** In running text. */
    public String label() {
        return label;
    }

    /** Lower end of the band (m/s²). */
    public double lower() {
        return lower;
    }

    /** Upper end of the band (m/s²); infinite for the strongest. */
    public double upper() {
        return upper;
    }

    /** "Less than" and "greater than" are strict for the outer words, the ends of the others belong to them. */
    private boolean holds(double total) {
        return switch (this) {
            case NOT_UNCOMFORTABLE -> total < upper;
            case EXTREMELY_UNCOMFORTABLE -> total > lower;
            default -> total >= lower && total <= upper;
        };
    }
}
