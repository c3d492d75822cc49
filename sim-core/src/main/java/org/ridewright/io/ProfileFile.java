package org.ridewright.io;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.ridewright.road.MeasuredProfile;

/**
 * A file of measured heights: a line of column names with units, then rows of a station and one or two heights. Cells are separated by
 * commas, semicolons or tabs; lines that begin with {@code #} are not looked at. The language is laid down in
 * {@code docs/scenario-file.md}.
 */
final class ProfileFile {
    private static final int MOST_ROWS = 5_000_000;
    private static final int MOST_PROBLEMS = 12;

    private final String name;
    private final Reading reading;
    private final Choice choice;
    private int further;

    /**
     * What the scenario says of the columns; whatever is left open is looked for under the usual names.
     *
     * @param stationUnit for a column whose name tells none
     * @param heightUnit for columns whose names tell none
     * @param surface whether there is a surface in a file that could say it
     */
    record Choice(
            Optional<String> station,
            Optional<String> height,
            Optional<String> left,
            Optional<String> right,
            Optional<String> stationUnit,
            Optional<String> heightUnit,
            boolean surface) {
        /** Of a profile looked at by itself. */
        static final Choice NONE = new Choice(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false);
    }

    private ProfileFile(Path file, String name, Choice choice) {
        this.name = name;
        this.reading = new Reading(file.toString());
        this.choice = choice;
    }

    /**
     * Reads a profile.
     *
     * @param name as the scenario has it
     * @throws InputException with everything wrong with the file, or its first faults
     */
    static MeasuredProfile read(Path file, String name, Choice choice) {
        return new ProfileFile(file, name, choice).read(file);
    }

    private MeasuredProfile read(Path file) {
        String text = TreeFile.text(file, reading);
        int nul = text.indexOf('\0');
        if (nul >= 0) {
            throw refused(
                    Spot.WHOLE_FILE, "", "", "is not a text file", "comma-separated values (CSV)", "export it as CSV");
        }
        char delimiter = delimiter(text);
        try (CSVParser parser = CSVParser.parse(text, format(delimiter))) {
            return rows(parser, delimiter);
        } catch (UncheckedIOException | IllegalStateException | IOException broken) {
            throw refused(
                    Spot.WHOLE_FILE,
                    "",
                    "",
                    "cannot be taken apart into cells: a quotation mark has no partner",
                    "cells without quotation marks, or in pairs of them",
                    "remove the quotation mark");
        }
    }

    private static CSVFormat format(char delimiter) {
        return CSVFormat.DEFAULT
                .builder()
                .setDelimiter(delimiter)
                .setCommentMarker('#')
                .setIgnoreEmptyLines(true)
                .setIgnoreSurroundingSpaces(true)
                .get();
    }

    /** What most often parts the cells of the first line that is no comment. */
    private static char delimiter(String text) {
        String first = text.lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .findFirst()
                .orElse("");
        if (first.indexOf(';') >= 0) {
            return ';';
        }
        return first.indexOf('\t') >= 0 ? '\t' : ',';
    }

    private MeasuredProfile rows(CSVParser parser, char delimiter) {
        ProfileColumns columns = null;
        List<Double> stations = new ArrayList<>();
        List<List<Double>> heights = new ArrayList<>();
        double before = Double.NEGATIVE_INFINITY;
        for (CSVRecord record : parser) {
            if (record.toList().stream().allMatch(String::isBlank)) {
                continue;
            }
            int line = (int) parser.getCurrentLineNumber();
            if (columns == null) {
                columns = ProfileColumns.of(record.toList(), line, choice, reading);
                columns.heights().forEach(column -> heights.add(new ArrayList<>()));
                continue;
            }
            ProfileRow row = new ProfileRow(record, line, columns, delimiter, this);
            if (!row.hasRightLength()) {
                continue;
            }
            double station = row.station(before);
            before = Double.isNaN(station) ? before : station;
            stations.add(station);
            for (int t = 0; t < heights.size(); t++) {
                heights.get(t).add(row.height(t));
            }
            if (stations.size() > MOST_ROWS) {
                throw refused(
                        new Spot(line, 1),
                        "",
                        "",
                        "is beyond " + MOST_ROWS + " rows",
                        "no more rows than that",
                        "cut the profile into several files");
            }
        }
        if (columns == null) {
            throw refused(
                    Spot.WHOLE_FILE,
                    "",
                    "",
                    "the file is empty",
                    "a line of column names such as 'station (m),left (mm),right (mm)', and rows of numbers below it",
                    "export the profile again");
        }
        finish(columns, stations, heights);
        return new MeasuredProfile(
                name,
                stations.stream().mapToDouble(Double::doubleValue).toArray(),
                heights.stream()
                        .map(track ->
                                track.stream().mapToDouble(Double::doubleValue).toArray())
                        .toList());
    }

    /** What can be judged of whole columns alone. */
    private void finish(ProfileColumns columns, List<Double> stations, List<List<Double>> heights) {
        if (further > 0) {
            reading.problem(
                    Spot.WHOLE_FILE,
                    "",
                    "",
                    "has " + further + " more cells that cannot be read",
                    "numbers",
                    "mend those above first; the rest is likely of the same kind");
        }
        if (reading.problems().isEmpty()) {
            new ProfileBounds(columns, stations, heights, reading).check();
        }
        reading.throwIfAny();
    }

    /** Notes what is wrong with a cell or row, the first dozen times. */
    void problem(Spot spot, String path, String value, String fault, String expected, String fix) {
        if (reading.problems().size() < MOST_PROBLEMS) {
            reading.problem(spot, path, value, fault, expected, fix);
        } else {
            further++;
        }
    }

    private InputException refused(Spot spot, String path, String value, String fault, String expected, String fix) {
        reading.problem(spot, path, value, fault, expected, fix);
        return new InputException(reading.problems());
    }
}
