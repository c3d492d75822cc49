package org.ridewright.io;

import java.util.List;
import java.util.regex.Pattern;
import org.ridewright.quantity.QuantityKind;

/** Numbers with a comma in them, which a list or a group of keys cuts in two. */
final class CutNumber {
    private static final Pattern DIGITS = Pattern.compile("\\d+");
    private static final Pattern UP_TO_THOUSANDS = Pattern.compile("[1-9]\\d{0,2}");
    private static final Pattern THREE_DIGITS = Pattern.compile("\\d{3}(?!\\d).*");
    private static final Pattern WITH_UNIT = Pattern.compile("\\d+(\\.\\d+)?\\s*\\D.*");

    private CutNumber() {}

    /**
     * Notes every pair of items that is one number: digits without a unit, and right after the comma a number with one.
     *
     * @return whether there was any
     */
    static boolean refuse(List<Node> items, QuantityKind kind, Reading reading) {
        boolean any = false;
        for (int i = 1; i < items.size(); i++) {
            if (items.get(i - 1) instanceof Node.Scalar first
                    && items.get(i) instanceof Node.Scalar second
                    && DIGITS.matcher(first.text()).matches()
                    && WITH_UNIT.matcher(second.text()).matches()
                    && adjoin(first, second)) {
                reading.problem(
                        first,
                        first.text() + "," + second.text(),
                        "is cut in two by its comma, which separates the items of a list",
                        Values.expected(kind),
                        "write " + joined(first.text(), second.text()));
                any = true;
            }
        }
        return any;
    }

    /** The number with neither comma: without it, with a point in its place, or as one chooses where both can be meant. */
    static String joined(String before, String after) {
        String decimal = before + "." + after;
        boolean thousands = UP_TO_THOUSANDS.matcher(before).matches()
                && THREE_DIGITS.matcher(after).matches();
        return thousands
                ? before + after + " if the comma marks thousands, " + decimal + " if it is a decimal comma"
                : decimal;
    }

    /** Nothing but the comma between them. */
    private static boolean adjoin(Node.Scalar first, Node.Scalar second) {
        return first.spot().line() == second.spot().line()
                && second.spot().column()
                        == first.spot().column() + first.text().length() + 1;
    }
}
