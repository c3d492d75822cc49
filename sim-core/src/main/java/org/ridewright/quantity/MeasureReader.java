package org.ridewright.quantity;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads {@code <amount> [± <tolerance>] [(<provenance>)]}. */
final class MeasureReader {
    private static final int LONGEST = 200;
    private static final Pattern PLUS_MINUS = Pattern.compile("\\s*(?:±|\\+\\s*/?\\s*-)\\s*");
    // a bracket after / or · belongs to the unit
    private static final Pattern PROVENANCE =
            Pattern.compile("(?:(?<![/·*\\s])\\s*\\(([^()\\d]*)\\)|\\s*,\\s*([^,()\\d]*))$");
    private static final Pattern PERCENT = Pattern.compile("([^%]*[^%\\s])\\s*(?:%|percent)");
    private static final List<Provenance> STATED = Arrays.stream(Provenance.values())
            .filter(p -> p != Provenance.NOT_STATED && p != Provenance.COMPUTED)
            .toList();

    private final String written;
    private final QuantityKind kind;
    private final Refusals refusals;

    private MeasureReader(String written, QuantityKind kind) {
        this.written = written;
        this.kind = kind;
        this.refusals = new Refusals(kind, written.length() > LONGEST ? written.substring(0, LONGEST) + "…" : written);
    }

    static Measure read(String text, QuantityKind kind) {
        return new MeasureReader(text.strip(), kind).measure();
    }

    private Measure measure() {
        if (written.isEmpty()) {
            throw refusals.because("is empty", "", "");
        }
        if (written.length() > LONGEST) {
            throw refusals.because("is longer than " + LONGEST + " characters", written, "");
        }
        String text = plain(written);
        Provenance provenance = Provenance.NOT_STATED;
        Matcher clause = PROVENANCE.matcher(text);
        if (clause.find()) {
            provenance = provenance(clause.group(1) != null ? clause.group(1) : clause.group(2));
            text = text.substring(0, clause.start());
        }
        String[] sides = PLUS_MINUS.split(text, -1);
        return switch (sides.length) {
            case 1 -> new Measure(kind, AmountReader.read(text, refusals).toSi(refusals), 0, provenance, written);
            case 2 -> withTolerance(sides[0], sides[1], provenance);
            default -> throw refusals.because("has more than one ±", text, "give one tolerance for both sides");
        };
    }

    private Measure withTolerance(String amountText, String toleranceText, Provenance provenance) {
        Amount amount = AmountReader.read(amountText, refusals);
        if (toleranceText.startsWith("-")) {
            throw refusals.because(
                    "has a negative tolerance", toleranceText, "a tolerance is a half-width, written without sign");
        }
        Matcher percent = PERCENT.matcher(toleranceText);
        if (percent.matches()) {
            double value = amount.toSi(refusals);
            return new Measure(kind, value, share(percent.group(1), amount) * Math.abs(value), provenance, written);
        }
        Amount tolerance = AmountReader.read(toleranceText, refusals);
        boolean unitAfterBoth = amount.lacksUnit() && !tolerance.lacksUnit() && !tolerance.isCompound();
        if (unitAfterBoth && !(amount.isPlainZero() && kind != QuantityKind.RATIO)) {
            amount = amount.withLastUnit(tolerance.last().unit());
        } else if (tolerance.lacksUnit() && !tolerance.isCompound()) {
            tolerance = inUnitOf(amount, tolerance);
        }
        return new Measure(kind, amount.toSi(refusals), tolerance.toSi(refusals), provenance, written);
    }

    /** A percent tolerance as a share of the value, 0 to 1. */
    private double share(String number, Amount amount) {
        if (amount.last().unit().equals("%")) {
            throw refusals.because(
                    "can be read in two ways, as percent of the value or as points",
                    number + " %",
                    "write the value as a plain number for the first, as in 0.06 ± 10 %, or leave out the last % for the"
                            + " second, as in 6 % ± 1");
        }
        Amount share = AmountReader.read(number, refusals);
        if (!share.lacksUnit() || share.isCompound()) {
            throw refusals.because("has a tolerance with both unit and percent", number + " %", "keep one of them");
        }
        double value = share.last().number().value().doubleValue() / 100;
        if (value > 1) {
            throw refusals.because(
                    "has a tolerance wider than 100 % of the value",
                    number + " %", "if it is meant, give it with a unit, as in 0.1 m ± 0.2 m");
        }
        return value;
    }

    private Amount inUnitOf(Amount amount, Amount tolerance) {
        if (amount.isCompound() && !tolerance.last().number().isZero()) {
            throw refusals.because(
                    "has a tolerance that could be in either unit",
                    tolerance.text(),
                    "write it with its unit: " + tolerance.text() + " "
                            + amount.last().unit());
        }
        return amount.lacksUnit()
                ? tolerance
                : tolerance.withLastUnit(amount.last().unit());
    }

    private Provenance provenance(String word) {
        String wanted = word.strip().toLowerCase(Locale.ROOT);
        for (Provenance stated : STATED) {
            if (stated.word().equals(wanted)) {
                return stated;
            }
        }
        List<String> words = STATED.stream().map(Provenance::word).toList();
        Optional<String> near = Spelling.nearest(wanted, words);
        String known = "write one of " + String.join(", ", words) + ", or nothing";
        boolean ours = wanted.equals(Provenance.COMPUTED.word()) || wanted.equals(Provenance.NOT_STATED.word());
        String reason = ours
                ? "says '" + wanted + "', which the program alone sets"
                : "has '" + word.strip() + "' where how it was come by should stand";
        throw refusals.because(
                reason, word.strip(), near.map(n -> "did you mean " + n + "?").orElse(known));
    }

    /** One character for each sign that is written in several ways. */
    private static String plain(String text) {
        return text.replaceAll("[\\s\\u00a0\\u2007\\u2009\\u202f]+", " ")
                .replace('\u2212', '-')
                .replace('\u2044', '/')
                .replace('\u2215', '/')
                .replaceAll("[\\u22c5\\u2022\\u2219]", "·")
                .replace("''", "\"")
                .replaceAll("[\\u2032\\u2019]", "'")
                .replaceAll("[\\u2033\\u201d]", "\"")
                .replace('\u03bc', 'µ')
                .replace('º', '°');
    }
}
