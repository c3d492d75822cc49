package org.ridewright.io;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.HexFormat;
import java.util.Set;
import java.util.TreeSet;
import org.ridewright.quantity.NamedValue;

/** A hash of every file that a study rests on: its scenarios, and all that is named in them or in the study itself. */
final class Fingerprint {
    private Fingerprint() {}

    /**
     * @param program version of the program
     * @param study file of the study, whose own words matter only where they name files
     * @param top its tree
     * @param scenarios files of its scenarios with their values
     */
    static String of(String program, Path study, Node top, Collection<ScenarioSource> scenarios) {
        Set<Path> files = new TreeSet<>();
        for (ScenarioSource scenario : scenarios) {
            files.add(scenario.file());
            for (NamedValue value : scenario.document().values()) {
                named(scenario.file(), value.written(), files);
            }
            gather(top, scenario.file(), files);
        }
        gather(top, study, files);
        MessageDigest digest = sha256();
        digest.update(program.getBytes(StandardCharsets.UTF_8));
        for (Path file : files) {
            try {
                digest.update(file.getFileName().toString().getBytes(StandardCharsets.UTF_8));
                digest.update(Files.readAllBytes(file));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    /** A scenario that a study reads. */
    record ScenarioSource(Path file, ScenarioDocument document) {}

    private static void gather(Node node, Path from, Set<Path> files) {
        if (node instanceof Node.Scalar scalar) {
            named(from, scalar.text(), files);
        } else if (node instanceof Node.Mapping mapping) {
            mapping.entries().values().forEach(entry -> gather(entry.value(), from, files));
        } else if (node instanceof Node.Sequence sequence) {
            sequence.items().forEach(item -> gather(item, from, files));
        }
    }

    private static void named(Path from, String text, Set<Path> files) {
        if (text.indexOf('.') <= 0 || text.indexOf('\n') >= 0 || text.length() > 300) {
            return;
        }
        try {
            Path file = from.resolveSibling(text);
            if (Files.isRegularFile(file)) {
                files.add(file.toAbsolutePath().normalize());
            }
        } catch (InvalidPathException noName) {
            return;
        }
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
