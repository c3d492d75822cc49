package org.ridewright.io;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * How a log is written, found from its first lines.
 *
 * @param delimiter between cells
 * @param comma whether numbers have a decimal comma
 * @param names of the columns; empty names where the file has none
 * @param units of the columns, from a line of their own below the names; empty where there is none
 * @param nameLine line of the names, from 1; 0 where there are none
 * @param firstRow line of the first row of values, from 1
 */
record LogLayout(char delimiter, boolean comma, List<String> names, List<String> units, int nameLine, int firstRow) {
    private static final char[] DELIMITERS = {';', '\t', ','};

    /** Lines as one delimiter cuts them. */
    private record Cut(char delimiter, List<List<String>> lines, int first, int cells, int rows, int nameLine) {
        /** Names and values side by side count for more than many rows. */
        boolean isBetterThan(Cut other) {
            boolean fits = nameLine > 0;
            boolean otherFits = other.nameLine > 0;
            if (fits != otherFits) {
                return fits && rows > 0 || other.rows == 0;
            }
            return rows != other.rows ? rows > other.rows : cells > other.cells;
        }
    }

    /**
     * Finds how a log is written.
     *
     * @param nameless whether the user numbers the columns, so that names are not needed
     * @throws InputException if there are no rows of numbers or no names above them
     */
    static LogLayout of(LogText text, boolean nameless, Reading reading) {
        Cut best = null;
        for (char delimiter : DELIMITERS) {
            Cut cut = cut(text.beginning(), delimiter);
            if (best == null || cut.isBetterThan(best)) {
                best = cut;
            }
        }
        if (best.rows == 0) {
            LogText.refuse(
                    reading,
                    "the file holds no rows of numbers",
                    "a line of column names and below it rows of numbers, separated by commas, semicolons or tabs",
                    "export the log as CSV with its numbers");
        }
        if (best.nameLine == 0 && !nameless) {
            refuseNameless(text, best, reading);
        }
        List<String> names = new ArrayList<>();
        List<String> units = List.of();
        int nameLine = best.nameLine;
        if (nameLine > 0) {
            names.addAll(best.lines.get(nameLine - 1));
            if (isUnits(names)) {
                int above = lineAbove(best, nameLine - 1);
                if (above > 0 && best.lines.get(above - 1).size() >= names.size()) {
                    units = List.copyOf(names);
                    names = new ArrayList<>(best.lines.get(above - 1));
                    nameLine = above;
                }
            }
        } else {
            for (int i = 1; i <= best.cells; i++) {
                names.add("column " + i);
            }
        }
        names.replaceAll(String::strip);
        return new LogLayout(best.delimiter, commas(best), List.copyOf(names), units, nameLine, best.first + 1);
    }

    /** How the library is to read it. */
    CSVFormat format() {
        return format(delimiter);
    }

    private static CSVFormat format(char delimiter) {
        return CSVFormat.DEFAULT
                .builder()
                .setDelimiter(delimiter)
                .setIgnoreEmptyLines(false)
                .setTrailingData(true)
                .setLenientEof(true)
                .get();
    }

    /** Whether a line is no row: empty, or a comment. */
    static boolean isAside(List<String> cells) {
        String first = cells.isEmpty() ? "" : cells.get(0).strip();
        return first.startsWith("#")
                || first.startsWith("//")
                || first.startsWith("%")
                || cells.stream().allMatch(String::isBlank);
    }

    private static Cut cut(List<String> text, char delimiter) {
        List<List<String>> lines = new ArrayList<>();
        Map<Integer, Integer> counts = new HashMap<>();
        for (String line : text) {
            List<String> cells = cells(line, delimiter);
            lines.add(cells);
            if (isRow(cells)) {
                counts.merge(cells.size(), 1, Integer::sum);
            }
        }
        int cells = counts.entrySet().stream()
                .max(Map.Entry.<Integer, Integer>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .orElse(0);
        int rows = counts.getOrDefault(cells, 0);
        int first = 0;
        while (rows > 0 && !(isRow(lines.get(first)) && lines.get(first).size() == cells)) {
            first++;
        }
        Cut cut = new Cut(delimiter, lines, first, cells, rows, 0);
        int above = rows > 0 ? lineAbove(cut, first) : 0;
        boolean names = above > 0 && isNames(lines.get(above - 1), cells);
        return new Cut(delimiter, lines, first, cells, rows, names ? above : 0);
    }

    /** Nearest line above one (from 0) that is neither empty nor a comment, from 1; 0 for none. A comment may hold the names. */
    private static int lineAbove(Cut cut, int line) {
        int i = line - 1;
        while (i >= 0 && isAside(cut.lines.get(i))) {
            i--;
        }
        return i + 1;
    }

    private static boolean isNames(List<String> cells, int wanted) {
        boolean trailing = cells.size() == wanted + 1 && cells.get(wanted).isBlank();
        return (cells.size() == wanted || trailing)
                && cells.stream().noneMatch(LogNumber::isNumber)
                && cells.stream().anyMatch(c -> !c.isBlank());
    }

    private static boolean isUnits(List<String> cells) {
        return cells.stream().allMatch(c -> c.isBlank() || LogColumn.isUnit(c))
                && cells.stream().anyMatch(c -> !c.isBlank());
    }

    private static boolean isRow(List<String> cells) {
        boolean any = false;
        for (String cell : cells) {
            boolean number = LogNumber.isNumber(cell);
            if (!number && !LogClock.isStamp(cell) && !LogNumber.isNothing(cell)) {
                return false;
            }
            any |= number;
        }
        return any;
    }

    private static List<String> cells(String line, char delimiter) {
        try (CSVParser parser = CSVParser.parse(line, format(delimiter))) {
            List<CSVRecord> records = parser.getRecords();
            return records.isEmpty() ? List.of() : records.get(0).toList();
        } catch (IOException | IllegalStateException | UncheckedIOException notCut) {
            return List.of(line);
        }
    }

    /** Whether more numbers have a comma than a point. */
    private static boolean commas(Cut cut) {
        int commas = 0;
        int points = 0;
        for (List<String> cells : cut.lines.subList(cut.first, cut.lines.size())) {
            for (String cell : cells) {
                if (LogNumber.isNumber(cell)) {
                    commas += cell.indexOf(',') >= 0 ? 1 : 0;
                    points += cell.indexOf('.') >= 0 ? 1 : 0;
                }
            }
        }
        return commas > points;
    }

    private static void refuseNameless(LogText text, Cut cut, Reading reading) {
        int above = lineAbove(cut, cut.first);
        if (above > 0 && cut.delimiter == ',' && cut.lines.get(above - 1).size() * 2 == cut.cells) {
            reading.problem(
                    new Spot(cut.first + 1, 1),
                    "",
                    text.beginning().get(cut.first),
                    "has twice as many cells as there are column names: decimal commas cannot be told from commas between cells",
                    cut.lines.get(above - 1).size() + " cells",
                    "export with semicolons between the cells, or with decimal points");
        } else if (above > 0) {
            reading.problem(
                    new Spot(above, 1),
                    "",
                    text.beginning().get(above - 1),
                    "is not a line of column names for the rows below it, which have " + cut.cells + " cells",
                    "a name for each column",
                    "write a line such as 'time (s),x (m/s²),y (m/s²),z (m/s²)' above the first row");
        } else {
            reading.problem(
                    new Spot(1, 1),
                    "",
                    text.beginning().get(cut.first),
                    "begins the file without column names",
                    "a line of names such as 'time (s),x (m/s²),y (m/s²),z (m/s²)' above the first row",
                    "write one, or name the columns by number, as in --time 1 --x 2 --y 3 --z 4 --unit m/s2");
        }
        throw new InputException(reading.problems());
    }
}
