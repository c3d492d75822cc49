package org.ridewright.validation;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A line of the document, and by how much each number in it may differ from another machine's.
 *
 * @param slack of the numbers in each cell of a line of a table, the first cell first; of all numbers of another line where it is
 *     one alone
 */
record Line(String text, double... slack) {
    private static final Pattern NUMBER = Pattern.compile("(?:< )?[-+]?\\d+(\\.\\d+)?(e[-+]?\\d+)?");

    /** A line without numbers that may differ. */
    static Line plain(String text) {
        return new Line(text, 0);
    }

    /** Whether another text says the same. */
    boolean agreesWith(String other) {
        if (text.equals(other)) {
            return true;
        }
        if (slack.length == 1) {
            return agree(text, other, slack[0]);
        }
        String[] own = text.split("\\|", -1);
        String[] its = other.split("\\|", -1);
        if (own.length != its.length || own.length != slack.length + 2) {
            return false;
        }
        boolean agree = true;
        for (int i = 0; i < own.length; i++) {
            boolean inside = i > 0 && i <= slack.length;
            agree &= agree(own[i], its[i], inside ? slack[i - 1] : 0);
        }
        return agree;
    }

    /** A number, or the bound below which it is. */
    private static double value(Matcher found) {
        return Double.parseDouble(found.group().replace("< ", ""));
    }

    private static boolean agree(String a, String b, double slack) {
        if (slack == 0) {
            return a.equals(b);
        }
        Matcher first = NUMBER.matcher(a);
        Matcher second = NUMBER.matcher(b);
        if (!first.replaceAll("#").equals(second.replaceAll("#"))) {
            return false;
        }
        first.reset();
        second.reset();
        while (first.find() && second.find()) {
            if (Math.abs(value(first) - value(second)) > slack) {
                return false;
            }
        }
        return true;
    }
}
