package org.ridewright.fieldwork;

/**
 * What every fact may carry besides its readings.
 *
 * @param name in the author's words; may be empty
 * @param note in the author's words; may be empty
 * @param keepBack whether a calibration leaves it out and predicts it instead
 */
public record Heading(String name, String note, boolean keepBack) {
    /** Neither named nor kept back. */
    public static final Heading NONE = new Heading("", "", false);

    /** The name, or else what it is. */
    String label(String otherwise) {
        return name.isEmpty() ? otherwise : name;
    }
}
