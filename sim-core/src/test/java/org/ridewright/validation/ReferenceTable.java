package org.ridewright.validation;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A table of published or independently computed values under {@code reference/}, read by the names of its columns. */
final class ReferenceTable {
    private final List<String> columns;
    private final List<List<String>> rows;

    private ReferenceTable(List<List<String>> lines) {
        columns = lines.get(0);
        rows = lines.subList(1, lines.size());
    }

    /** The table of a file, comments left out. */
    static ReferenceTable read(String file) {
        try (InputStream in = ReferenceTable.class.getResourceAsStream("/reference/" + file)) {
            return new ReferenceTable(new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(line -> Arrays.asList(line.split(",", -1)))
                    .toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every row in order. */
    List<Row> rows() {
        return rows.stream().map(Row::new).toList();
    }

    /** Value of the one row with this {@code id} and this {@code quantity}. */
    double value(String id, String quantity, String column) {
        return rows().stream()
                .filter(row -> row.text("id").equals(id) && row.text("quantity").equals(quantity))
                .reduce((first, second) -> {
                    throw new IllegalArgumentException("two rows for " + id + ", " + quantity);
                })
                .orElseThrow()
                .number(column);
    }

    /** One row. */
    final class Row {
        private final List<String> cells;

        private Row(List<String> cells) {
            this.cells = cells;
        }

        String text(String column) {
            int index = columns.indexOf(column);
            if (index < 0) {
                throw new IllegalArgumentException("no column '" + column + "' in " + columns);
            }
            return cells.get(index);
        }

        double number(String column) {
            return Double.parseDouble(text(column));
        }

        /** The number, where the cell is not blank. */
        Optional<Double> given(String column) {
            return text(column).isEmpty() ? Optional.empty() : Optional.of(number(column));
        }
    }
}
