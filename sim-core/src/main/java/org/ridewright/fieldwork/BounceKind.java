package org.ridewright.fieldwork;

/** Where a standing vehicle is pushed or lifted, let go and counted. */
public enum BounceKind {
    /** At its front end, over the middle. */
    FRONT("front"),
    /** At its rear end, over the middle. */
    REAR("rear"),
    /** At one side: it rolls. */
    SIDE("side"),
    /** Evenly all over. */
    HEAVE("heave"),
    /** One end down, the other up. */
    PITCH("pitch");

    private final String word;

    BounceKind(String word) {
        this.word = word;
    }

    /** The word as written in files. */
    public String word() {
        return word;
    }
}
