package org.ridewright.vehicle;

/** What a wheel touches the road with. */
public enum Tyre {
    IRON("iron"),
    SOLID("solid"),
    PNEUMATIC("pneumatic");

    private final String word;

    Tyre(String word) {
        this.word = word;
    }

    /** The word as written in files. */
    public String word() {
        return word;
    }
}
