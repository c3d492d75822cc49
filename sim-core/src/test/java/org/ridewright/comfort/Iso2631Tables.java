package org.ridewright.comfort;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/** Rows of the published tables under {@code iso2631/}, comments and heading left out. */
final class Iso2631Tables {
    private Iso2631Tables() {}

    static List<List<String>> rows(String file) {
        try (InputStream in = Iso2631Tables.class.getResourceAsStream("/iso2631/" + file)) {
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

    static Weighting weighting(String symbol) {
        return Arrays.stream(Weighting.values())
                .filter(w -> w.symbol().equals(symbol))
                .findFirst()
                .orElseThrow();
    }
}
