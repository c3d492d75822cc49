package org.ridewright.solver;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A measured time with the half-width of its interval, as a table prints them: the error to two digits, the time to the same place.
 *
 * @param time as measured
 * @param error half-width in the same unit; not a number where too few runs give none
 * @param unit of both
 */
record TimeWithError(double time, double error, String unit) {
    /** Share of the time above which the error leaves nothing to go by. */
    static final double WORTHLESS = 0.2;

    private static final MathContext TWO_DIGITS = new MathContext(2, RoundingMode.HALF_EVEN);
    private static final MathContext FOUR_DIGITS = new MathContext(4, RoundingMode.HALF_EVEN);

    /** Whether the figure is worth anything. */
    boolean tells() {
        return error <= WORTHLESS * time;
    }

    /** The time with its unit, no finer than its error. */
    String timeText() {
        BigDecimal shown = new BigDecimal(time).round(FOUR_DIGITS);
        if (Double.isFinite(error) && error > 0) {
            int place = new BigDecimal(error).round(TWO_DIGITS).scale();
            shown = new BigDecimal(time).setScale(Math.min(place, shown.scale()), RoundingMode.HALF_EVEN);
        }
        return shown.toPlainString() + " " + unit;
    }

    /** The error with its unit and its share of the time. */
    String errorText() {
        if (!Double.isFinite(error)) {
            return "not known";
        }
        String share = new BigDecimal(100 * error / time).round(TWO_DIGITS).toPlainString();
        return "± " + new BigDecimal(error).round(TWO_DIGITS).toPlainString() + " " + unit + " (" + share + " %)"
                + (tells() ? "" : ", worthless");
    }
}
