package org.ridewright.quantity;

/** How a value was come by. The first group may be written in a file, the second is set by the program. */
public enum Provenance {
    MEASURED("measured"),
    WEIGHED("weighed"),
    COUNTED("counted"),
    ESTIMATED("estimated"),
    DRAWING("drawing"),
    HANDBOOK("handbook"),
    CALIBRATED("calibrated"),

    NOT_STATED("not stated"),
    COMPUTED("computed");

    private final String word;

    Provenance(String word) {
        this.word = word;
    }

    /** The word as written in files and reports. */
    public String word() {
        return word;
    }
}
