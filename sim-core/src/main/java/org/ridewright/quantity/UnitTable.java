package org.ridewright.quantity;

import static java.util.Map.entry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tech.units.indriya.function.RationalNumber;

/**
 * The words for units. The ton is the long ton of 2240 lb, the hundredweight 112 lb, the quarter 28 lb, the stone 14 lb;
 * {@code t} is the tonne.
 */
final class UnitTable {
    /** The unit {@code times/parts} of a known one. */
    private record Definition(KnownUnit of, long times, long parts) {
        WrittenUnit unit() {
            WrittenUnit whole = new WrittenUnit(of.unit(), of.angle(), of.cycles());
            return times == 1 && parts == 1
                    ? whole
                    : new WrittenUnit(
                            whole.unit().multiply(RationalNumber.of(times, parts)), whole.angle(), whole.cycles());
        }
    }

    private static final Map<String, Definition> DEFINITIONS = definitions();

    /** Products that the trade writes as one word. */
    private static final Map<String, List<String>> JOINED = Map.ofEntries(
            entry("Nm", List.of("N", "m")),
            entry("Nmm", List.of("N", "mm")),
            entry("Ncm", List.of("N", "cm")),
            entry("kNm", List.of("kN", "m")),
            entry("Ns", List.of("N", "s")),
            entry("kNs", List.of("kN", "s")),
            entry("Nms", List.of("N", "m", "s")),
            entry("kNms", List.of("kN", "m", "s")),
            entry("kgm", List.of("kg", "m")),
            entry("kgfm", List.of("kgf", "m")),
            entry("lbft", List.of("lb", "ft")),
            entry("lbfft", List.of("lbf", "ft")),
            entry("ftlb", List.of("ft", "lb")),
            entry("ftlbf", List.of("ft", "lbf")),
            entry("lbin", List.of("lb", "in")),
            entry("inlb", List.of("in", "lb")));

    private UnitTable() {}

    /** All single words known. */
    static Set<String> words() {
        return DEFINITIONS.keySet();
    }

    static WrittenUnit radian() {
        return new Definition(KnownUnit.RADIAN, 1, 1).unit();
    }

    static WrittenUnit one() {
        return new Definition(KnownUnit.ONE, 1, 1).unit();
    }

    /**
     * The factors a word stands for, one for most; empty where the word is not known.
     *
     * @param kind decides between the gram and the acceleration g
     */
    static Optional<List<WrittenUnit>> factors(String word, QuantityKind kind) {
        if (word.equals("g") && kind == QuantityKind.ACCELERATION) {
            return Optional.of(List.of(new Definition(KnownUnit.STANDARD_GRAVITY, 1, 1).unit()));
        }
        List<String> parts = JOINED.getOrDefault(word, List.of(word));
        if (!DEFINITIONS.keySet().containsAll(parts)) {
            return Optional.empty();
        }
        List<WrittenUnit> factors = new ArrayList<>();
        for (String part : parts) {
            factors.add(DEFINITIONS.get(part).unit());
        }
        return Optional.of(factors);
    }

    private static Map<String, Definition> definitions() {
        Map<String, Definition> table = new LinkedHashMap<>();
        lengths(table);
        masses(table);
        forces(table);
        times(table);
        define(table, "rad radian radians", KnownUnit.RADIAN, 1, 1);
        define(table, "mrad milliradian milliradians", KnownUnit.RADIAN, 1, 1000);
        define(table, "deg ° degree degrees", KnownUnit.DEGREE, 1, 1);
        define(table, "% percent", KnownUnit.PERCENT, 1, 1);
        // kept in order, so that suggestions are always the same
        return Collections.unmodifiableMap(table);
    }

    private static void lengths(Map<String, Definition> table) {
        define(table, "m metre metres meter meters", KnownUnit.METRE, 1, 1);
        define(table, "km kilometre kilometres kilometer kilometers", KnownUnit.METRE, 1000, 1);
        define(table, "dm", KnownUnit.METRE, 1, 10);
        define(table, "cm centimetre centimetres centimeter centimeters", KnownUnit.METRE, 1, 100);
        define(table, "mm millimetre millimetres millimeter millimeters", KnownUnit.METRE, 1, 1000);
        define(table, "µm um micron microns", KnownUnit.METRE, 1, 1_000_000);
        define(table, "in inch inches \"", KnownUnit.INCH, 1, 1);
        define(table, "thou", KnownUnit.INCH, 1, 1000);
        define(table, "ft foot feet '", KnownUnit.FOOT, 1, 1);
        define(table, "yd yard yards", KnownUnit.YARD, 1, 1);
        define(table, "mi mile miles", KnownUnit.MILE, 1, 1);
        define(table, "l L litre litres liter liters", KnownUnit.LITRE, 1, 1);
        define(table, "cl", KnownUnit.LITRE, 1, 100);
        define(table, "ml mL cc", KnownUnit.LITRE, 1, 1000);
    }

    private static void masses(Map<String, Definition> table) {
        define(table, "kg kilogram kilograms kilogramme kilogrammes kilo kilos", KnownUnit.KILOGRAM, 1, 1);
        define(table, "g gram grams gramme grammes", KnownUnit.KILOGRAM, 1, 1000);
        define(table, "t tonne tonnes", KnownUnit.KILOGRAM, 1000, 1);
        define(table, "oz ounce ounces", KnownUnit.OUNCE, 1, 1);
        define(table, "lb lbs pound pounds", KnownUnit.POUND, 1, 1);
        define(table, "st stone stones", KnownUnit.POUND, 14, 1);
        define(table, "qr qrs quarter quarters", KnownUnit.POUND, 28, 1);
        define(table, "cwt hundredweight hundredweights", KnownUnit.POUND, 112, 1);
        define(table, "ton tons", KnownUnit.LONG_TON, 1, 1);
    }

    private static void forces(Map<String, Definition> table) {
        define(table, "N newton newtons", KnownUnit.NEWTON, 1, 1);
        define(table, "kN kilonewton kilonewtons", KnownUnit.NEWTON, 1000, 1);
        define(table, "MN", KnownUnit.NEWTON, 1_000_000, 1);
        define(table, "kgf kp", KnownUnit.KILOGRAM_FORCE, 1, 1);
        define(table, "lbf", KnownUnit.POUND_FORCE, 1, 1);
        define(table, "tonf", KnownUnit.POUND_FORCE, 2240, 1);
        define(table, "Pa pascal pascals", KnownUnit.PASCAL, 1, 1);
        define(table, "hPa mbar", KnownUnit.PASCAL, 100, 1);
        define(table, "psi", KnownUnit.POUND_PER_SQUARE_INCH, 1, 1);
        define(table, "kPa", KnownUnit.PASCAL, 1000, 1);
        define(table, "bar", KnownUnit.PASCAL, 100_000, 1);
        define(table, "MPa", KnownUnit.PASCAL, 1_000_000, 1);
        define(table, "GPa", KnownUnit.PASCAL, 1_000_000_000, 1);
    }

    private static void times(Map<String, Definition> table) {
        define(table, "s sec second seconds", KnownUnit.SECOND, 1, 1);
        define(table, "ms", KnownUnit.SECOND, 1, 1000);
        define(table, "µs us", KnownUnit.SECOND, 1, 1_000_000);
        define(table, "min mins minute minutes", KnownUnit.MINUTE, 1, 1);
        define(table, "h hr hrs hour hours", KnownUnit.HOUR, 1, 1);
        define(table, "Hz hertz", KnownUnit.HERTZ, 1, 1);
        define(table, "kHz", KnownUnit.HERTZ, 1000, 1);
        define(table, "rpm cpm", KnownUnit.PER_MINUTE, 1, 1);
        define(table, "mph", KnownUnit.MILE_PER_HOUR, 1, 1);
        define(table, "kph kmh", KnownUnit.KILOMETRE_PER_HOUR, 1, 1);
        define(table, "cycle cycles rev revs revolution revolutions", KnownUnit.CYCLE, 1, 1);
    }

    private static void define(Map<String, Definition> table, String words, KnownUnit of, long times, long parts) {
        for (String word : words.split(" ", -1)) {
            if (table.put(word, new Definition(of, times, parts)) != null) {
                throw new IllegalStateException("unit '" + word + "' is defined twice");
            }
        }
    }
}
