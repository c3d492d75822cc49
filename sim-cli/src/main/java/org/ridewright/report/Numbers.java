package org.ridewright.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as reports print them. */
final class Numbers {
    private static final int PLAIN_DIGITS = 7;

    private Numbers() {}

    /** A number with that many significant digits, a true minus sign and no exponent between 1e-4 and 1e7; "–" where there is none. */
    static String of(double value, int digits) {
        if (!Double.isFinite(value)) {
            return "–";
        }
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits));
        int exponent = rounded.precision() - rounded.scale() - 1;
        String text = exponent < -4 || exponent >= PLAIN_DIGITS
                ? scientific(rounded, exponent)
                : rounded.setScale(Math.max(0, digits - 1 - exponent)).toPlainString();
        return text.replace('-', '−');
    }

    /** Three significant digits. */
    static String of(double value) {
        return of(value, 3);
    }

    /** A number with that many decimals and a true minus sign; "–" where there is none. */
    static String fixed(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return "–";
        }
        BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN);
        return (rounded.signum() == 0 ? rounded.abs() : rounded).toPlainString().replace('-', '−');
    }

    /** Two significant digits, of which a nought behind the point is left out: 5, 5.5, 11. */
    static String brief(double value) {
        return of(value, 2).replaceFirst("\\.0$", "");
    }

    /** A share in per cent. */
    static String percent(double share) {
        return of(100 * share, 2) + " %";
    }

    private static String scientific(BigDecimal value, int exponent) {
        return value.movePointLeft(exponent).stripTrailingZeros().toPlainString() + "·10" + raised(exponent);
    }

    private static String raised(int exponent) {
        StringBuilder out = new StringBuilder(exponent < 0 ? "⁻" : "");
        String.valueOf(Math.abs(exponent)).chars().forEach(c -> out.append("⁰¹²³⁴⁵⁶⁷⁸⁹".charAt(c - '0')));
        return out.toString();
    }
}
