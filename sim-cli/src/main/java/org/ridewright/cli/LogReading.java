package org.ridewright.cli;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ridewright.io.LogChoice;
import org.ridewright.io.LogFile;
import org.ridewright.measurement.LogAxis;
import org.ridewright.measurement.Recording;
import picocli.CommandLine.Option;

/** Options that say how a log's columns are to be read. */
final class LogReading {
    @Option(
            names = "--time",
            paramLabel = "COLUMN",
            description = "Of a log: name or number (from 1) of the column of time.")
    private String time;

    @Option(
            names = "--x",
            paramLabel = "COLUMN",
            description = "Of a log: the same of the acceleration along the logger's x.")
    private String x;

    @Option(names = "--y", paramLabel = "COLUMN", description = "Along y.")
    private String y;

    @Option(names = "--z", paramLabel = "COLUMN", description = "Along z; alone, it is the vertical one.")
    private String z;

    @Option(
            names = "--sensor",
            paramLabel = "WORD",
            description = "Of a log: word in the names of the columns wanted, where one file holds several sensors.")
    private String sensor;

    @Option(names = "--unit", paramLabel = "UNIT", description = "Of a log's accelerations: m/s2, g or mg.")
    private String unit;

    @Option(names = "--time-unit", paramLabel = "UNIT", description = "Of a log's times: s, ms, us or ns.")
    private String timeUnit;

    @Option(
            names = "--rate",
            paramLabel = "HZ",
            description = "Samples per second of a log without times, or whose times are not to be trusted.")
    private Double rate;

    /** The rate is beyond what can be, if it was given and is not positive. */
    boolean hasBadRate() {
        return rate != null && !(rate > 0 && rate <= 1e9);
    }

    /** What to say of a bad rate. */
    String rateFault() {
        return "--rate must be > 0 and at most 1000000000 samples per second, got " + rate;
    }

    Recording read(Path file) {
        return LogFile.read(file, choice(Optional.ofNullable(sensor)));
    }

    /** Another sensor of the same kind of file. */
    Recording read(Path file, String otherSensor) {
        return LogFile.read(file, choice(Optional.of(otherSensor)));
    }

    private LogChoice choice(Optional<String> word) {
        Map<LogAxis, String> axes = new EnumMap<>(LogAxis.class);
        put(axes, LogAxis.X, x);
        put(axes, LogAxis.Y, y);
        put(axes, LogAxis.Z, z);
        return new LogChoice(
                Optional.ofNullable(time),
                axes,
                Optional.ofNullable(unit),
                Optional.ofNullable(timeUnit),
                rate == null ? OptionalDouble.empty() : OptionalDouble.of(rate),
                word);
    }

    private static void put(Map<LogAxis, String> axes, LogAxis axis, String column) {
        if (column != null) {
            axes.put(axis, column);
        }
    }
}
