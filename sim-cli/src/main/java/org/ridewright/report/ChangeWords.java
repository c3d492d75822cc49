package org.ridewright.report;

import java.util.stream.DoubleStream;
import org.ridewright.study.Estimate;

/**
 * A difference in words that claim no more than its interval: to one side only where the whole interval lies there.
 */
final class ChangeWords {
    /** Of an answer that no run gave. */
    static final String NOTHING = "(not ridden)";

    private ChangeWords() {}

    /** By a ratio: per cent lower or higher, or how many times as high where it is more than twice for sure. */
    static String ofRatio(Estimate ratio, boolean drawn) {
        if (ratio.low() > 2) {
            String text = Numbers.of(ratio.value(), 2) + " times as high";
            return drawn
                    ? text + " (" + Numbers.brief(ratio.low()) + " to " + Numbers.brief(ratio.high()) + " times)"
                    : text;
        }
        Estimate less = new Estimate(100 * (ratio.value() - 1), 100 * (ratio.low() - 1), 100 * (ratio.high() - 1));
        return said(less, drawn, " %", "lower", "higher");
    }

    /** In the answer's unit, which has a space before it. */
    static String ofDifference(Estimate difference, boolean drawn, String unit) {
        return said(difference, drawn, unit, "less", "more");
    }

    private static String said(Estimate e, boolean drawn, String unit, String down, String up) {
        if (!Double.isFinite(e.value())) {
            return NOTHING;
        } else if (!drawn) {
            return e.value() == 0 ? "the same" : number(e, e.value()) + unit + (e.value() < 0 ? " " + down : " " + up);
        } else if (e.low() > 0 || e.high() < 0) {
            boolean higher = e.low() > 0;
            return number(e, e.value()) + unit + " " + (higher ? up : down) + " ("
                    + number(e, higher ? e.low() : e.high()) + " to " + number(e, higher ? e.high() : e.low()) + unit
                    + ")";
        } else if (e.low() == 0 && e.high() == 0) {
            return "the same";
        }
        return "neither clearly " + down + " nor " + up + " (" + end(e, e.low(), unit, down) + " to "
                + end(e, e.high(), unit, up) + ")";
    }

    private static String end(Estimate e, double value, String unit, String side) {
        return value == 0 ? "the same" : number(e, value) + unit + " " + side;
    }

    /** With as many decimals as the greatest of the three needs for two digits, whole from 100 on; smaller ones that would be nought keep one digit. */
    private static String number(Estimate e, double value) {
        double greatest = DoubleStream.of(e.value(), e.low(), e.high())
                .map(Math::abs)
                .filter(Double::isFinite)
                .max()
                .orElse(0);
        double size = Math.abs(value);
        int decimals = Math.max(0, 1 - (int) Math.floor(Math.log10(Math.max(greatest, 1e-12))));
        boolean vanishes = size > 0 && size < 0.5 * Math.pow(10, -decimals);
        return vanishes ? Numbers.of(size, 1) : size >= 1000 ? Numbers.of(size, 3) : Numbers.fixed(size, decimals);
    }
}
