package org.ridewright.bounce;

/** A motion of the body that an onlooker counts. */
public enum Motion {
    /** Height of the body over the first axle, on the centre line. */
    FRONT("front height", "m"),
    /** Height of the body over the last axle, on the centre line. */
    REAR("rear height", "m"),
    /** Pitch, positive with the nose down. */
    PITCH("pitch", "rad"),
    /** Roll, positive with the left side up; of a body that twists, at the first axle. */
    ROLL("roll", "rad"),
    /** Height of the body's centre of mass. */
    CENTRE("height of the centre of mass", "m");

    private final String title;
    private final String unit;

    Motion(String title, String unit) {
        this.title = title;
        this.unit = unit;
    }

    /** Name in running text. */
    public String title() {
        return title;
    }

    /** Unit of its values, m or rad. */
    public String unit() {
        return unit;
    }

    /** Whether it is an angle. */
    public boolean turns() {
        return this == PITCH || this == ROLL;
    }
}
