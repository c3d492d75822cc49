package org.ridewright.comfort;

/**
 * What kind of motion it is: a slow rise, a bang or a hum. One weighted number hides the difference.
 *
 * <p>The unweighted acceleration is divided at 3 Hz and at 10 Hz by pairs of fourth-order Butterworth filters (24 dB an octave)
 *
 * <pre>
 *   heave = LP(3 Hz)      jolt = HP(3 Hz) LP(10 Hz)      buzz = HP(3 Hz) HP(10 Hz)
 * </pre>
 *
 * <p>At every frequency |LP|² + |HP|² = 1, hence the squares of the three gains add up to 1 exactly. The squares of the three
 * r.m.s. values add up to that of the whole but for what the filters carry over the ends of the window: nothing for a motion that begins
 * and ends at rest inside it, otherwise in the order of 0.2 s of signal at each end. Peaks do not add up: they fall at
 * different instants, and a filter spreads a short bang over about its period.
 *
 * <p>Heave includes what is slower than a ride, an offset too, and buzz reaches up to 0.4 of the sampling rate: what a record holds above
 * that is in the whole and only in part in the buzz. The two limits are this
 * project's choice.
 *
 * @param heave below 3 Hz (m/s² or rad/s²)
 * @param jolt 3 to 10 Hz
 * @param buzz above 10 Hz
 * @param whole the acceleration as it is
 */
public record MotionBands(Level heave, Level jolt, Level buzz, Level whole) {
    /** Between heave and jolt (Hz). */
    public static final double HEAVE_TO_JOLT = 3;

    /** Between jolt and buzz (Hz). */
    public static final double JOLT_TO_BUZZ = 10;

    /** Order of the Butterworth filters. */
    static final int ORDER = 4;

    /** Of a motion that was not divided. */
    static MotionBands notDivided(Level whole) {
        return new MotionBands(Level.NOT_MEASURED, Level.NOT_MEASURED, Level.NOT_MEASURED, whole);
    }

    /** What the three mean squares lack or exceed, as a share of the whole mean square (1). */
    public double unaccounted() {
        double sum = heave.rms() * heave.rms() + jolt.rms() * jolt.rms() + buzz.rms() * buzz.rms();
        return sum / (whole.rms() * whole.rms()) - 1;
    }
}
