package org.ridewright.modal;

/** What moves in a mode, or in a part of it. */
public enum Motion {
    BOUNCE,
    PITCH,
    ROLL,
    /** Of the rear half of the body against the front. */
    TWIST,
    /** To and fro of the undercarriage; at zero frequency, where nothing holds it, the vehicle rolling along. */
    SURGE,
    /** Sideways. */
    SWAY,
    /** Both wheels of an axle up and down together, or its only one. */
    HOP,
    /** The wheels of an axle up and down against each other. */
    TRAMP,
    /** A person, part of one, or a stage of a seat, against what is below. */
    OCCUPANT;

    /** Whether it is one of the body, in which a centre of oscillation means something: bounce or pitch. */
    public boolean ofBody() {
        return this == BOUNCE || this == PITCH;
    }
}
