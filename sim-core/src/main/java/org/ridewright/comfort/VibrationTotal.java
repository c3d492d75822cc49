package org.ridewright.comfort;

import java.util.Collection;
import java.util.EnumMap;
import java.util.Map;

/**
 * Vibration total values: of one point over its axes, and of several points together.
 *
 * <p>Every axis given is counted; the standard lets those below a quarter of the largest be left out (from memory).
 * Source: ISO 2631-1:1997, 6.5 and 8.2.3.
 */
public final class VibrationTotal {
    /** k of x and y at the seat where the backrest was not measured (1). ISO 2631-1:1997, 8.2.3 (from memory). */
    public static final double FACTOR_WITHOUT_BACKREST = 1.4;

    private VibrationTotal() {}

    /**
     * {@code a_v = {Σ k² a_w²}^½} of one point (m/s²).
     *
     * @param position gives k of each axis
     * @param rms a_w by axis (m/s² or rad/s²), ≥ 0; at least one axis
     * @throws IllegalArgumentException if there is no axis, a value is negative or not finite, or the position has no
     *     factor for an axis
     */
    public static double ofPoint(Position position, Map<Axis, Double> rms) {
        if (rms.isEmpty()) {
            throw new IllegalArgumentException("need a_w of at least 1 axis, got 0 (position " + position + ")");
        }
        double sum = 0;
        for (Map.Entry<Axis, Double> entry : rms.entrySet()) {
            double value = position.factor(entry.getKey())
                    * nonNegative("a_w", entry.getValue(), " (position " + position + ", axis " + entry.getKey() + ")");
            sum += value * value;
        }
        return Math.sqrt(sum);
    }

    /**
     * a_v of a seat whose backrest was not measured: with k = {@value #FACTOR_WITHOUT_BACKREST} on x and y in place of 1, which stands for
     * what the backrest would add.
     *
     * @param rms a_w by axis at the seat, as above
     */
    public static double ofSeatWithoutBackrest(Map<Axis, Double> rms) {
        Map<Axis, Double> raised = new EnumMap<>(Axis.class);
        rms.forEach((axis, value) ->
                raised.put(axis, axis == Axis.X || axis == Axis.Y ? FACTOR_WITHOUT_BACKREST * value : value));
        return ofPoint(Position.SEAT, raised);
    }

    /**
     * Overall total, the root of the sum of the squares of the points' totals (m/s²).
     *
     * @param pointTotals a_v of each point (m/s²), ≥ 0, at least one
     * @throws IllegalArgumentException if there is none, or one is negative or not finite
     */
    public static double overall(Collection<Double> pointTotals) {
        if (pointTotals.isEmpty()) {
            throw new IllegalArgumentException("need a_v of at least 1 point, got 0");
        }
        double sum = 0;
        for (double total : pointTotals) {
            nonNegative("a_v", total, "");
            sum += total * total;
        }
        return Math.sqrt(sum);
    }

    private static double nonNegative(String what, double value, String place) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " must be ≥ 0 and finite, got " + value + place);
        }
        return value;
    }
}
