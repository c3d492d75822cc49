package org.ridewright.comfort;

/** Direction of a vibration, axes of ISO 8855. */
public enum Axis {
    /** Fore and aft. */
    X("m/s²"),
    /** Lateral. */
    Y("m/s²"),
    /** Vertical. */
    Z("m/s²"),
    /** Rotation about x. */
    ROLL("rad/s²"),
    /** Rotation about y. */
    PITCH("rad/s²"),
    /** Rotation about z. */
    YAW("rad/s²");

    private final String unit;

    Axis(String unit) {
        this.unit = unit;
    }

    /** Unit of an acceleration along or about this axis. */
    public String unit() {
        return unit;
    }
}
