package org.ridewright.ringdown;

/**
 * A value found from a record, with how well it is known.
 *
 * @param value most likely, in the unit of what it is of
 * @param standardError one standard deviation (same unit)
 * @param lower lower end of the 90 % interval (same unit)
 * @param upper upper end of the 90 % interval (same unit)
 */
public record Estimate(double value, double standardError, double lower, double upper) {
    /** Share of all records whose interval is meant to hold the truth. */
    public static final double CONFIDENCE = 0.9;

    /** Symmetric interval, {@code value ± quantile · standardError}. */
    static Estimate of(double value, double standardError, double quantile) {
        return new Estimate(value, standardError, value - quantile * standardError, value + quantile * standardError);
    }

    /** In another unit, {@code factor > 0} times as large. */
    public Estimate times(double factor) {
        return new Estimate(factor * value, factor * standardError, factor * lower, factor * upper);
    }

    /** For what cannot be negative: value and ends are at least zero, the standard error stays. */
    public Estimate notNegative() {
        return new Estimate(Math.max(0, value), standardError, Math.max(0, lower), Math.max(0, upper));
    }

    /** Whether the interval leaves zero out, on the side of positive values. */
    public boolean isAboveZero() {
        return lower > 0;
    }
}
