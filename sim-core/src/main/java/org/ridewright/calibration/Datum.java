package org.ridewright.calibration;

/**
 * One measured number.
 *
 * @param label what was measured, in words
 * @param unit as printed
 * @param observed y
 * @param uncertainty σ, one standard deviation, > 0
 * @param keptBack whether it is predicted only, not fitted
 * @param group of data that belong together, such as the samples of one record; blank for a datum on its own
 */
public record Datum(String label, String unit, double observed, double uncertainty, boolean keptBack, String group) {
    public Datum {
        if (!Double.isFinite(observed) || !(uncertainty > 0) || Double.isInfinite(uncertainty)) {
            throw new IllegalArgumentException(
                    label + " must be finite with an uncertainty > 0, got " + observed + " ± " + uncertainty);
        }
    }

    /** A datum on its own, fitted. */
    public static Datum of(String label, String unit, double observed, double uncertainty) {
        return new Datum(label, unit, observed, uncertainty, false, "");
    }

    /** The same, predicted only. */
    public Datum kept() {
        return new Datum(label, unit, observed, uncertainty, true, group);
    }
}
