package org.ridewright.io;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;
import org.ridewright.study.Digest;

/** A hash of the program and of every file that was read for a study's scenarios. */
final class Fingerprint {
    private Fingerprint() {}

    /**
     * @param program version of the program
     * @param study file of the study, whose own words do not matter here; a folder with all files may move with it
     * @param files that were read
     */
    static String of(String program, Path study, Collection<Path> files) {
        Path folder = study.toAbsolutePath().normalize().getParent();
        Map<String, Path> byName = new TreeMap<>();
        for (Path file : files) {
            byName.put(name(folder, file.toAbsolutePath().normalize()), file);
        }
        Digest digest = new Digest().put(program);
        byName.forEach((name, file) -> {
            try {
                digest.put(name).put(Files.readAllBytes(file));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
        return digest.hex();
    }

    private static String name(Path folder, Path file) {
        boolean beside = folder != null && folder.getRoot().equals(file.getRoot());
        return (beside ? folder.relativize(file) : file).toString().replace('\\', '/');
    }
}
