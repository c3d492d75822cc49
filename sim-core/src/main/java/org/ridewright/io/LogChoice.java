package org.ridewright.io;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ridewright.measurement.LogAxis;

/**
 * What the user says of a log's columns; whatever is left open is found from the names.
 *
 * @param time name or number (from 1) of the column of time
 * @param axes names or numbers of the columns of acceleration
 * @param unit of the accelerations, as written
 * @param timeUnit of the times, as written
 * @param rate samples per second (Hz); the column of time is then not used
 * @param sensor a word in the names of the columns wanted, where several sensors are in one file
 */
public record LogChoice(
        Optional<String> time,
        Map<LogAxis, String> axes,
        Optional<String> unit,
        Optional<String> timeUnit,
        OptionalDouble rate,
        Optional<String> sensor) {
    /** Everything left open. */
    public static final LogChoice OPEN = new LogChoice(
            Optional.empty(), Map.of(), Optional.empty(), Optional.empty(), OptionalDouble.empty(), Optional.empty());

    public LogChoice {
        axes = Map.copyOf(axes);
    }

    /** Whether every column needed is named by number, so that a file without names will do. */
    boolean isByNumber() {
        return !axes.isEmpty()
                && axes.values().stream().allMatch(LogChoice::isNumber)
                && (rate.isPresent() || time.filter(LogChoice::isNumber).isPresent());
    }

    static boolean isNumber(String written) {
        return written.matches("[1-9]\\d{0,3}");
    }
}
