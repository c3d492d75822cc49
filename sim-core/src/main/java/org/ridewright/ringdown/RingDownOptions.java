package org.ridewright.ringdown;

/**
 * What is looked for in a record.
 *
 * @param lowest frequency of a bounce (Hz)
 * @param highest frequency of a bounce (Hz)
 */
public record RingDownOptions(double lowest, double highest) {
    /** From soft coaches to stiff carts: 0.6 to 5 Hz; common practice. */
    public static final RingDownOptions USUAL = new RingDownOptions(0.6, 5);

    /**
     * Checks the order.
     *
     * @throws IllegalArgumentException unless 0 &lt; lowest &lt; highest
     */
    public RingDownOptions {
        if (!(lowest > 0 && lowest < highest)) {
            throw new IllegalArgumentException(
                    "frequencies must be > 0 Hz and in order, got " + lowest + " to " + highest);
        }
    }
}
