package org.ridewright.io;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Vehicle and scenario files among the test resources. */
final class SampleFiles {
    private SampleFiles() {}

    /** A file or folder beside the tests of this package. */
    static Path at(String name) {
        try {
            return Path.of(SampleFiles.class.getResource(name).toURI());
        } catch (URISyntaxException impossible) {
            throw new IllegalStateException(name, impossible);
        }
    }

    static String text(Path file) {
        try {
            return Files.readString(file).replace("\r\n", "\n");
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** The YAML and JSON files of a folder, by name. */
    static List<Path> in(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().matches(".*\\.(yaml|json)"))
                    .sorted()
                    .toList();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
