package org.ridewright.figure;

import java.util.OptionalDouble;

/**
 * What an axis shows and, where wanted, from where to where.
 *
 * @param quantity name of the quantity, as in "Seat acceleration"
 * @param unit unit as printed, as in "m/s²"; blank for a pure number
 * @param min lower end (unit), or empty to take it from the data
 * @param max upper end (unit), or empty to take it from the data
 * @param log whether equal ratios take equal lengths
 */
public record AxisSpec(String quantity, String unit, OptionalDouble min, OptionalDouble max, boolean log) {

    /**
     * Checks the ends.
     *
     * @throws IllegalArgumentException if an end is not finite, min is not below max, or a logarithmic end is ≤ 0
     */
    public AxisSpec {
        min.ifPresent(end -> requireEnd(quantity, "min", end, log));
        max.ifPresent(end -> requireEnd(quantity, "max", end, log));
        if (min.isPresent() && max.isPresent() && !(min.getAsDouble() < max.getAsDouble())) {
            throw new IllegalArgumentException("axis '%s': min must be < max, got %s and %s"
                    .formatted(quantity, min.getAsDouble(), max.getAsDouble()));
        }
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
