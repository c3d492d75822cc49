package org.ridewright.fieldwork;

/** How a bounce test begins. */
public enum Release {
    /** Pushed down and let go. */
    PUSHED_DOWN("pushed down"),
    /** Lifted and let drop. */
    LIFTED("lifted"),
    /** Rocked by hand in its own time, then let go. */
    ROCKED("rocked");

    private final String word;

    Release(String word) {
        this.word = word;
    }

    /** The word as written in files. */
    public String word() {
        return word;
    }
}
