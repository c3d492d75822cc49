package org.ridewright.figure;

import java.util.Arrays;
import java.util.Objects;

/**
 * One named run of samples and how it is drawn. Immutable; a y of NaN is a gap. A loop should be given once round: dashes
 * drawn over each other make a full line.
 */
public final class Series {
    private final String name;
    private final double[] x;
    private final double[] y;
    private final LineStyle style;
    private final Tone tone;
    private final Trace trace;

    /**
     * A series of samples.
     *
     * @param name name in the legend, not blank
     * @param x abscissae (unit of the x axis), n ≥ 1 values, finite; copied
     * @param y ordinates (unit of the y axis), n values, finite or NaN for a gap; copied
     * @param style line style
     * @param tone colour
     * @param trace line, steps or marks
     * @throws IllegalArgumentException if lengths differ, there is no sample, or a value is not allowed
     */
    public Series(String name, double[] x, double[] y, LineStyle style, Tone tone, Trace trace) {
        this.name = Objects.requireNonNull(name);
        this.x = x.clone();
        this.y = y.clone();
        this.style = Objects.requireNonNull(style);
        this.tone = Objects.requireNonNull(tone);
        this.trace = Objects.requireNonNull(trace);
        requireUsable();
    }

    /**
     * The n-th line of a panel: tone and line style both change with {@code order}, so that any two of the first five
     * differ in both.
     *
     * @param order place in the panel, from 0
     * @param name name in the legend
     * @param x abscissae (unit of the x axis)
     * @param y ordinates (unit of the y axis)
     * @return the series as a line
     */
    public static Series line(int order, String name, double[] x, double[] y) {
        Look look = Look.of(order);
        return new Series(name, x, y, look.style(), look.tone(), Trace.LINE);
    }

    /**
     * The n-th set of measured points of a panel.
     *
     * @param order place in the panel, from 0
     * @param name name in the legend
     * @param x abscissae (unit of the x axis)
     * @param y ordinates (unit of the y axis)
     * @return the series as marks without a line
     */
    public static Series marks(int order, String name, double[] x, double[] y) {
        Look look = Look.of(order);
        return new Series(name, x, y, look.style(), look.tone(), Trace.MARKS);
    }

    /**
     * An entry of the legend that says what a number on the horizontal axis means.
     *
     * @param at the number
     * @param name what it means
     * @return a series that is named and not drawn
     */
    public static Series key(int at, String name) {
        return new Series(
                at + ": " + name, new double[] {at}, new double[] {Double.NaN}, LineStyle.SOLID, Tone.INK, Trace.KEY);
    }

    /**
     * The same samples drawn in another way.
     *
     * @param other line, steps or marks
     * @return the series with that trace
     */
    public Series as(Trace other) {
        return new Series(name, x, y, style, tone, other);
    }

    /**
     * Name in the legend.
     *
     * @return the name
     */
    public String name() {
        return name;
    }

    /**
     * Abscissae.
     *
     * @return a copy (unit of the x axis)
     */
    public double[] x() {
        return x.clone();
    }

    /**
     * Ordinates.
     *
     * @return a copy (unit of the y axis); NaN is a gap
     */
    public double[] y() {
        return y.clone();
    }

    /**
     * Line style.
     *
     * @return the style
     */
    public LineStyle style() {
        return style;
    }

    /**
     * Colour.
     *
     * @return the tone
     */
    public Tone tone() {
        return tone;
    }

    /**
     * Line, steps or marks.
     *
     * @return the trace
     */
    public Trace trace() {
        return trace;
    }

    /**
     * Whether x never decreases, as in a time trace.
     *
     * @return true if each abscissa is ≥ the one before
     */
    boolean runsForward() {
        for (int i = 1; i < x.length; i++) {
            if (x[i] < x[i - 1]) {
                return false;
            }
        }
        return true;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Series that
                && name.equals(that.name)
                && style == that.style
                && tone == that.tone
                && trace == that.trace
                && Arrays.equals(x, that.x)
                && Arrays.equals(y, that.y);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, style, tone, trace, Arrays.hashCode(x), Arrays.hashCode(y));
    }

    @Override
    public String toString() {
        return "Series[%s, %d samples, %s, %s, %s]".formatted(name, x.length, style, tone, trace);
    }

    private void requireUsable() {
        if (name.isBlank()) {
            throw new IllegalArgumentException("series name must not be blank");
        }
        if (x.length != y.length || x.length == 0) {
            throw new IllegalArgumentException("series '%s': x and y must have the same length ≥ 1, got %d and %d"
                    .formatted(name, x.length, y.length));
        }
        for (int i = 0; i < x.length; i++) {
            if (!Double.isFinite(x[i])) {
                throw new IllegalArgumentException(
                        "series '%s': x[%d] must be finite, got %s".formatted(name, i, x[i]));
            }
            if (Double.isInfinite(y[i])) {
                throw new IllegalArgumentException(
                        "series '%s': y[%d] must be finite or NaN, got %s".formatted(name, i, y[i]));
            }
        }
    }

    /** Tone and line style by order. */
    private record Look(LineStyle style, Tone tone) {
        static Look of(int order) {
            return switch (Math.floorMod(order, 5)) {
                case 0 -> new Look(LineStyle.SOLID, Tone.INK);
                case 1 -> new Look(LineStyle.DASH, Tone.RUST);
                case 2 -> new Look(LineStyle.LONG_DASH, Tone.TEAL);
                case 3 -> new Look(LineStyle.DASH_DOT, Tone.NAVY);
                default -> new Look(LineStyle.DOT, Tone.AMBER);
            };
        }
    }
}
