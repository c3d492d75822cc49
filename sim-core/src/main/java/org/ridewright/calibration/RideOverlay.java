package org.ridewright.calibration;

import java.util.List;

/**
 * A logged ride beside the simulated one, below {@link #BAND}.
 *
 * @param label of the fact
 * @param sensor where it was logged
 * @param keptBack whether it was predicted only
 * @param steps whether a horse's steps are in it
 * @param times from the beginning of the ride (s)
 * @param logged vertical acceleration (m/s²)
 * @param before of the vehicle as its file had it, at the speed as measured
 * @param after of the calibrated vehicle, at the fitted speed
 * @param added what a constant and a horse's steps add to the calibrated one (m/s²)
 * @param speed fitted (m/s)
 * @param speedError standard error of it (m/s)
 * @param scatter r.m.s. of what is left (m/s²)
 * @param likeness of neighbouring residuals, 0 to 1
 * @param worth independent samples that the record is worth
 */
public record RideOverlay(
        String label,
        String sensor,
        boolean keptBack,
        boolean steps,
        List<Double> times,
        List<Double> logged,
        List<Double> before,
        List<Double> after,
        List<Double> added,
        double speed,
        double speedError,
        double scatter,
        double likeness,
        double worth) {
    /** Above this frequency nothing is compared (Hz). */
    public static final double BAND = AlignedLog.BAND;

    public RideOverlay {
        times = List.copyOf(times);
        logged = List.copyOf(logged);
        before = List.copyOf(before);
        after = List.copyOf(after);
        added = List.copyOf(added);
    }

    /** Share of the log's mean square that the vehicle as its file had it explains, 1 at best; negative where it is worse than nothing. */
    public double explainedBefore() {
        return explained(before, added);
    }

    /** The same of the calibrated vehicle. */
    public double explainedAfter() {
        return explained(after, added);
    }

    private double explained(List<Double> ride, List<Double> besides) {
        double whole = 0;
        double rest = 0;
        for (int i = 0; i < logged.size(); i++) {
            double off = logged.get(i) - ride.get(i) - besides.get(i);
            rest += off * off;
            whole += logged.get(i) * logged.get(i);
        }
        return 1 - rest / whole;
    }
}
