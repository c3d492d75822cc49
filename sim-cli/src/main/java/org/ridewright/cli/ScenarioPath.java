package org.ridewright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Where a file is that was named without its ending. */
final class ScenarioPath {
    private static final List<String> ENDINGS = List.of(".yaml", ".yml", ".json");

    private ScenarioPath() {}

    /** The file itself, or the first that exists under the name with an ending added. */
    static Path resolve(Path named) {
        if (Files.isRegularFile(named)) {
            return named;
        }
        for (String ending : ENDINGS) {
            Path candidate = named.resolveSibling(named.getFileName() + ending);
            if (Files.isRegularFile(candidate)) {
                return candidate;
            }
        }
        return named;
    }

    /** The file's name without its ending. */
    static String stem(Path file) {
        String name = file.getFileName().toString();
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }
}
