package org.ridewright.io;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ridewright.measurement.LogAxis;
import org.ridewright.measurement.LogUnit;

/**
 * A column's name, understood.
 *
 * @param index place among the columns, from 0
 * @param name as written
 * @param unit in brackets, at the end of the name, or in the line of units; empty where there is none
 * @param axis the axis it names, where it names the acceleration along one
 * @param isTime whether it names a time
 * @param isAcceleration whether its unit or a word of its name says so
 * @param sensor what else it says, such as {@code seat}: columns of one sensor say the same
 */
record LogColumn(
        int index,
        String name,
        String unit,
        Optional<LogAxis> axis,
        boolean isTime,
        boolean isAcceleration,
        String sensor) {
    private static final Pattern BRACKETS = Pattern.compile("[\\[(]\\s*([^\\])]*?)\\s*[\\])]");
    /** Letters and figures; signs only where they belong to a unit, as in m/s^2 or ms-2. */
    private static final Pattern WORD = Pattern.compile("m{1,2}/s(?:\\^?2|²)|m ?s\\^?-2|[\\p{L}\\p{N}²]+");

    private static final Pattern JOINED_AXIS =
            Pattern.compile("(?:a|acc|accel|acceleration|accelerometer|lin|linacc|g)?([xyz])");
    private static final Set<String> TIMES = Set.of(
            "time",
            "t",
            "timestamp",
            "timestamps",
            "elapsed",
            "seconds",
            "datetime",
            "date",
            "clock",
            "zeit",
            "temps",
            "tiempo",
            "tempo");
    private static final Set<String> ACCELERATION = Set.of(
            "a",
            "acc",
            "accel",
            "accelerometer",
            "acceleration",
            "accelerations",
            "beschleunigung",
            "axis",
            "sensor",
            "data",
            "value",
            "values",
            "raw",
            "calibrated",
            "g",
            "gravity",
            "with",
            "incl",
            "including",
            "total");
    private static final Set<String> OTHERS = Set.of(
            "gyro",
            "gyroscope",
            "rotation",
            "rotational",
            "angular",
            "rate",
            "mag",
            "magnetometer",
            "magnetic",
            "field",
            "compass",
            "orientation",
            "attitude",
            "quaternion",
            "velocity",
            "speed",
            "position",
            "displacement",
            "angle",
            "roll",
            "pitch",
            "yaw",
            "gps",
            "w",
            "wx",
            "wy",
            "wz",
            "gx",
            "gy",
            "gz",
            "mx",
            "my",
            "mz");
    private static final Set<String> VERTICAL = Set.of("vertical", "vert", "heave", "up");
    private static final Set<String> WITHOUT_GRAVITY = Set.of("linear", "lin", "user", "nogravity");

    /** Understands a name; {@code unitBelow} is what a line of units says, or empty. */
    static LogColumn of(int index, String written, String unitBelow) {
        String unit = unitBelow.strip();
        String name = written;
        Matcher brackets = BRACKETS.matcher(written);
        while (brackets.find()) {
            if (unit.isEmpty() && isUnit(brackets.group(1))) {
                unit = brackets.group(1);
            }
        }
        name = BRACKETS.matcher(name).replaceAll(" ");
        List<String> words = words(name);
        if (unit.isEmpty()) {
            unit = trailingUnit(words);
        }
        boolean acceleration =
                LogUnit.of(stripped(unit)).isPresent() || words.stream().anyMatch(LogColumn::isAccelerationWord);
        boolean time = !acceleration
                && words.stream().anyMatch(TIMES::contains)
                && axis(words).isEmpty();
        if (time && unit.isEmpty()) {
            unit = words.stream()
                    .filter(w -> w.length() > 1 && LogClock.unit(w).isPresent())
                    .findFirst()
                    .orElse("");
        }
        Optional<LogAxis> axis = words.stream().anyMatch(OTHERS::contains) || time ? Optional.empty() : axis(words);
        boolean other = words.stream().anyMatch(OTHERS::contains);
        return new LogColumn(index, written, stripped(unit), axis, time, acceleration && !other, sensor(words));
    }

    /** Whether a word is a unit of time or acceleration. */
    static boolean isUnit(String word) {
        String plain = stripped(word);
        return LogUnit.of(plain).isPresent() || LogClock.unit(plain).isPresent();
    }

    /** What stands in brackets after the name where a unit is looked for and is none that is known. */
    Optional<String> unknownUnit() {
        Matcher brackets = BRACKETS.matcher(name);
        String last = "";
        while (brackets.find()) {
            last = brackets.group(1);
        }
        return unit.isEmpty() && !last.isBlank() && words(last).stream().noneMatch(LogColumn::isUnderstood)
                ? Optional.of(last)
                : Optional.empty();
    }

    private static boolean isUnderstood(String word) {
        return ACCELERATION.contains(word)
                || isAccelerationWord(word)
                || OTHERS.contains(word)
                || TIMES.contains(word)
                || VERTICAL.contains(word)
                || WITHOUT_GRAVITY.contains(word)
                || LogAxisWord.is(word);
    }

    /** Whether the name says that gravity was taken off. */
    boolean isWithoutGravity() {
        return words(name).stream().anyMatch(WITHOUT_GRAVITY::contains);
    }

    /** The sensor without the words that only say that gravity was taken off. */
    String place() {
        Set<String> rest = new TreeSet<>(Arrays.asList(sensor.split(" ", -1)));
        rest.removeAll(WITHOUT_GRAVITY);
        return String.join(" ", rest);
    }

    private static boolean isAccelerationWord(String word) {
        return word.startsWith("acc") || word.equals("a") || word.equals("beschleunigung");
    }

    private static String stripped(String unit) {
        return unit.strip().replaceAll("^[\\[(]\\s*|\\s*[\\])]$", "");
    }

    private static List<String> words(String name) {
        String apart = name.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
        List<String> words = new ArrayList<>();
        Matcher matcher = WORD.matcher(apart);
        while (matcher.find()) {
            words.add(matcher.group());
        }
        return words;
    }

    /** Takes a unit off the end of the words, as in {@code acc_z_ms2}; a lone "g" or "s" too, but not the only word. */
    private static String trailingUnit(List<String> words) {
        if (words.size() < 2) {
            return "";
        }
        String last = words.get(words.size() - 1);
        if (isUnit(last) && !LogAxisWord.is(last)) {
            words.remove(words.size() - 1);
            return last;
        }
        return "";
    }

    private static Optional<LogAxis> axis(List<String> words) {
        for (String word : words) {
            Optional<LogAxis> axis = VERTICAL.contains(word) ? Optional.of(LogAxis.Z) : LogAxisWord.of(word);
            if (axis.isPresent()) {
                return axis;
            }
        }
        return Optional.empty();
    }

    private static String sensor(List<String> words) {
        Set<String> rest = new TreeSet<>();
        for (String word : words) {
            if (!ACCELERATION.contains(word)
                    && !VERTICAL.contains(word)
                    && LogAxisWord.of(word).isEmpty()
                    && !isUnit(word)) {
                rest.add(word);
            }
        }
        return String.join(" ", rest);
    }

    /** Words that name an axis, alone or joined to one for acceleration. */
    private static final class LogAxisWord {
        static Optional<LogAxis> of(String word) {
            Matcher matcher = JOINED_AXIS.matcher(word);
            return matcher.matches() && !OTHERS.contains(word)
                    ? Optional.of(LogAxis.valueOf(matcher.group(1).toUpperCase(Locale.ROOT)))
                    : Optional.empty();
        }

        static boolean is(String word) {
            return of(word).isPresent();
        }
    }
}
