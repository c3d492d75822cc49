package org.ridewright.io;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.ridewright.measurement.LogAxis;

/** Reads the rows of a log; goes on past faults, so that the first of them are told together. */
final class LogRows {
    private static final int MOST_FAULTS = 10;

    private final LogLayout layout;
    private final LogColumns columns;
    private final Reading reading;
    private final LogClock clock;
    private final int needed;
    private final List<String> remarks = new ArrayList<>();
    private double[] times = new double[1024];
    private int[] lines = new int[1024];
    private final Map<LogAxis, double[]> values = new EnumMap<>(LogAxis.class);
    private int count;
    private int faults;

    LogRows(LogLayout layout, LogColumns columns, Reading reading) {
        this.layout = layout;
        this.columns = columns;
        this.reading = reading;
        clock = new LogClock(layout.comma());
        columns.axes().keySet().forEach(axis -> values.put(axis, new double[1024]));
        int last = columns.time().map(LogColumn::index).orElse(0);
        for (LogColumn column : columns.axes().values()) {
            last = Math.max(last, column.index());
        }
        needed = last + 1;
    }

    /** Number of rows. */
    int count() {
        return count;
    }

    /** Whether the time is written as stamps with hours and minutes. */
    boolean hasStamps() {
        return clock.readsStamps();
    }

    /** Times in the unit of their column, from the first. */
    double[] times() {
        return Arrays.copyOf(times, count);
    }

    /** Line of each row. */
    int[] lines() {
        return Arrays.copyOf(lines, count);
    }

    /** Accelerations along an axis, in the unit of its column; NaN where a cell holds none. */
    double[] values(LogAxis axis) {
        return Arrays.copyOf(values.get(axis), count);
    }

    /** What was passed over. */
    List<String> remarks() {
        return remarks;
    }

    /**
     * Reads them all.
     *
     * @throws InputException if any is at fault
     */
    void read(LogText text) {
        try (BufferedReader in = text.open()) {
            for (int i = 1; i < layout.firstRow(); i++) {
                in.readLine();
            }
            CSVParser parser =
                    CSVParser.builder().setReader(in).setFormat(layout.format()).get();
            Iterator<CSVRecord> records = parser.iterator();
            long before = 0;
            while (records.hasNext() && faults < MOST_FAULTS) {
                CSVRecord row = records.next();
                int line = layout.firstRow() + (int) before;
                before = parser.getCurrentLineNumber();
                take(row.toList(), line, !records.hasNext());
            }
            if (faults >= MOST_FAULTS) {
                reading.problem(
                        new Spot(lines[Math.max(0, count - 1)], 1),
                        "",
                        "",
                        "has more such faults; reading ended here",
                        "",
                        "");
            }
        } catch (IOException | UncheckedIOException | IllegalStateException broken) {
            reading.problem(
                    Spot.WHOLE_FILE,
                    "",
                    "",
                    "cannot be read any further after " + count + " rows (" + broken.getMessage() + ")",
                    "rows of numbers",
                    "look at the file there: a quotation mark may be open");
        }
        reading.throwIfAny();
    }

    private void take(List<String> cells, int line, boolean last) {
        if (LogLayout.isAside(cells)) {
            return;
        }
        if (cells.size() < needed) {
            if (last) {
                remarks.add("The last line, " + line + ", breaks off and was passed over.");
            } else {
                fault(
                        cells,
                        Math.max(0, cells.size() - 1),
                        line,
                        "",
                        "ends the row after " + cells.size() + (cells.size() == 1 ? " cell" : " cells"),
                        needed + " cells at least",
                        "take this line out, or record again: rows are missing here");
            }
            return;
        }
        if (isHeader(cells)) {
            fault(
                    cells,
                    0,
                    line,
                    "",
                    "is a line of column names again: two recordings stand in this file",
                    "one recording",
                    "put what begins at line " + line + " into a file of its own");
            return;
        }
        if (cells.size() > layout.names().size() && !rest(cells).isBlank()) {
            fault(
                    cells,
                    layout.names().size(),
                    line,
                    "",
                    "is one cell more than there are column names",
                    layout.names().size() + " cells",
                    layout.delimiter() == ','
                            ? "export with decimal points, or with semicolons between the cells"
                            : "");
            return;
        }
        store(cells, line);
    }

    private String rest(List<String> cells) {
        return String.join("", cells.subList(layout.names().size(), cells.size()));
    }

    private boolean isHeader(List<String> cells) {
        if (layout.nameLine() == 0) {
            return false;
        }
        for (int i = 0; i < needed; i++) {
            if (!cells.get(i).strip().equalsIgnoreCase(layout.names().get(i))) {
                return false;
            }
        }
        return true;
    }

    private void store(List<String> cells, int line) {
        if (count == lines.length) {
            grow();
        }
        boolean good = true;
        double time = count;
        if (columns.time().isPresent()) {
            LogColumn column = columns.time().get();
            String cell = cells.get(column.index());
            time = clock.read(cell);
            if (Double.isNaN(time)) {
                good = false;
                refuseTime(cells, column, line);
            }
        }
        for (Map.Entry<LogAxis, LogColumn> entry : columns.axes().entrySet()) {
            LogColumn column = entry.getValue();
            String cell = cells.get(column.index());
            double value = LogNumber.parse(cell, layout.comma());
            if (Double.isNaN(value) && !LogNumber.isNothing(cell)) {
                good = false;
                refuseValue(cells, column, line);
            }
            values.get(entry.getKey())[count] = value;
        }
        if (good) {
            times[count] = time;
            lines[count++] = line;
        }
    }

    private void refuseTime(List<String> cells, LogColumn column, int line) {
        boolean nothing = LogNumber.isNothing(cells.get(column.index()));
        fault(
                cells,
                column.index(),
                line,
                column.name(),
                nothing ? "holds no time" : "is no time",
                "seconds, milliseconds or the like, or a stamp such as 2024-05-01T10:15:30.250",
                otherMark(cells.get(column.index()))
                        ? sameMark()
                        : "take this line out, name another column with --time, or state the sampling rate, as in --rate 100");
    }

    private void refuseValue(List<String> cells, LogColumn column, int line) {
        boolean mark = otherMark(cells.get(column.index()));
        fault(
                cells,
                column.index(),
                line,
                column.name(),
                mark
                        ? "has a decimal " + (layout.comma() ? "point" : "comma") + ", unlike the rows before"
                        : "is no number",
                "a number with a decimal " + (layout.comma() ? "comma" : "point"),
                mark ? sameMark() : "correct this cell, or leave it empty if nothing was measured");
    }

    private boolean otherMark(String cell) {
        return LogNumber.isNumber(cell) && LogNumber.plain(cell, layout.comma()).isEmpty();
    }

    private String sameMark() {
        return "write all numbers with a decimal " + (layout.comma() ? "comma" : "point");
    }

    /** The column counts letters, as editors do. */
    private void fault(
            List<String> cells, int index, int line, String path, String fault, String expected, String fix) {
        int column = 1;
        for (int i = 0; i < index; i++) {
            column += cells.get(i).length() + 1;
        }
        faults++;
        reading.problem(new Spot(line, column), path, cells.get(index).strip(), fault, expected, fix);
    }

    private void grow() {
        times = Arrays.copyOf(times, 2 * count);
        lines = Arrays.copyOf(lines, 2 * count);
        values.replaceAll((axis, column) -> Arrays.copyOf(column, 2 * column.length));
    }
}
