package org.ridewright.quantity;

import java.util.List;
import java.util.Objects;

/**
 * Reads and writes values in the ways of the trade.
 *
 * <p>A value is written {@code <amount> [± <tolerance>] [(<provenance>)]}:
 *
 * <ul>
 *   <li><b>Amount</b>: a number and a unit. Decimals have a point; fractions are read ({@code 44 1/2 in}, {@code 44½ in}),
 *       and sums in descending units ({@code 3 ft 8 1/2 in}, {@code 2 cwt 1 qr 14 lb}). No unit is needed for a ratio and
 *       for 0. A decimal comma and marks between thousands are refused, since each can be taken for the other.
 *   <li><b>Tolerance</b>: the half-width, after {@code ±}, {@code +/-} or {@code +-}: percent, which is always of the
 *       value and at most 100; an amount; or a number in the unit of the value ({@code 21 N/mm ± 2}, {@code 21 ± 2 N/mm}).
 *   <li><b>Provenance</b>: measured, weighed, counted, estimated, drawing, handbook or calibrated, in brackets or after a
 *       comma.
 * </ul>
 *
 * <p>Conventions. The ton is 2240 lb, the cwt 112 lb, the qr 28 lb; {@code t} is 1000 kg. {@code g} is the gram, and
 * standard gravity 9.80665 m/s² where an acceleration is read. Where a force, torque, pressure, rate or damping is read, a
 * mass stands for its weight at standard gravity: an axle weight of {@code 410 kg} is 4020.7 N, a spring of
 * {@code 120 lb/in} has 120 lbf/in, {@code kg/mm} and {@code kg/cm} are kgf/mm and kgf/cm. Rotational rates and dampings
 * must be per rad or deg; a frequency is in Hz or per time, not rad/s.
 *
 * <p>Source of definitions: yard and pound by the international agreement of 1959 (1 yd = 0.9144 m, 1 lb = 0.45359237 kg);
 * standard gravity by the 3rd CGPM (1901).
 */
public final class Measures {
    private Measures() {}

    /**
     * The value that {@code text} states, in the SI unit of {@code kind}; exact definitions, so within rounding.
     *
     * @param text as a person wrote it, up to 200 characters
     * @param kind what it is to measure
     * @return the value with tolerance (0 where none is stated), provenance and the words as written
     * @throws QuantityFormatException where {@code text} is no value of {@code kind}
     */
    public static Measure parse(String text, QuantityKind kind) {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(kind, "kind");
        return MeasureReader.read(text, kind);
    }

    /**
     * The value and its tolerance for a report: lengths below 1 m in mm, rates in N/mm, rotational rates in N·m/deg,
     * pressures in kPa to GPa, angles in deg. Four significant figures or, with a tolerance, two figures of that and the
     * value to the same decimal. {@link #parse} reads it again.
     */
    public static String format(Measure measure) {
        return MeasureFormat.write(measure);
    }

    /** Values of {@code kind} as they may be written, the plainest first; each can be parsed. */
    public static List<String> acceptedForms(QuantityKind kind) {
        return KindForms.of(kind).examples();
    }

    /** The usual units of {@code kind}, the commonest first; other products and quotients that fit are read as well. */
    public static List<String> acceptedUnits(QuantityKind kind) {
        return KindForms.of(kind).units();
    }
}
