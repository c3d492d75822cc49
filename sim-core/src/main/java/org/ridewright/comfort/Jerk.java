package org.ridewright.comfort;

/**
 * Rate of change of acceleration along or about an axis (m/s³ or rad/s³).
 *
 * <p>Where an acceleration jumps, as at the first touch of a hard wheel on a kink, the jerk has no bound, and {@code sampled} grows
 * with the sampling rate: compare it only between records of one rate. {@code felt} has no such defect: it is the jerk of what is slower
 * than {@value #LIMIT} Hz, of heave and jolt together, {@code s·LP(s)} with a fourth-order Butterworth low pass. (A limit of 10 Hz
 * where a jerk is to mean something to a passenger is common practice.)
 *
 * @param sampled largest difference of neighbouring samples in the window, times the sampling rate
 * @param felt r.m.s. and peak of the band-limited jerk
 */
public record Jerk(double sampled, Level felt) {
    /** Where it was not asked for: not numbers. */
    static final Jerk NOT_MEASURED = new Jerk(Double.NaN, Level.NOT_MEASURED);

    /** Upper end of the band of {@link #felt} (Hz). */
    public static final double LIMIT = MotionBands.JOLT_TO_BUZZ;
}
