package org.ridewright.io;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;

/** One row of a measured profile. */
record ProfileRow(CSVRecord cells, int line, ProfileColumns columns, char delimiter, ProfileFile file) {
    private static final Pattern POINT = Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d+)?");
    private static final Pattern COMMA = Pattern.compile("[-+]?(\\d+,?\\d*|,\\d+)([eE][-+]?\\d+)?");
    private static final Pattern THOUSANDS = Pattern.compile("[-+]?\\d{1,3}([ .,'’]\\d{3})+([.,]\\d+)?");
    private static final Set<String> NOTHING = Set.of("", "-", "--", "nan", "na", "n/a", "null", "none");

    /** Whether it has as many cells as there are columns; if not, that is noted. */
    boolean hasRightLength() {
        int spare = cells.size() - columns.count();
        if (spare == 1 && cells.get(columns.count()).isBlank()) {
            return true;
        }
        if (spare > 0) {
            file.problem(
                    new Spot(line, 1),
                    "",
                    String.join(String.valueOf(delimiter), cells.toList()),
                    "has " + cells.size() + " cells under " + columns.count() + " names",
                    columns.count() + " cells",
                    delimiter == ',' && cells.size() == 2 * columns.count()
                            ? "write decimals with a point, or put semicolons between the cells"
                            : "remove what is too much, or give every column a name");
        } else if (spare < 0) {
            file.problem(
                    new Spot(line, 1),
                    "",
                    String.join(String.valueOf(delimiter), cells.toList()),
                    "has " + cells.size() + (cells.size() == 1 ? " cell" : " cells") + " under " + columns.count()
                            + " names",
                    columns.count() + " cells",
                    "complete the row; a height that is missing is an empty cell");
        }
        return spare == 0;
    }

    /**
     * Its station (m); not a number where it cannot be read.
     *
     * @param before the station before (m)
     */
    double station(double before) {
        ProfileColumns.Column column = columns.station();
        String cell = cells.get(column.index());
        if (isNothing(cell)) {
            problem(column, cell, "is missing", "a station", "give the station, or remove the row");
            return Double.NaN;
        }
        double station = number(column, cell) * column.metres();
        if (station == before) {
            problem(
                    column,
                    cell,
                    "is the station of the row before it",
                    "stations that increase",
                    "remove one of the rows");
        } else if (station < before) {
            problem(
                    column,
                    cell,
                    "lies behind the station of the row before it, " + plain(before / column.metres()),
                    "stations that increase",
                    "sort the rows by station, or cut the file where the survey turned back");
        }
        return station;
    }

    /** A height (m); not a number where it is missing or cannot be read. */
    double height(int track) {
        ProfileColumns.Column column = columns.heights().get(track);
        String cell = cells.get(column.index());
        return isNothing(cell) ? Double.NaN : number(column, cell) * column.metres();
    }

    private double number(ProfileColumns.Column column, String cell) {
        if (POINT.matcher(cell).matches()) {
            return finite(column, cell, Double.parseDouble(cell));
        }
        if (delimiter != ',' && COMMA.matcher(cell).matches()) {
            return finite(column, cell, Double.parseDouble(cell.replace(',', '.')));
        }
        if (delimiter == ',' && COMMA.matcher(cell).matches()) {
            problem(
                    column,
                    cell,
                    "has a decimal comma, while commas part the cells",
                    "a number with a decimal point",
                    "export with decimal points, or with semicolons between the cells");
        } else if (THOUSANDS.matcher(cell).matches()) {
            problem(
                    column,
                    cell,
                    "has marks between its digits",
                    "a plain number",
                    "export without marks of thousands");
        } else if (cell.toLowerCase(Locale.ROOT).contains("inf")) {
            problem(column, cell, "is not finite", "a number", "leave the cell empty where there is no height");
        } else {
            problem(
                    column,
                    cell,
                    "is not a number",
                    "a number, or an empty cell where a height is missing",
                    "write the number without unit or words");
        }
        return Double.NaN;
    }

    private double finite(ProfileColumns.Column column, String cell, double value) {
        if (!(Math.abs(value) < 1e9)) {
            problem(column, cell, "is out of all measure", "a number below 10^9", "check the exponent");
            return Double.NaN;
        }
        return value;
    }

    private void problem(ProfileColumns.Column column, String cell, String fault, String expected, String fix) {
        file.problem(new Spot(line, column(column.index())), column.name(), cell, fault, expected, fix);
    }

    /** Where a cell begins, if all before it stand unquoted and without spaces around them. */
    private int column(int index) {
        int at = 1;
        for (int i = 0; i < index; i++) {
            at += cells.get(i).length() + 1;
        }
        return at;
    }

    private static boolean isNothing(String cell) {
        return NOTHING.contains(cell.strip().toLowerCase(Locale.ROOT));
    }

    private static String plain(double value) {
        return String.format(Locale.ROOT, "%.6f", value).replaceAll("\\.?0+$", "");
    }
}
