package org.ridewright.vehicle;

/** How a wheel's centre follows the road. */
public enum PathKind {
    /** A rigid disc rolls over the profile. */
    DISC("disc"),
    /** The profile is averaged over the length of the footprint. */
    FOOTPRINT("footprint"),
    /** The path of the disc is averaged over the length of the footprint. */
    DISC_AND_FOOTPRINT("disc and footprint"),
    /** The wheel follows the profile itself. */
    POINT("point");

    private final String word;

    PathKind(String word) {
        this.word = word;
    }

    /** The word as written in files. */
    public String word() {
        return word;
    }
}
