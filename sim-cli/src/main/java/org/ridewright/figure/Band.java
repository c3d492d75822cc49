package org.ridewright.figure;

/**
 * A lightly shaded strip over the whole plot.
 *
 * @param span which way it is bounded
 * @param from lower bound (unit of that axis)
 * @param to upper bound (unit of that axis)
 * @param label a few words: to the right of the plot for {@link Span#OF_Y}, above it for {@link Span#OF_X}; may be blank
 */
public record Band(Span span, double from, double to, String label) {

    /** The axis a band is a piece of. */
    public enum Span {
        /** All points with x from…to: an upright strip. */
        OF_X,
        /** All points with y from…to: a level strip. */
        OF_Y
    }

    /**
     * Checks the bounds.
     *
     * @throws IllegalArgumentException unless from &lt; to
     */
    public Band {
        if (!(from < to)) {
            throw new IllegalArgumentException(
                    "band '%s': from must be < to, got %s and %s".formatted(label, from, to));
        }
    }
}
