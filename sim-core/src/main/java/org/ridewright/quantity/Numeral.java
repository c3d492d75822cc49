package org.ridewright.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tech.units.indriya.function.RationalNumber;

/**
 * An unsigned number as written, kept exactly.
 *
 * @param value the number
 * @param text the words it was written in
 * @param whole whether it was written without fraction, point or power of ten
 */
record Numeral(RationalNumber value, String text, boolean whole) {
    private static final Map<String, RationalNumber> VULGAR = Map.ofEntries(
            Map.entry("½", RationalNumber.of(1, 2)),
            Map.entry("⅓", RationalNumber.of(1, 3)),
            Map.entry("⅔", RationalNumber.of(2, 3)),
            Map.entry("¼", RationalNumber.of(1, 4)),
            Map.entry("¾", RationalNumber.of(3, 4)),
            Map.entry("⅕", RationalNumber.of(1, 5)),
            Map.entry("⅖", RationalNumber.of(2, 5)),
            Map.entry("⅗", RationalNumber.of(3, 5)),
            Map.entry("⅘", RationalNumber.of(4, 5)),
            Map.entry("⅙", RationalNumber.of(1, 6)),
            Map.entry("⅚", RationalNumber.of(5, 6)),
            Map.entry("⅛", RationalNumber.of(1, 8)),
            Map.entry("⅜", RationalNumber.of(3, 8)),
            Map.entry("⅝", RationalNumber.of(5, 8)),
            Map.entry("⅞", RationalNumber.of(7, 8)));

    // whole and fraction, or fraction alone; fraction as one character; decimal
    private static final Pattern FORMS =
            Pattern.compile("(?:(?<whole>\\d+)(?:\\s*-\\s*|\\s+))?(?<over>\\d+)\\s*/\\s*(?<under>\\d+)(?![\\d.])"
                    + "|(?<ones>\\d*)(?:\\s*-\\s*|\\s*)(?<vulgar>[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞])"
                    + "|(?<digits>\\d+(?:\\.\\d+)?|\\.\\d+)(?:[eE](?<power>[+-]?\\d{1,3}))?(?!\\d|\\.\\d)");

    Numeral {
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(text, "text");
    }

    /** The number that starts at {@code at}; empty where none does, or where its denominator is zero. */
    static Optional<Numeral> startingAt(int at, String text) {
        Matcher form = FORMS.matcher(text).region(at, text.length());
        if (!form.lookingAt()) {
            return Optional.empty();
        }
        if (form.group("digits") != null) {
            BigDecimal decimal = new BigDecimal(form.group("digits"))
                    .scaleByPowerOfTen(form.group("power") == null ? 0 : Integer.parseInt(form.group("power")));
            boolean whole = form.group().chars().allMatch(Character::isDigit);
            return Optional.of(new Numeral(exact(decimal), form.group(), whole));
        }
        if (form.group("vulgar") != null) {
            RationalNumber sum = integer(form.group("ones")).add(VULGAR.get(form.group("vulgar")));
            return Optional.of(new Numeral(sum, form.group(), false));
        }
        BigInteger under = new BigInteger(form.group("under"));
        if (under.signum() == 0) {
            return Optional.empty();
        }
        RationalNumber fraction = RationalNumber.of(new BigInteger(form.group("over")), under);
        return Optional.of(new Numeral(integer(form.group("whole")).add(fraction), form.group(), false));
    }

    boolean isZero() {
        return value.signum() == 0;
    }

    private static RationalNumber integer(String digits) {
        return digits == null || digits.isEmpty()
                ? RationalNumber.ZERO
                : RationalNumber.ofInteger(new BigInteger(digits));
    }

    private static RationalNumber exact(BigDecimal decimal) {
        return decimal.scale() > 0
                ? RationalNumber.of(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()))
                : RationalNumber.ofInteger(decimal.toBigIntegerExact());
    }
}
