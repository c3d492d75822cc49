package org.ridewright.comfort;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/** Rows of the published tables under {@code iso2631/}, comments and heading left out. */
public final class Iso2631Tables {
    /**
     * Printed values the filter contradicts: Wd at 10 Hz is printed 212 in both copies seen, between neighbours that fit
     * 201.7; Wj at 4 Hz is printed 528 in the one copy seen, the filter and its neighbours give 628.
     */
    private static final List<String> MISPRINTS = List.of("seen2_misprint", "memory_seen528");

    private Iso2631Tables() {}

    /** Whether the printed value of a row of the weightings is one that the filter contradicts. */
    public static boolean isMisprint(List<String> row) {
        return MISPRINTS.contains(row.get(6));
    }

    /** Rows of a file under {@code iso2631/}, in order. */
    public static List<List<String>> rows(String file) {
        return resource("/iso2631/" + file);
    }

    /** Rows of a table anywhere in the test resources, in order. */
    static List<List<String>> resource(String path) {
        try (InputStream in = Iso2631Tables.class.getResourceAsStream(path)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .skip(1)
                    .map(line -> Arrays.asList(line.split(",", -1)))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The weighting that the standard writes so. */
    public static Weighting weighting(String symbol) {
        return Arrays.stream(Weighting.values())
                .filter(w -> w.symbol().equals(symbol))
                .findFirst()
                .orElseThrow();
    }
}
