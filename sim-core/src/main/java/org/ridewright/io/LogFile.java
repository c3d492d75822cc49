package org.ridewright.io;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.ridewright.measurement.LogAxis;
import org.ridewright.measurement.LogFault;
import org.ridewright.measurement.LogUnit;
import org.ridewright.measurement.Recording;

/**
 * Reads a log of accelerations, as phones and loggers export it: CSV with commas, semicolons or tabs, decimal points or commas, lines of
 * remarks ahead of the names and between the rows, units in brackets, at the end of the names or in a line of their own.
 */
public final class LogFile {
    private static final double GRAVITY = 9.80665;
    private static final double NEAR = 0.1;

    private LogFile() {}

    /**
     * Reads a log.
     *
     * @throws InputException if it cannot be read; names what is wrong, each at its place
     */
    public static Recording read(Path file, LogChoice choice) {
        Reading reading = new Reading(file.toString());
        LogText text = LogText.of(file, reading);
        LogLayout layout = LogLayout.of(text, choice.isByNumber(), reading);
        LogColumns columns = LogColumns.of(layout, choice, reading);
        LogRows rows = new LogRows(layout, columns, reading);
        rows.read(text);
        List<String> remarks = new ArrayList<>();
        if (!columns.remark().isEmpty()) {
            remarks.add(columns.remark());
        }
        remarks.addAll(rows.remarks());
        double[] times = times(columns, rows, choice, layout, reading, remarks);
        Map<LogAxis, double[]> values = new EnumMap<>(LogAxis.class);
        columns.axes().keySet().forEach(axis -> values.put(axis, rows.values(axis)));
        Map<LogAxis, Recording.Column> used = units(columns, values, choice, layout, reading, remarks);
        reading.throwIfAny();
        return new Recording(file.toString(), times, columns.time().isPresent(), rows.lines(), used, values, remarks);
    }

    /** What was found wrong with a recording after it was read, as a fault of its file. */
    public static InputException fault(String file, LogFault fault) {
        return new InputException(List.of(new InputProblem(
                file,
                fault.line(),
                fault.line() > 0 ? 1 : 0,
                fault.column(),
                fault.value(),
                fault.fault(),
                fault.expected(),
                fault.fix())));
    }

    private static double[] times(
            LogColumns columns,
            LogRows rows,
            LogChoice choice,
            LogLayout layout,
            Reading reading,
            List<String> remarks) {
        double[] times = rows.times();
        double unit;
        if (columns.time().isEmpty()) {
            unit = 1 / choice.rate().orElseThrow();
        } else if (rows.hasStamps()) {
            unit = 1;
        } else {
            unit = timeUnit(columns.time().get(), times, choice, layout, reading, remarks);
        }
        for (int i = 0; i < times.length; i++) {
            times[i] *= unit;
        }
        return times;
    }

    private static double timeUnit(
            LogColumn column,
            double[] times,
            LogChoice choice,
            LogLayout layout,
            Reading reading,
            List<String> remarks) {
        Spot spot = new Spot(Math.max(1, layout.nameLine()), 1);
        if (choice.timeUnit().isPresent()) {
            Optional<Double> stated = LogClock.unit(choice.timeUnit().get());
            if (stated.isEmpty()) {
                reading.problem(
                        Spot.WHOLE_FILE,
                        "--time-unit",
                        choice.timeUnit().get(),
                        "is no unit of time",
                        "s, ms, µs (us) or ns",
                        "");
            }
            return stated.orElse(1.0);
        }
        if (!column.unit().isEmpty()) {
            Optional<Double> written = LogClock.unit(column.unit());
            if (written.isEmpty()) {
                reading.problem(
                        spot,
                        column.name(),
                        column.unit(),
                        "is no unit of time",
                        "s, ms, µs or ns",
                        "state it, as in --time-unit ms, or name another column with --time");
            }
            return written.orElse(1.0);
        }
        double likely = LogClock.likelyUnit(times);
        remarks.add(noUnit(List.of(column)) + " for the time; its steps say " + LogClock.word(likely) + ".");
        return likely;
    }

    private static Map<LogAxis, Recording.Column> units(
            LogColumns columns,
            Map<LogAxis, double[]> values,
            LogChoice choice,
            LogLayout layout,
            Reading reading,
            List<String> remarks) {
        Map<LogAxis, Recording.Column> used = new EnumMap<>(LogAxis.class);
        Optional<LogUnit> concluded = Optional.empty();
        if (choice.unit().isEmpty()
                && columns.axes().values().stream().anyMatch(c -> c.unit().isEmpty())) {
            concluded = concluded(values);
            concluded.ifPresent(unit -> remarks.add(String.format(
                    Locale.ROOT,
                    "%s for the acceleration; its mean of %.4g can only be gravity in %s, which is taken.",
                    noUnit(columns.axes().values()),
                    mean(values),
                    unit.word())));
        }
        for (Map.Entry<LogAxis, LogColumn> entry : columns.axes().entrySet()) {
            LogColumn column = entry.getValue();
            String written = choice.unit().orElse(column.unit());
            Optional<LogUnit> unit = written.isEmpty() ? concluded : LogUnit.of(written);
            if (unit.isEmpty()) {
                refuseUnit(column, written, choice, layout, reading, mean(values));
                continue;
            }
            String found = choice.unit().isPresent()
                    ? "stated"
                    : column.unit().isEmpty() ? "concluded from gravity" : "as the file says";
            used.put(
                    entry.getKey(),
                    new Recording.Column(column.name(), unit.get().word(), found));
            double[] scaled = values.get(entry.getKey());
            for (int i = 0; i < scaled.length; i++) {
                scaled[i] *= unit.get().factor();
            }
        }
        return used;
    }

    private static String noUnit(Collection<LogColumn> columns) {
        return columns.stream()
                .flatMap(column -> column.unknownUnit().stream())
                .findFirst()
                .map(word -> "No known unit is written ('" + word + "' is none)")
                .orElse("No unit is written");
    }

    private static void refuseUnit(
            LogColumn column, String written, LogChoice choice, LogLayout layout, Reading reading, double mean) {
        Spot spot = choice.unit().isPresent() ? Spot.WHOLE_FILE : new Spot(Math.max(1, layout.nameLine()), 1);
        reading.problem(
                spot,
                choice.unit().isPresent() ? "--unit" : column.name(),
                written,
                written.isEmpty()
                        ? String.format(
                                Locale.ROOT,
                                "has no %s, and a mean of %.3g does not show it as gravity would",
                                column.unknownUnit()
                                        .map(word -> "known unit ('" + word + "' is none)")
                                        .orElse("unit"),
                                mean)
                        : "is no unit of acceleration",
                "m/s², g or mg, in brackets after the name",
                "state it, as in --unit m/s2");
    }

    /** The unit in which the mean is gravity. */
    private static Optional<LogUnit> concluded(Map<LogAxis, double[]> values) {
        double mean = mean(values);
        for (LogUnit unit : List.of(LogUnit.METRE, LogUnit.GRAVITY, LogUnit.MILLI_GRAVITY)) {
            if (Math.abs(mean * unit.factor() / GRAVITY - 1) < NEAR) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }

    /** Length of the mean vector, in the unit of the columns. */
    private static double mean(Map<LogAxis, double[]> values) {
        double square = 0;
        for (double[] column : values.values()) {
            double sum = 0;
            int count = 0;
            for (double value : column) {
                if (!Double.isNaN(value)) {
                    sum += value;
                    count++;
                }
            }
            square += count > 0 ? sum / count * (sum / count) : 0;
        }
        return Math.sqrt(square);
    }
}
