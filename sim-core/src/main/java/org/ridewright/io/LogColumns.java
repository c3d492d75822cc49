package org.ridewright.io;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ridewright.measurement.LogAxis;

/**
 * The columns of a log that are read.
 *
 * @param time empty where a rate was stated
 * @param axes of acceleration, z at least
 * @param remark what was concluded in choosing; may be empty
 */
record LogColumns(Optional<LogColumn> time, Map<LogAxis, LogColumn> axes, String remark) {
    /**
     * Chooses by what the user says, else by the names.
     *
     * @throws InputException if a column is missing, or several would do
     */
    static LogColumns of(LogLayout layout, LogChoice choice, Reading reading) {
        List<LogColumn> all = new ArrayList<>();
        for (int i = 0; i < layout.names().size(); i++) {
            String unit = i < layout.units().size() ? layout.units().get(i) : "";
            all.add(LogColumn.of(i, layout.names().get(i), unit));
        }
        Chooser chooser = new Chooser(layout, choice, all, reading);
        Optional<LogColumn> time = choice.rate().isPresent() ? Optional.empty() : chooser.time();
        Map<LogAxis, LogColumn> axes = new EnumMap<>(LogAxis.class);
        for (Map.Entry<LogAxis, String> stated : choice.axes().entrySet()) {
            chooser.named("--" + stated.getKey().word(), stated.getValue())
                    .ifPresent(column -> axes.put(stated.getKey(), column));
        }
        String remark = "";
        if (choice.axes().isEmpty()) {
            remark = chooser.byNames(axes);
        }
        reading.throwIfAny();
        if (!axes.containsKey(LogAxis.Z)) {
            chooser.refuseVertical(axes);
        }
        return new LogColumns(time, axes, remark);
    }

    /** Looks through the columns of one file. */
    private record Chooser(LogLayout layout, LogChoice choice, List<LogColumn> all, Reading reading) {
        Optional<LogColumn> time() {
            if (choice.time().isPresent()) {
                return named("--time", choice.time().get());
            }
            List<LogColumn> times = all.stream().filter(LogColumn::isTime).toList();
            if (times.isEmpty()) {
                problem(
                        "",
                        "",
                        "no column of time is among " + listed(all),
                        "a column such as 'time (s)'",
                        "name it, as in --time '"
                                + (all.isEmpty() ? "t" : all.get(0).name())
                                + "', or state the sampling rate, as in --rate 100");
                return Optional.empty();
            }
            return Optional.of(times.stream()
                    .filter(c -> c.name().toLowerCase(Locale.ROOT).contains("elapsed"))
                    .findFirst()
                    .orElse(times.get(0)));
        }

        /** By name, whatever its case, by the name without its unit, or by number. */
        Optional<LogColumn> named(String option, String wanted) {
            if (LogChoice.isNumber(wanted)
                    && all.stream().noneMatch(c -> c.name().equals(wanted))) {
                int index = Integer.parseInt(wanted) - 1;
                if (index < all.size()) {
                    return Optional.of(all.get(index));
                }
                problem(
                        option,
                        wanted,
                        "is more than the " + all.size() + " columns of the file",
                        "a number from 1 to " + all.size(),
                        "");
                return Optional.empty();
            }
            List<LogColumn> alike = all.stream()
                    .filter(c -> plain(c.name()).equals(plain(wanted)))
                    .toList();
            if (alike.isEmpty()) {
                alike = all.stream()
                        .filter(c -> plain(c.name().replaceAll("[\\[(].*", "")).equals(plain(wanted)))
                        .toList();
            }
            if (alike.size() == 1) {
                return Optional.of(alike.get(0));
            }
            List<String> names = all.stream().map(LogColumn::name).toList();
            if (alike.isEmpty()) {
                problem(option, wanted, "is the name of no column", listed(all), Hints.nearest(wanted, names));
            } else {
                problem(
                        option,
                        wanted,
                        "is the name of " + alike.size() + " columns",
                        "one column",
                        "give its number, as in " + option + " " + (alike.get(0).index() + 1));
            }
            return Optional.empty();
        }

        /** Fills in the axes of one sensor; returns what was concluded. */
        String byNames(Map<LogAxis, LogColumn> axes) {
            Map<String, Map<LogAxis, LogColumn>> sensors = sensors();
            if (sensors.isEmpty()) {
                List<LogColumn> lone =
                        all.stream().filter(c -> c.isAcceleration() && fits(c)).toList();
                if (lone.size() == 1) {
                    axes.put(LogAxis.Z, lone.get(0));
                    return "Column '" + lone.get(0).name()
                            + "' is the only acceleration and is taken as the vertical one.";
                }
                problem(
                        "",
                        "",
                        "no columns of acceleration are found among " + listed(all),
                        "columns such as 'x (m/s²)', 'acc y [g]', 'accelerometer_z'",
                        "name them, as in --z '" + all.get(all.size() - 1).name() + "'");
                return "";
            }
            String remark = "";
            if (sensors.size() == 2) {
                remark = dropLinear(sensors);
            }
            if (sensors.size() > 1) {
                String groups = sensors.values().stream()
                        .map(group -> group.values().stream()
                                .map(c -> "'" + c.name() + "'")
                                .collect(Collectors.joining(", ")))
                        .collect(Collectors.joining("; "));
                String word = sensors.keySet().stream()
                        .filter(s -> !s.isEmpty())
                        .findFirst()
                        .orElse("");
                problem(
                        "",
                        "",
                        "the file holds several sensors: " + groups,
                        "one of them to be chosen",
                        "choose one by a word of its names, as in --sensor "
                                + (word.contains(" ") ? "'" + word + "'" : word)
                                + ", or name its columns with --x, --y, --z");
                return "";
            }
            axes.putAll(sensors.values().iterator().next());
            return remark;
        }

        private Map<String, Map<LogAxis, LogColumn>> sensors() {
            Map<String, Map<LogAxis, LogColumn>> sensors = new LinkedHashMap<>();
            for (LogColumn column : all) {
                if (column.axis().isPresent() && fits(column) && !isTimeUnit(column.unit())) {
                    sensors.computeIfAbsent(column.sensor(), s -> new EnumMap<>(LogAxis.class))
                            .putIfAbsent(column.axis().get(), column);
                }
            }
            return sensors;
        }

        private static boolean isTimeUnit(String unit) {
            return LogClock.unit(unit).isPresent();
        }

        private boolean fits(LogColumn column) {
            return choice.sensor().isEmpty()
                    || plain(column.name()).contains(plain(choice.sensor().get()));
        }

        /** Of one sensor with gravity and without, that with it: it shows which way is up. */
        private static String dropLinear(Map<String, Map<LogAxis, LogColumn>> sensors) {
            List<Map.Entry<String, Map<LogAxis, LogColumn>>> both = new ArrayList<>(sensors.entrySet());
            for (int i = 0; i < 2; i++) {
                LogColumn one = both.get(i).getValue().values().iterator().next();
                LogColumn other = both.get(1 - i).getValue().values().iterator().next();
                if (one.isWithoutGravity()
                        && !other.isWithoutGravity()
                        && one.place().equals(other.place())) {
                    sensors.remove(both.get(i).getKey());
                    return "Of acceleration with and without gravity the former is read ('" + other.name()
                            + "' and its neighbours): it shows which way is up.";
                }
            }
            return "";
        }

        void refuseVertical(Map<LogAxis, LogColumn> axes) {
            String found = axes.values().stream().map(c -> "'" + c.name() + "'").collect(Collectors.joining(", "));
            problem(
                    "",
                    "",
                    "there is no vertical column: " + found + " alone will not do",
                    "the column z, or all three axes",
                    "name it, as in --z '" + all.get(all.size() - 1).name()
                            + "'; if it is one of these, name that one");
            throw new InputException(reading.problems());
        }

        private static String plain(String name) {
            return name.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        }

        private static String listed(List<LogColumn> columns) {
            return columns.stream().map(c -> "'" + c.name() + "'").collect(Collectors.joining(", "));
        }

        private void problem(String path, String value, String fault, String expected, String fix) {
            reading.problem(new Spot(Math.max(1, layout.nameLine()), 1), path, value, fault, expected, fix);
        }
    }
}
