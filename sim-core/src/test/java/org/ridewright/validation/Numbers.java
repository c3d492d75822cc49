package org.ridewright.validation;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** How numbers are written in the table. */
final class Numbers {
    /** More digits than this are round-off of one machine or another. */
    private static final int MOST_DIGITS = 10;

    /** Power of ten below which a double next to one says nothing. */
    private static final int ROUND_OFF = -15;

    private static final double SMALLEST_PLAIN = 1e-3;
    private static final double LARGEST_PLAIN = 1e7;

    private Numbers() {}

    /** A length in millimetres, as short as it is exact. */
    static String mm(double metres) {
        return BigDecimal.valueOf(metres).movePointRight(3).stripTrailingZeros().toPlainString() + " mm";
    }

    /** Power of ten of the last digit written: a hundredth of what is allowed, or the tenth digit of a size. */
    static int lastPlace(double allowed, double size) {
        if (allowed == 0) {
            return 0;
        }
        int byTolerance = power(allowed) - 2;
        return size == 0 ? byTolerance : Math.max(byTolerance, power(size) - MOST_DIGITS + 1);
    }

    private static int power(double x) {
        return (int) Math.floor(Math.log10(Math.abs(x)) + 1e-12);
    }

    /** Rounded to a place, plain or with a power of ten. */
    static String rounded(double x, int lastPlace) {
        if (!Double.isFinite(x)) {
            return String.valueOf(x);
        }
        BigDecimal value = BigDecimal.valueOf(x).setScale(-lastPlace, RoundingMode.HALF_EVEN);
        if (value.signum() == 0) {
            return "0";
        }
        return write(value);
    }

    /** As {@link #rounded}, or where that leaves nothing a power of ten that the size is below. */
    static String bounded(double x, int lastPlace) {
        String rounded = rounded(x, lastPlace);
        return rounded.equals("0") ? "< 1e" + Math.max(ROUND_OFF, x == 0 ? ROUND_OFF : power(x) + 1) : rounded;
    }

    /** To two digits. */
    static String brief(double x) {
        return x == 0
                ? "0"
                : write(BigDecimal.valueOf(x).round(new MathContext(2)).stripTrailingZeros());
    }

    private static String write(BigDecimal value) {
        double size = value.abs().doubleValue();
        if (size >= SMALLEST_PLAIN && size < LARGEST_PLAIN) {
            return value.toPlainString();
        }
        int power = value.precision() - value.scale() - 1;
        return value.movePointLeft(power).toPlainString() + "e" + power;
    }
}
