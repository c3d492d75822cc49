package org.ridewright.quantity;

/** Says why a description cannot be had with the values that it was given. */
public class UnfitValueException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public UnfitValueException(String message) {
        super(message);
    }
}
