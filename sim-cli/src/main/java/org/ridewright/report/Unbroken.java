package org.ridewright.report;

import java.util.regex.Pattern;

/** Keeps on one line what is read as one: a number and its unit, a sign and its number. */
final class Unbroken {
    private static final char TIE = '\u00a0';
    private static final Pattern SIGN = Pattern.compile("([×±]) (?=[0-9])");
    private static final Pattern UNIT = Pattern.compile(
            "(?<=[0-9]) (?=(?:%|mm|cm|m|km/h|m/s|mrad|rad|Hz|kHz|kN|N|kg|J|s|MN|in|ft|mph|cycles?|draws?)(?:[ ,.;:)/²·]|$))");

    private Unbroken() {}

    /** A text for a page. */
    static String text(String words) {
        return UNIT.matcher(SIGN.matcher(words).replaceAll("$1" + TIE)).replaceAll(String.valueOf(TIE));
    }
}
