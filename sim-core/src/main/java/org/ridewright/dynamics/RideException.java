package org.ridewright.dynamics;

/** A vehicle that cannot stand or ride as described, or a run that had to be stopped; the message is for the user. */
public final class RideException extends RuntimeException {
    public RideException(String message) {
        super(message);
    }
}
