package org.ridewright.quantity;

import java.util.Objects;

/** Says that what a person wrote is not a value of the kind asked for, which part is at fault, and what would do. */
public final class QuantityFormatException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String offendingPart;
    private final String expected;
    private final String hint;

    QuantityFormatException(String message, String offendingPart, String expected, String hint) {
        super(message);
        this.offendingPart = Objects.requireNonNull(offendingPart, "offendingPart");
        this.expected = Objects.requireNonNull(expected, "expected");
        this.hint = Objects.requireNonNull(hint, "hint");
    }

    /** The words, as nearly as they were written, that cannot be read. */
    public String offendingPart() {
        return offendingPart;
    }

    /** Three or four forms that would be read, separated by commas. */
    public String expected() {
        return expected;
    }

    /** A likely remedy as part of a sentence, or the empty string where none suggests itself. */
    public String hint() {
        return hint;
    }
}
