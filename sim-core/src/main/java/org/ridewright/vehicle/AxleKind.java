package org.ridewright.vehicle;

/** How the wheels of an axle are joined. */
public enum AxleKind {
    /** One rigid piece with a wheel at either end. */
    BEAM("beam"),
    /** Two wheels that move one without the other. */
    INDEPENDENT("independent"),
    /** One wheel on the centre line. */
    SINGLE("single wheel");

    private final String word;

    AxleKind(String word) {
        this.word = word;
    }

    /** The word as written in files. */
    public String word() {
        return word;
    }
}
