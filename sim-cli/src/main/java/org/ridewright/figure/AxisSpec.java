package org.ridewright.figure;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What an axis shows and, where wanted, from where to where.
 *
 * @param quantity name of the quantity, as in "Seat acceleration"
 * @param unit unit as printed, as in "m/s²"; blank for a pure number
 * @param min lower end (unit), or empty to take it from the data
 * @param max upper end (unit), or empty to take it from the data
 * @param log whether equal ratios take equal lengths
 * @param names what stands at 0, 1, 2 …, in place of numbers; empty for an axis of numbers
 */
public record AxisSpec(
        String quantity, String unit, OptionalDouble min, OptionalDouble max, boolean log, List<String> names) {

    /**
     * Checks the ends.
     *
     * @throws IllegalArgumentException if an end is not finite, min is not below max, or a logarithmic end is ≤ 0
     */
    public AxisSpec {
        names = List.copyOf(names);
        min.ifPresent(end -> requireEnd(quantity, "min", end, log));
        max.ifPresent(end -> requireEnd(quantity, "max", end, log));
        if (min.isPresent() && max.isPresent() && !(min.getAsDouble() < max.getAsDouble())) {
            throw new IllegalArgumentException("axis '%s': min must be < max, got %s and %s"
                    .formatted(quantity, min.getAsDouble(), max.getAsDouble()));
        }
    }

    /**
     * An axis of numbers.
     *
     * @param quantity name of the quantity
     * @param unit unit as printed
     * @param min lower end, or empty
     * @param max upper end, or empty
     * @param log whether equal ratios take equal lengths
     */
    public AxisSpec(String quantity, String unit, OptionalDouble min, OptionalDouble max, boolean log) {
        this(quantity, unit, min, max, log, List.of());
    }

    /**
     * An axis on which things stand that have names and no order but that of the list.
     *
     * @param quantity what they are; may be blank
     * @param names at least one
     * @return the axis, with room for half a thing at either end
     */
    public static AxisSpec named(String quantity, List<String> names) {
        return new AxisSpec(quantity, "", OptionalDouble.of(-0.5), OptionalDouble.of(names.size() - 0.5), false, names);
    }

    /**
     * A linear axis whose ends come from the data.
     *
     * @param quantity name of the quantity
     * @param unit unit as printed
     * @return the axis
     */
    public static AxisSpec of(String quantity, String unit) {
        return new AxisSpec(quantity, unit, OptionalDouble.empty(), OptionalDouble.empty(), false);
    }

    /**
     * An axis that is not drawn, of a sketch.
     *
     * @param from lower end
     * @param to upper end
     * @return the axis
     */
    public static AxisSpec undrawn(double from, double to) {
        return of("", "").between(from, to);
    }

    /** Whether it is not drawn. */
    boolean isUndrawn() {
        return quantity.isBlank();
    }

    /**
     * The same axis on a logarithmic scale.
     *
     * @return the logarithmic axis
     */
    public AxisSpec logarithmic() {
        return new AxisSpec(quantity, unit, min, max, true);
    }

    /**
     * The same axis from one value to another.
     *
     * @param from lower end (unit)
     * @param to upper end (unit)
     * @return the axis with both ends fixed
     */
    public AxisSpec between(double from, double to) {
        return new AxisSpec(quantity, unit, OptionalDouble.of(from), OptionalDouble.of(to), log);
    }

    /**
     * The same axis starting at a value.
     *
     * @param low lower end (unit)
     * @return the axis with its lower end fixed
     */
    public AxisSpec from(double low) {
        return new AxisSpec(quantity, unit, OptionalDouble.of(low), max, log);
    }

    private static void requireEnd(String quantity, String name, double end, boolean log) {
        if (!Double.isFinite(end)) {
            throw new IllegalArgumentException("axis '%s': %s must be finite, got %s".formatted(quantity, name, end));
        }
        if (log && end <= 0) {
            throw new IllegalArgumentException(
                    "axis '%s': %s must be > 0 on a logarithmic axis, got %s".formatted(quantity, name, end));
        }
    }
}
