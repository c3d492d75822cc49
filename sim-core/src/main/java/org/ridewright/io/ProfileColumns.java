package org.ridewright.io;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ridewright.quantity.Measures;
import org.ridewright.quantity.QuantityFormatException;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.check.NearestWord;

/**
 * The columns of a measured profile that are wanted.
 *
 * @param count number of all columns
 * @param station that of the stations
 * @param heights those of the heights: one, or left and right
 * @param line of their names
 */
record ProfileColumns(int count, Column station, List<Column> heights, int line) {
    private static final Pattern NAME = Pattern.compile("(.*?)\\s*(?:[(\\[]\\s*([^)\\]]*?)\\s*[)\\]])?\\s*");
    private static final Pattern NUMBER = Pattern.compile("[-+]?\\d*[.,]?\\d+([eE][-+]?\\d+)?");
    private static final List<String> STATIONS = List.of("station", "distance", "chainage", "x");
    private static final List<String> HEIGHTS = List.of("height", "elevation", "z", "profile");
    private static final List<String> LEFTS = List.of("left", "left height", "height left", "left track");
    private static final List<String> RIGHTS = List.of("right", "right height", "height right", "right track");

    /**
     * One column.
     *
     * @param index place among all, from 0
     * @param name as written, without its unit
     * @param metres what one of its units is (m)
     */
    record Column(int index, String name, double metres) {}

    private record Named(int index, String name, String unit) {}

    /** @throws InputException if a column that is needed is not there, or its unit cannot be told */
    static ProfileColumns of(List<String> cells, int line, ProfileFile.Choice choice, Reading reading) {
        return new Finder(cells, line, choice, reading).find();
    }

    private static final class Finder {
        private final List<Named> all = new ArrayList<>();
        private final int line;
        private final ProfileFile.Choice choice;
        private final Reading reading;

        Finder(List<String> cells, int line, ProfileFile.Choice choice, Reading reading) {
            this.line = line;
            this.choice = choice;
            this.reading = reading;
            if (cells.stream().allMatch(cell -> NUMBER.matcher(cell).matches())) {
                problem(
                        "",
                        String.join(",", cells),
                        "stands where the names of the columns should",
                        "a line such as 'station (m),left (mm),right (mm)'",
                        "write one above the first row of numbers");
                reading.throwIfAny();
            }
            for (int i = 0; i < cells.size(); i++) {
                Matcher matcher = NAME.matcher(cells.get(i).strip());
                boolean whole = matcher.matches();
                all.add(new Named(
                        i,
                        whole ? matcher.group(1) : cells.get(i),
                        whole && matcher.group(2) != null ? matcher.group(2) : ""));
            }
        }

        ProfileColumns find() {
            Optional<Named> station = wanted(choice.station(), STATIONS, "station");
            boolean two = choice.left().isPresent()
                    || choice.right().isPresent()
                    || (choice.height().isEmpty()
                            && (any(LEFTS).isPresent() || any(RIGHTS).isPresent()));
            if (two && choice.height().isPresent()) {
                problem(
                        "",
                        choice.height().get(),
                        "is named as the height, and another column as that of a side",
                        "height alone, or left and right",
                        "remove 'height' from the surface");
            }
            List<Named> heights = new ArrayList<>();
            if (two) {
                wanted(choice.left(), LEFTS, "left").ifPresent(heights::add);
                wanted(choice.right(), RIGHTS, "right").ifPresent(heights::add);
            } else {
                wanted(choice.height(), HEIGHTS, "height").ifPresent(heights::add);
            }
            reading.throwIfAny();
            Column stations = column(station.orElseThrow(), choice.stationUnit(), "station unit");
            List<Column> tracks = heights.stream()
                    .map(named -> column(named, choice.heightUnit(), "height unit"))
                    .toList();
            reading.throwIfAny();
            return new ProfileColumns(all.size(), stations, tracks, line);
        }

        private Optional<Named> any(List<String> words) {
            return all.stream().filter(named -> is(named, words)).findFirst();
        }

        private static boolean is(Named named, List<String> words) {
            String plain =
                    named.name().toLowerCase(Locale.ROOT).replace('_', ' ').strip();
            return words.contains(plain);
        }

        private Optional<Named> wanted(Optional<String> chosen, List<String> words, String called) {
            List<String> wanted = chosen.map(List::of).orElse(words);
            List<Named> found = all.stream()
                    .filter(named ->
                            chosen.isPresent() ? named.name().equalsIgnoreCase(chosen.get()) : is(named, words))
                    .toList();
            List<String> names =
                    all.stream().map(Named::name).filter(n -> !n.isEmpty()).toList();
            if (found.isEmpty()) {
                String fix = missing(called, names, NearestWord.to(wanted.get(0), names));
                problem(
                        called,
                        String.join(", ", names),
                        "has no column of that name",
                        "a column called " + Words.listed(wanted),
                        fix);
            } else if (found.size() > 1) {
                problem(
                        called,
                        found.get(1).name(),
                        "stands above more than one column that may be meant",
                        "one column called " + Words.listed(wanted),
                        "write another name for the other"
                                + (choice.surface() ? ", or name the one meant in the surface" : ""));
            }
            return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
        }

        private String missing(String called, List<String> names, Optional<String> near) {
            if (!choice.surface()) {
                return near.map(n -> "write '" + called + "' in place of '" + n + "', if that is the one")
                        .orElse("write '" + called + "' above the column that holds it");
            }
            return near.map(n -> "write '" + called + ": " + n + "' in the surface, if that is the one")
                    .orElse("name it in the surface, as '" + called + ": " + (names.isEmpty() ? "..." : names.get(0))
                            + "'");
        }

        private Column column(Named named, Optional<String> given, String key) {
            String unit = named.unit().isEmpty() ? given.orElse("") : named.unit();
            if (unit.isEmpty()) {
                problem(
                        named.name(),
                        "",
                        "has no unit",
                        "the unit in brackets behind the column's name, such as '" + named.name() + " (mm)'",
                        "write it there" + (choice.surface() ? ", or '" + key + ": mm' in the surface" : ""));
                return new Column(named.index(), named.name(), 1);
            }
            if (given.isPresent() && !named.unit().isEmpty() && !given.get().equals(named.unit())) {
                problem(
                        named.name(),
                        named.unit(),
                        "contradicts '" + key + ": " + given.get() + "' of the surface",
                        "one unit",
                        "remove one of the two");
            }
            try {
                return new Column(
                        named.index(),
                        named.name(),
                        Measures.parse("1 " + unit, QuantityKind.LENGTH).value());
            } catch (QuantityFormatException unknown) {
                problem(named.name(), unit, "is not a unit of length", "m, mm, cm, in or ft", "write one of these");
                return new Column(named.index(), named.name(), 1);
            }
        }

        private void problem(String path, String value, String fault, String expected, String fix) {
            reading.problem(new Spot(line, 1), path, value, fault, expected, fix);
        }
    }
}
