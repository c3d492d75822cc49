package org.ridewright.calibration;

/**
 * A fact that was not fitted.
 *
 * @param label of the fact
 * @param reason a whole sentence
 */
public record LeftOut(String label, String reason) {}
