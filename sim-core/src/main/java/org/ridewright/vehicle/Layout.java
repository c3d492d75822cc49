package org.ridewright.vehicle;

/** Which motions of the sprung body a vehicle description covers. */
public enum Layout {
    /** Heave, roll and pitch; wheels on both sides. */
    FULL("full", true, true),
    /** Heave and pitch; each axle is one wheel, and every figure is that of the slice described. */
    HALF_IN_PITCH("half in pitch", false, true),
    /** Heave and roll; one axle with a wheel on either side. */
    HALF_IN_ROLL("half in roll", true, false),
    /** Heave alone; one wheel. */
    QUARTER("quarter", false, false);

    private final String word;
    private final boolean rolls;
    private final boolean pitches;

    Layout(String word, boolean rolls, boolean pitches) {
        this.word = word;
        this.rolls = rolls;
        this.pitches = pitches;
    }

    /** The word as written in files. */
    public String word() {
        return word;
    }

    /** Whether the body rolls, so that left and right wheels differ. */
    public boolean rolls() {
        return rolls;
    }

    /** Whether the body pitches, so that places along the vehicle matter. */
    public boolean pitches() {
        return pitches;
    }
}
