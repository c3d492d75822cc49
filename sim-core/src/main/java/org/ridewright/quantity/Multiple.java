package org.ridewright.quantity;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A multiple of a value, as {@code × 1.5} stands for it in files.
 *
 * @param factor by which the value is multiplied
 */
public record Multiple(double factor) {
    private static final Pattern WRITTEN = Pattern.compile("(?:×|x(?=\\s*[-+]?\\.?\\d))\\s*(.*)");
    private static final Pattern NUMBER = Pattern.compile("(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?");

    /**
     * The multiple that a text states; empty if it is something else.
     *
     * @throws UnfitValueException if it begins as a multiple, but no number follows
     */
    public static Optional<Multiple> parse(String text) {
        Matcher written = WRITTEN.matcher(text.strip());
        if (!written.matches()) {
            return Optional.empty();
        }
        String number = written.group(1).strip();
        double factor = NUMBER.matcher(number).matches() ? Double.parseDouble(number) : Double.NaN;
        if (!Double.isFinite(factor)) {
            throw new UnfitValueException("'" + text.strip()
                    + "' is no multiple; behind the sign stands a number that is not negative, such as × 1.2");
        }
        return Optional.of(new Multiple(factor));
    }

    /** The words with which a file states this multiple of a value (SI unit of the kind). */
    public String of(QuantityKind kind, double value) {
        return Spread.written(kind, value * factor);
    }
}
