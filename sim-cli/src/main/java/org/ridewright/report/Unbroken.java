package org.ridewright.report;

import java.util.List;
import java.util.regex.Pattern;

/** Texts in which a line does not break between a number and its unit, a per cent sign, or the sign of a multiple. */
final class Unbroken {
    private static final String NO_BREAK = "\u00a0";
    private static final Pattern BEFORE_UNIT = Pattern.compile(
            "(?<=\\d) (?=(?:%|°|(?:k?m|mm|kg|k?N|s|Hz|J|rad|mrad|deg|in|ft|lb|cwt|st|mph|t)\\b|m/s|km/h|[kM]?N[/·]|kPa|MPa))");
    private static final Pattern AFTER_TIMES = Pattern.compile("× (?=\\d)");

    private Unbroken() {}

    static String of(String text) {
        return AFTER_TIMES
                .matcher(BEFORE_UNIT.matcher(text).replaceAll(NO_BREAK))
                .replaceAll("×" + NO_BREAK);
    }

    static List<String> all(List<String> texts) {
        return texts.stream().map(Unbroken::of).toList();
    }
}
