package org.ridewright.calibration;

/** Says why nothing can be calibrated from what was measured; the message is for the user. */
public final class CalibrationException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public CalibrationException(String message) {
        super(message);
    }
}
