package org.ridewright.study;

/** Which way a number is worse for riders and vehicle. */
public enum Worse {
    /** The lower, the worse. */
    LOW,
    /** The higher, the worse. */
    HIGH,
    /** Neither is better in itself. */
    NEITHER
}
