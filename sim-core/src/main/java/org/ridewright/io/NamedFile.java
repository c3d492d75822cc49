package org.ridewright.io;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Finds files that another file names.
 *
 * @param folder from which names are reckoned
 */
record NamedFile(Path folder) {
    /** The file that a key names; what keeps it from being opened is noted. {@code called} says what it should be. */
    Optional<Path> of(Part part, String key, String called) {
        String expected = called + ", reckoned from the folder of this file";
        String written = part.text(key, expected);
        return written.isEmpty() ? Optional.empty() : found(part, key, written, expected);
    }

    private Optional<Path> found(Part part, String key, String written, String expected) {
        Path path;
        try {
            path = folder.resolve(written);
        } catch (InvalidPathException impossible) {
            refuse(
                    part,
                    key,
                    written,
                    "cannot be the name of a file",
                    expected,
                    "write the name as the folder shows it");
            return Optional.empty();
        }
        if (Files.isDirectory(path)) {
            refuse(part, key, written, "is a folder", expected, "name a file in it");
            return Optional.empty();
        }
        if (!Files.exists(path)) {
            String fix = TreeFile.nearestFile(path)
                    .map(near -> "write "
                            + Path.of(written).resolveSibling(near).toString().replace('\\', '/'))
                    .orElse("check the name and the folder");
            refuse(part, key, written, "is not there", expected, fix);
            return Optional.empty();
        }
        return Optional.of(path.normalize());
    }

    private static void refuse(Part part, String key, String written, String fault, String expected, String fix) {
        part.node(key).ifPresent(node -> part.reading().problem(node, written, fault, expected, fix));
    }
}
