package org.ridewright.report;

import java.util.List;
import java.util.regex.Pattern;

/** Keeps on one line what is read as one: a number and its unit or per cent sign, a sign and its number. */
final class Unbroken {
    private static final String TIE = "\u00a0";
    private static final Pattern SIGN = Pattern.compile("([×±]) (?=\\d)");
    private static final Pattern UNIT = Pattern.compile(
            "(?<=\\d) "
                    + "(?=(?:%|°|(?:[kcm]?m|kg|[kM]?N|s|k?Hz|J|m?rad|[kM]Pa|deg|in|ft|lb|lbf|cwt|st|mph|km/h|m/s|cycles?|draws?)(?![\\p{L}\\d])))");

    private Unbroken() {}

    /** A text for a page. */
    static String of(String text) {
        return UNIT.matcher(SIGN.matcher(text).replaceAll("$1" + TIE)).replaceAll(TIE);
    }

    /** Several of them. */
    static List<String> all(List<String> texts) {
        return texts.stream().map(Unbroken::of).toList();
    }
}
