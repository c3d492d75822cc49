package org.ridewright.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Divides an amount into numbers and the words of their units. */
final class AmountReader {
    private static final Pattern DECIMAL_COMMA = Pattern.compile("(\\d+),(\\d+)[\\d,.]*");
    private static final Pattern GROUPED = Pattern.compile("\\d{1,3}(?:[,_]\\d{3})+(?:\\.\\d+)?");
    private static final Pattern UNDERSCORED = Pattern.compile("\\d+_[\\d_]*");
    private static final Pattern TEN_TO = Pattern.compile("\\s*[×x·*]\\s*10\\s*\\^?\\s*[⁻-]?[\\d⁰¹²³⁴-⁹]");
    private static final Pattern RANGE = Pattern.compile("\\s*(?:-|–|to\\b|\\.\\.+)\\s*\\d.*");

    /**
     * Letters and signs of a unit, a 1 that heads a quotient, and digits that are powers: after ^, or right after a
     * letter and not before another number or letter.
     */
    private static final Pattern UNIT =
            Pattern.compile("\\s*(?:1\\s*/\\s*(?=\\p{L}))?(?:[\\p{L}°'\"%·*/()¹²³⁴⁻\\s]|\\.(?!\\d)|-(?=\\p{L})"
                    + "|\\^-?[1-4]|(?<=\\p{L})[1-4](?![\\p{L}\\d.½¼¾]))*");

    private final String text;
    private final Refusals refusals;

    private AmountReader(String text, Refusals refusals) {
        this.text = text;
        this.refusals = refusals;
    }

    /**
     * @throws QuantityFormatException where {@code text} is not made of numbers, each with the words of a unit; the words
     *     may be missing after the last
     */
    static Amount read(String text, Refusals refusals) {
        return new AmountReader(text, refusals).amount();
    }

    private Amount amount() {
        refuseOtherDecimalMarks();
        int at = 0;
        boolean negative = text.startsWith("-");
        if (negative || text.startsWith("+")) {
            at = skipBlanks(1);
        }
        List<Amount.Part> parts = new ArrayList<>();
        do {
            Numeral number = numberAt(at, parts);
            at += number.text().length();
            Matcher unit = UNIT.matcher(text).region(at, text.length()).useTransparentBounds(true);
            String words = unit.lookingAt() ? unit.group() : "";
            refuseProductWithTen(at);
            at += words.length();
            parts.add(new Amount.Part(number, words.strip()));
            if (at < text.length()) {
                requirePartComplete(parts, at);
            }
        } while (at < text.length());
        return new Amount(negative, parts);
    }

    private Numeral numberAt(int at, List<Amount.Part> before) {
        Optional<Numeral> number = Numeral.startingAt(at, text);
        if (number.isEmpty()) {
            throw refuseAt(at);
        }
        boolean padded = number.get().text().matches("0\\d.*");
        if (!before.isEmpty() && padded) {
            throw refuseAt(at);
        }
        return number.get();
    }

    private QuantityFormatException refuseAt(int at) {
        String rest = text.substring(at);
        if (rest.isEmpty()) {
            return refusals.because("has no number", text, "");
        }
        if (rest.matches("[+-].*")) {
            return refusals.because("has a sign within", rest, "a sign may stand in front of the whole alone");
        }
        if (rest.matches("\\d+\\s*/\\s*0+(?!\\d).*")) {
            return refusals.because("divides by zero", rest, "");
        }
        return refusals.because("has '" + rest + "' where a number should stand", rest, "");
    }

    private void requirePartComplete(List<Amount.Part> parts, int at) {
        Amount.Part part = parts.get(parts.size() - 1);
        String rest = text.substring(at);
        if (RANGE.matcher(rest).matches()) {
            throw refusals.because("is a range", text, "write its middle and half its width, as in 45 in ± 1 in");
        }
        if (part.unit().isEmpty()) {
            String joined = rest.matches("\\d{3}(?!\\d).*")
                    ? "write thousands without a gap: " + part.number().text() + rest
                    : "";
            throw refusals.because(
                    "has no unit between '" + part.number().text() + "' and '" + rest + "'", rest, joined);
        }
        if (!part.number().whole()) {
            throw refusals.because(
                    "has a fraction before its last unit, '" + part.text() + "'",
                    part.text(),
                    "a fraction may stand in the last unit alone");
        }
    }

    private void refuseOtherDecimalMarks() {
        Matcher grouped = GROUPED.matcher(text);
        Matcher comma = DECIMAL_COMMA.matcher(text);
        if (comma.find()) {
            String decimal = comma.group().replace(".", "").replaceFirst(",", ".");
            String hint = grouped.find() && grouped.group().equals(comma.group())
                    ? "write " + grouped.group().replace(",", "") + " if the comma marks thousands, " + decimal
                            + " if it is a decimal comma"
                    : "write the decimals after a point: " + decimal;
            throw refusals.because("has a comma within a number", comma.group(), hint);
        }
        Matcher underscored = UNDERSCORED.matcher(text);
        if (underscored.find()) {
            String number = underscored.group();
            throw refusals.because("has an underscore within a number", number, "write " + number.replace("_", ""));
        }
    }

    private void refuseProductWithTen(int at) {
        Matcher power = TEN_TO.matcher(text).region(at, text.length());
        if (power.lookingAt()) {
            throw refusals.because(
                    "has a power of ten written out", power.group().strip(), "write it as in 1.2e5");
        }
    }

    private int skipBlanks(int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
        return at;
    }
}
