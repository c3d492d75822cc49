package org.ridewright.io;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A measurements file in a folder with the dray, its yard and its log. */
final class MeasurementsSample {
    private static final Path SCENARIOS = Path.of("..", "scenarios");

    private MeasurementsSample() {}

    static Path in(Path folder, String text) throws IOException {
        Files.createDirectories(folder.resolve("vehicles"));
        Files.createDirectories(folder.resolve("yard"));
        copy("vehicles/dray.yaml", folder.resolve("vehicles/dray.yaml"));
        copy("logs/dray-yard.yaml", folder.resolve("yard/dray-yard.yaml"));
        copy("logs/dray-phone.csv", folder.resolve("yard/dray-phone.csv"));
        Path file = folder.resolve("yard/measured.yaml");
        Files.writeString(file, text);
        return file;
    }

    private static void copy(String from, Path to) throws IOException {
        if (!Files.exists(to)) {
            Files.copy(SCENARIOS.resolve(from), to);
        }
    }
}
