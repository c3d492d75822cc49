package org.ridewright.friction;

/**
 * A condition of the leaves, as a factor on the friction that the file states.
 *
 * @param word for it
 * @param factor of the limit of friction, ≥ 0
 */
public record Greasing(String word, double factor) {
    /** Rusted: dry or rusted packs rub with 10 to 20 % of their load, two and a half times a middling one. Source: from memory. */
    public static final double RUSTED = 2.5;

    public Greasing {
        if (!(factor >= 0)) {
            throw new IllegalArgumentException("friction can be multiplied by 0 or more, got " + factor);
        }
    }
}
