package org.ridewright.quantity;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a unit: words joined by products (space, ·, *, hyphen, full stop), quotients (/, per) from left to right, powers
 * and brackets. {@code N s/m}, {@code N/(m/s)}, {@code kg m²}, {@code 1/min}, {@code sq in}.
 */
final class UnitReader {
    private static final Pattern PER = Pattern.compile("\\s+per\\s+");
    private static final Pattern SQUARE = Pattern.compile("\\b(?:sq|square)\\.?\\s*(\\p{L}+)");
    private static final Pattern CUBIC = Pattern.compile("\\b(?:cu|cubic)\\.?\\s*(\\p{L}+)");
    private static final Pattern WORD = Pattern.compile("[\\p{L}]+|[°'\"%]");
    private static final Pattern POWER = Pattern.compile("\\s*\\^\\s*(-?[1-4])|([1-4])(?![\\d.])|(⁻?[¹²³⁴])");
    private static final Pattern PRODUCT = Pattern.compile("\\s*[·*.-]\\s*(?=[\\p{L}(])|\\s+(?=[\\p{L}(])");
    private static final Pattern END = Pattern.compile("[.\\s]*");
    private static final String SUPERSCRIPTS = "⁰¹²³⁴";

    private final String text;
    private final QuantityKind kind;
    private final Refusals refusals;
    private int at;

    private UnitReader(String text, QuantityKind kind, Refusals refusals) {
        this.text = text;
        this.kind = kind;
        this.refusals = refusals;
    }

    /**
     * The unit meant by {@code text}, which is not blank, fit for {@code refusals.kind()}: a mass is its weight where the
     * kind calls for a force.
     *
     * @throws QuantityFormatException where a word is unknown, or the unit is of another kind
     */
    static WrittenUnit read(String text, Refusals refusals) {
        QuantityKind kind = refusals.kind();
        WrittenUnit unit = new UnitReader(spelledOut(text), kind, refusals).whole();
        if (unit.measures(kind)) {
            return unit;
        }
        if (KindForms.of(kind).weightForMass()) {
            WrittenUnit weight = unit.asWeight();
            if (weight.measures(kind)) {
                return weight;
            }
        }
        throw refusals.otherKind(text.strip(), unit);
    }

    private static String spelledOut(String text) {
        String result = PER.matcher(text.strip()).replaceAll("/");
        result = SQUARE.matcher(result).replaceAll("$1²");
        return CUBIC.matcher(result).replaceAll("$1³");
    }

    private WrittenUnit whole() {
        if (text.indexOf('%') >= 0 && text.length() > 1) {
            throw refusals.because("has a percent sign within a unit", text, "write the percent last: 21 N/mm ± 10 %");
        }
        WrittenUnit unit = quotient();
        take(END);
        if (at < text.length()) {
            throw unreadable(text.substring(at));
        }
        return unit;
    }

    private WrittenUnit quotient() {
        WrittenUnit unit = factor();
        while (at < text.length() && text.charAt(at) != ')') {
            take(Pattern.compile("\\.?\\s*(?=/)"));
            if (text.startsWith("/", at)) {
                at++;
                unit = unit.over(factor());
            } else if (take(PRODUCT) != null) {
                unit = unit.times(factor());
            } else {
                break;
            }
        }
        return unit;
    }

    private WrittenUnit factor() {
        take(Pattern.compile("\\s*"));
        if (text.startsWith("(", at)) {
            at++;
            WrittenUnit inner = quotient();
            if (!text.startsWith(")", at)) {
                throw refusals.because("has a bracket that is not closed", text, "");
            }
            at++;
            return inner.power(power());
        }
        if (text.startsWith("1/", at) || text.startsWith("1 /", at)) {
            at++;
            return UnitTable.one();
        }
        Matcher word = take(WORD);
        if (word == null) {
            throw unreadable(text.substring(at));
        }
        return product(word.group());
    }

    /** A power belongs to the last factor alone: kgm² is kg·m². */
    private WrittenUnit product(String word) {
        List<WrittenUnit> factors = UnitTable.factors(word, kind).orElseThrow(() -> refusals.unknownUnit(text, word));
        WrittenUnit unit = factors.get(factors.size() - 1).power(power());
        for (WrittenUnit factor : factors.subList(0, factors.size() - 1)) {
            unit = factor.times(unit);
        }
        return unit;
    }

    private int power() {
        Matcher power = take(POWER);
        if (power == null) {
            return 1;
        }
        if (power.group(3) != null) {
            String raised = power.group(3);
            int size = SUPERSCRIPTS.indexOf(raised.charAt(raised.length() - 1));
            return raised.length() > 1 ? -size : size;
        }
        return Integer.parseInt(power.group(1) != null ? power.group(1) : power.group(2));
    }

    private QuantityFormatException unreadable(String rest) {
        return refusals.because("has '" + rest + "' where a unit should stand", rest, "");
    }

    /** The match of {@code pattern} here, stepping past it; null where there is none. */
    private Matcher take(Pattern pattern) {
        Matcher matcher = pattern.matcher(text).region(at, text.length()).useTransparentBounds(true);
        if (!matcher.lookingAt()) {
            return null;
        }
        at = matcher.end();
        return matcher;
    }
}
