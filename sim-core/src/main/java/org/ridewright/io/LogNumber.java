package org.ridewright.io;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Numbers as loggers write them, with a decimal point or a decimal comma. */
final class LogNumber {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+([.,]\\d*)?|[.,]\\d+)([eE][+-]?\\d+)?");
    private static final Set<String> NOTHING = Set.of(
            "",
            "-",
            "--",
            "?",
            "nan",
            "-nan",
            "+nan",
            "na",
            "n/a",
            "#n/a",
            "null",
            "none",
            "inf",
            "-inf",
            "+inf",
            "infinity",
            "-infinity");

    private LogNumber() {}

    /** Whether a cell says that there is no value. */
    static boolean isNothing(String cell) {
        return NOTHING.contains(cell.strip().toLowerCase(Locale.ROOT));
    }

    /** Whether a cell is a number in either form. */
    static boolean isNumber(String cell) {
        return NUMBER.matcher(cell.strip()).matches();
    }

    /** The number; NaN where the cell is none, or has the other decimal mark. */
    static double parse(String cell, boolean comma) {
        String plain = plain(cell, comma);
        return plain.isEmpty() ? Double.NaN : Double.parseDouble(plain);
    }

    /** As Java writes it; empty where the cell is no number, or has the other decimal mark. */
    static String plain(String cell, boolean comma) {
        String stripped = cell.strip();
        if (!NUMBER.matcher(stripped).matches() || stripped.indexOf(comma ? '.' : ',') >= 0) {
            return "";
        }
        return stripped.replace(',', '.');
    }
}
