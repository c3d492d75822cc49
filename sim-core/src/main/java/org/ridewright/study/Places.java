package org.ridewright.study;

/** Where a measure is taken. */
public enum Places {
    /** Occupied seats. */
    SEATS("seat"),
    /** Occupied seats and the points that the scenario names. */
    SEATS_AND_POINTS("seat or point"),
    /** Wheels. */
    WHEELS("wheel"),
    /** Springs, dampers, bars and cushions. */
    SPRINGS("spring"),
    /** Heave, roll and pitch of the body. */
    MOTIONS("motion of the body"),
    /** The vehicle as a whole. */
    VEHICLE("vehicle");

    private final String called;

    Places(String called) {
        this.called = called;
    }

    /** One of them, in words. */
    public String called() {
        return called;
    }
}
