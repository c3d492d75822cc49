package org.ridewright.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import tech.units.indriya.function.Calculus;
import tech.units.indriya.function.RationalNumber;
import tech.units.indriya.spi.NumberSystem;

/**
 * A number with unit, or several in descending units that add up: 3 ft 8 1/2 in.
 *
 * @param negative whether a minus sign stands in front of the whole
 * @param parts at least one; a unit may be empty in the last alone
 */
record Amount(boolean negative, List<Part> parts) {
    /** One number with the words of its unit, which may be empty. */
    record Part(Numeral number, String unit) {
        Part {
            Objects.requireNonNull(number, "number");
            Objects.requireNonNull(unit, "unit");
        }

        String text() {
            return unit.isEmpty() ? number.text() : number.text() + " " + unit;
        }
    }

    Amount {
        parts = List.copyOf(parts);
    }

    Part last() {
        return parts.get(parts.size() - 1);
    }

    boolean lacksUnit() {
        return last().unit().isEmpty();
    }

    boolean isCompound() {
        return parts.size() > 1;
    }

    boolean isPlainZero() {
        return !isCompound() && lacksUnit() && last().number().isZero();
    }

    /** This amount with {@code unit} after its last number. */
    Amount withLastUnit(String unit) {
        List<Part> completed = new ArrayList<>(parts);
        completed.set(parts.size() - 1, new Part(last().number(), unit));
        return new Amount(negative, completed);
    }

    String text() {
        return (negative ? "-" : "") + parts.stream().map(Part::text).collect(Collectors.joining(" "));
    }

    /**
     * The sum of the parts in the SI unit of {@code refusals.kind()}.
     *
     * @throws QuantityFormatException where a unit is missing, unknown or of another kind, or the parts do not descend
     */
    double toSi(Refusals refusals) {
        QuantityKind kind = refusals.kind();
        NumberSystem numbers = Calculus.currentNumberSystem();
        Number sum = RationalNumber.ZERO;
        WrittenUnit previous = null;
        for (Part part : parts) {
            WrittenUnit unit = unitOf(part, refusals);
            if (previous != null) {
                requireDescent(previous, unit, part, refusals);
            }
            sum = numbers.add(sum, unit.toSi(part.number().value(), kind));
            previous = unit;
        }
        double value = sum.doubleValue();
        if (Double.isInfinite(value)) {
            throw refusals.because("is beyond what can be held, 1.8e308 " + kind.siUnit(), text(), "");
        }
        return negative && value != 0 ? -value : value;
    }

    private WrittenUnit unitOf(Part part, Refusals refusals) {
        if (!part.unit().isEmpty()) {
            return UnitReader.read(part.unit(), refusals);
        }
        if (refusals.kind() == QuantityKind.RATIO || isPlainZero()) {
            return new WrittenUnit(KindForms.of(refusals.kind()).si(), 0, 0);
        }
        throw refusals.noUnit(part.number().text());
    }

    /** Each unit must be a whole number of the next, and each number less than that; this keeps 1'250 mm out. */
    private void requireDescent(WrittenUnit larger, WrittenUnit smaller, Part part, Refusals refusals) {
        NumberSystem numbers = Calculus.currentNumberSystem();
        Number ratio = larger.ratioTo(smaller);
        if (!numbers.isInteger(ratio) || numbers.compare(ratio, 1) <= 0) {
            throw refusals.because(
                    "does not go down from unit to unit at '" + part.text() + "'",
                    part.text(),
                    "in a sum like 3 ft 8 in each unit is a whole number of the next");
        }
        if (numbers.compare(part.number().value(), ratio) >= 0) {
            throw refusals.because(
                    "has '" + part.text() + "' where less than " + ratio + " " + part.unit() + " may follow",
                    part.text(),
                    "carry the excess over to the larger unit, or write the whole in " + part.unit());
        }
    }
}
