package org.ridewright.measurement;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What an accelerometer logged, row by row, in SI units. Immutable by agreement: the arrays are handed over and not copied, since logs
 * are long; nobody writes into them.
 */
public final class Recording {
    /**
     * A column that is used.
     *
     * @param name as the file has it
     * @param unit as understood, such as {@code g}
     * @param unitFound how the unit was come by, such as "in the column's name"
     */
    public record Column(String name, String unit, String unitFound) {}

    private final String file;
    private final double[] times;
    private final boolean stamped;
    private final int[] lines;
    private final Map<LogAxis, Column> columns;
    private final Map<LogAxis, double[]> values;
    private final List<String> remarks;

    /**
     * @param file as its reader was given it
     * @param times instants (s) as logged, from the first; in the order of the rows, whatever that is
     * @param stamped whether the instants were logged, rather than made from a stated rate
     * @param lines line of the file of each row
     * @param columns by axis; at least one
     * @param values of each of those axes (m/s²), one a row; NaN where the cell held no value
     * @param remarks what the reader passed over or concluded
     */
    public Recording(
            String file,
            double[] times,
            boolean stamped,
            int[] lines,
            Map<LogAxis, Column> columns,
            Map<LogAxis, double[]> values,
            List<String> remarks) {
        this.file = file;
        this.times = times;
        this.stamped = stamped;
        this.lines = lines;
        this.columns = new EnumMap<>(columns);
        this.values = new EnumMap<>(values);
        this.remarks = List.copyOf(remarks);
    }

    /** As its reader was given it. */
    public String file() {
        return file;
    }

    /** Number of rows. */
    public int size() {
        return times.length;
    }

    /** Whether the instants were logged, rather than made from a stated rate. */
    public boolean stamped() {
        return stamped;
    }

    /** The columns used, by axis of the logger. */
    public Map<LogAxis, Column> columns() {
        return new EnumMap<>(columns);
    }

    /** What the reader passed over or concluded, in whole sentences. */
    public List<String> remarks() {
        return remarks;
    }

    double time(int row) {
        return times[row];
    }

    int line(int row) {
        return lines[row];
    }

    double[] values(LogAxis axis) {
        return values.get(axis);
    }

    /** Whether a row has a value on every axis. */
    boolean whole(int row) {
        for (double[] column : values.values()) {
            if (Double.isNaN(column[row])) {
                return false;
            }
        }
        return true;
    }
}
