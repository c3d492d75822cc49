package org.ridewright.measurement;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * What can be told of a column from its values alone.
 *
 * @param axis of the logger
 * @param column as the file has it
 * @param resolution smallest step between two values that occur (m/s²)
 * @param clipped places where the greatest or least value stands three times or more in a row, approached by a jump
 */
public record ColumnCheck(LogAxis axis, Recording.Column column, double resolution, List<Clip> clipped) {
    private static final int SHORTEST_RUN = 3;
    private static final int STEPS_INTO_RUN = 3;

    /**
     * A run of equal extreme values.
     *
     * @param line of its first row
     * @param value (m/s²)
     * @param rows how many
     */
    public record Clip(int line, double value, int rows) {}

    /** @throws UnusableLogException if the column never changes */
    static ColumnCheck of(Recording recording, LogAxis axis) {
        Recording.Column column = recording.columns().get(axis);
        double[] values = recording.values(axis);
        double[] sorted =
                Arrays.stream(values).filter(v -> !Double.isNaN(v)).sorted().toArray();
        if (sorted.length == 0) {
            throw new UnusableLogException(LogFault.whole(
                    column.name(),
                    "",
                    "holds no value at all",
                    "numbers",
                    "name another column with --" + axis.word()));
        }
        double least = sorted[0];
        double greatest = sorted[sorted.length - 1];
        if (least == greatest && sorted.length > 1) {
            boolean zero = least == 0;
            throw new UnusableLogException(LogFault.whole(
                    column.name(),
                    number(least) + " m/s² in every row",
                    zero
                            ? "is no acceleration: the sensor was off"
                            : "is no acceleration: the sensor stood still or hung",
                    "values that change",
                    "record again, or name another column with --" + axis.word()));
        }
        double resolution = smallestStep(sorted, greatest - least);
        return new ColumnCheck(axis, column, resolution, clips(recording, values, least, greatest, resolution));
    }

    /** Error of rounding to the resolution, r.m.s., {@code q/√12} (m/s²). */
    public double roundingError() {
        return resolution / Math.sqrt(12);
    }

    /** Steps of less than a billionth of the range come from conversion. */
    private static double smallestStep(double[] sorted, double range) {
        double smallest = Double.POSITIVE_INFINITY;
        for (int i = 1; i < sorted.length; i++) {
            double step = sorted[i] - sorted[i - 1];
            if (step > 1e-9 * range) {
                smallest = Math.min(smallest, step);
            }
        }
        return smallest;
    }

    private static List<Clip> clips(Recording recording, double[] values, double least, double greatest, double step) {
        List<Clip> clips = new ArrayList<>();
        for (int i = 0; i < values.length; ) {
            int end = i + 1;
            while (end < values.length && values[end] == values[i]) {
                end++;
            }
            boolean extreme = values[i] == least || values[i] == greatest;
            if (extreme && end - i >= SHORTEST_RUN && jumps(values, i, end, step)) {
                clips.add(new Clip(recording.line(i), values[i], end - i));
            }
            i = end;
        }
        return clips;
    }

    /** A slow signal of coarse resolution also rests at its extreme, but goes there step by step. */
    private static boolean jumps(double[] values, int from, int to, double step) {
        double before = from > 0 ? Math.abs(values[from] - values[from - 1]) : 0;
        double after = to < values.length ? Math.abs(values[from] - values[to]) : 0;
        return Math.max(before, after) > STEPS_INTO_RUN * step;
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.4g", value);
    }
}
