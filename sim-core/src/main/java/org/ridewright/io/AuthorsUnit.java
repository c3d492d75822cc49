package org.ridewright.io;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Measures;
import org.ridewright.quantity.QuantityFormatException;
import org.ridewright.quantity.QuantityKind;

/** The unit in which an author writes, so that figures and tables can too. */
record AuthorsUnit(String name, double inSi) {
    private static final Pattern AMOUNT = Pattern.compile("([-+]?[0-9.]+(?:[eE][-+]?[0-9]+)?)\\s*([^0-9\\s].*)?");

    static AuthorsUnit of(String text, Measure measure) {
        Matcher amount = AMOUNT.matcher(text.strip());
        String unit =
                amount.matches() && amount.group(2) != null ? amount.group(2).strip() : "";
        boolean plain = !unit.isEmpty() && !unit.matches(".*[±(\\[].*") && !unit.matches(".*\\d\\s.*");
        return plain ? of(unit, measure.kind()) : ofSi(measure.kind());
    }

    private static AuthorsUnit of(String unit, QuantityKind kind) {
        try {
            return new AuthorsUnit(unit, Measures.parse("1 " + unit, kind).value());
        } catch (QuantityFormatException none) {
            return ofSi(kind);
        }
    }

    private static AuthorsUnit ofSi(QuantityKind kind) {
        return new AuthorsUnit(kind.siUnit(), 1);
    }

    AuthorsUnit same(AuthorsUnit other, QuantityKind kind) {
        return equals(other) ? this : ofSi(kind);
    }

    double of(Measure measure) {
        return measure.value() / inSi;
    }
}
