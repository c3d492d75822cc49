package org.ridewright.uncertainty;

import java.util.Arrays;
import org.ridewright.math.Quantiles;

/** Where nine tenths of the drawn values lie, and their median ({@link Quantiles}); of fewer than 19 draws, where all of them lie. */
public record Interval(double low, double median, double high) {
    /** Of values in any order, at least one; sorted in place. */
    public static Interval of(double[] values) {
        Arrays.sort(values);
        return new Interval(Quantiles.low(values), Quantiles.median(values), Quantiles.high(values));
    }
}
