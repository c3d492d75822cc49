package org.ridewright.io;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Turns the cells of a column of time into seconds from the first: numbers in a unit, or stamps with hours, minutes and seconds. Of a stamp the
 * date is not looked at: a time of day that falls by more than twelve hours has passed midnight.
 */
final class LogClock {
    private static final Pattern STAMP = Pattern.compile(
            "(?:.*[^\\d:])?(\\d{1,2}):(\\d{2}):(\\d{2}(?:[.,]\\d+)?)\\s*([AaPp][Mm])?\\s*(?:Z|[+-]\\d{2}:?\\d{2})?");
    private static final double DAY = 86_400;

    /** Longest number whose double is exact enough as it is. */
    private static final int SHORT = 15;

    /** Units by their spellings, in seconds. */
    private static final Map<String, Double> UNITS = Map.ofEntries(
            Map.entry("s", 1.0),
            Map.entry("sec", 1.0),
            Map.entry("secs", 1.0),
            Map.entry("second", 1.0),
            Map.entry("seconds", 1.0),
            Map.entry("sekunden", 1.0),
            Map.entry("ms", 1e-3),
            Map.entry("msec", 1e-3),
            Map.entry("millis", 1e-3),
            Map.entry("millisecond", 1e-3),
            Map.entry("milliseconds", 1e-3),
            Map.entry("us", 1e-6),
            Map.entry("µs", 1e-6),
            Map.entry("μs", 1e-6),
            Map.entry("usec", 1e-6),
            Map.entry("micros", 1e-6),
            Map.entry("microseconds", 1e-6),
            Map.entry("ns", 1e-9),
            Map.entry("nsec", 1e-9),
            Map.entry("nanos", 1e-9),
            Map.entry("nanoseconds", 1e-9),
            Map.entry("min", 60.0),
            Map.entry("minutes", 60.0));

    private final boolean comma;
    private BigDecimal first;
    private double before = Double.NaN;
    private double days;
    private boolean stamps;

    LogClock(boolean comma) {
        this.comma = comma;
    }

    /** Seconds in a unit. */
    static Optional<Double> unit(String spelling) {
        return Optional.ofNullable(UNITS.get(spelling.strip().toLowerCase(Locale.ROOT)));
    }

    static boolean isStamp(String cell) {
        return STAMP.matcher(cell.strip()).matches();
    }

    /** Whether stamps rather than numbers were read. */
    boolean readsStamps() {
        return stamps;
    }

    /** The instant, in the column's unit and from the first cell; NaN where the cell is no instant. */
    double read(String cell) {
        Matcher stamp = STAMP.matcher(cell.strip());
        if (stamp.matches()) {
            stamps = true;
            return day(stamp);
        }
        String plain = LogNumber.plain(cell, comma);
        if (plain.isEmpty()) {
            return Double.NaN;
        }
        if (first == null) {
            first = new BigDecimal(plain);
        }
        return plain.length() <= SHORT && first.precision() <= SHORT
                ? Double.parseDouble(plain) - first.doubleValue()
                : new BigDecimal(plain).subtract(first).doubleValue();
    }

    private double day(Matcher stamp) {
        int hour = Integer.parseInt(stamp.group(1));
        if (stamp.group(4) != null) {
            hour = hour % 12 + (stamp.group(4).toLowerCase(Locale.ROOT).equals("pm") ? 12 : 0);
        }
        double time = 3600.0 * hour
                + 60.0 * Integer.parseInt(stamp.group(2))
                + Double.parseDouble(stamp.group(3).replace(',', '.'));
        if (time + days < before - DAY / 2) {
            days += DAY;
        }
        before = time + days;
        return before;
    }

    /**
     * The unit that makes the median interval one of a logger between 2 and 2000 samples a second (s); 1 where none does or it is not clear.
     */
    static double likelyUnit(double[] times) {
        double[] steps = new double[Math.max(0, times.length - 1)];
        for (int i = 1; i < times.length; i++) {
            steps[i - 1] = times[i] - times[i - 1];
        }
        double[] rising = Arrays.stream(steps).filter(dt -> dt > 0).sorted().toArray();
        if (rising.length == 0) {
            return 1;
        }
        double median = rising[rising.length / 2];
        for (double unit : new double[] {1, 1e-3, 1e-6, 1e-9}) {
            if (median * unit <= 0.5 * (1 + 1e-9)) {
                return unit;
            }
        }
        return 1;
    }

    /** Short spelling of a unit of {@link #likelyUnit}. */
    static String word(double unit) {
        return unit == 1 ? "s" : unit == 1e-3 ? "ms" : unit == 1e-6 ? "µs" : "ns";
    }
}
