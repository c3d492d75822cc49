package org.ridewright.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Rows of cells set in columns of equal width, words to the left and numbers to the right, with headings between the rows. */
final class TextTable {
    private static final String GAP = "  ";

    private final int wordColumns;
    private final List<List<String>> rows = new ArrayList<>();

    /** @param wordColumns how many columns, from the left, hold words */
    TextTable(int wordColumns) {
        this.wordColumns = wordColumns;
    }

    void row(List<String> cells) {
        rows.add(List.copyOf(cells));
    }

    /** A line across all columns, with an empty one before it. */
    void heading(String text) {
        rows.add(List.of());
        rows.add(List.of(text));
    }

    List<String> lines() {
        int[] widths = new int[rows.stream().mapToInt(List::size).max().orElse(0)];
        for (List<String> row : rows) {
            for (int i = 0; row.size() > 1 && i < row.size(); i++) {
                widths[i] = Math.max(widths[i], length(row.get(i)));
            }
        }
        return rows.stream()
                .map(row -> row.size() == 1 ? row.get(0) : line(row, widths))
                .toList();
    }

    private String line(List<String> row, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < row.size(); i++) {
            String cell = row.get(i);
            char[] space = new char[widths[i] - length(cell)];
            Arrays.fill(space, ' ');
            line.append(GAP);
            if (i < wordColumns) {
                line.append(cell).append(space);
            } else {
                line.append(space).append(cell);
            }
        }
        return line.toString().stripTrailing();
    }

    private static int length(String cell) {
        return cell.codePointCount(0, cell.length());
    }
}
