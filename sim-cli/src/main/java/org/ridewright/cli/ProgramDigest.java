package org.ridewright.cli;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.ridewright.study.Digest;

/**
 * A hash of the program's content: every class and resource that can have to do with what a run gives, with those of libraries. What writes reports
 * is left out, and so are the dates of files.
 */
final class ProgramDigest {
    private static final List<String> OF_REPORTS = List.of("cli", "figure", "report", "sheet").stream()
            .map(p -> "org/ridewright/" + p + "/")
            .toList();

    private ProgramDigest() {}

    /** Of the program that is running. */
    static String ofThis() throws IOException {
        String[] places = System.getProperty("java.class.path", "").split(File.pathSeparator);
        return of(Arrays.stream(places).filter(p -> !p.isEmpty()).map(Path::of).toList());
    }

    /** @param places folders of classes, or jars; those that are not there are empty */
    static String of(List<Path> places) throws IOException {
        Map<String, Long> content = new TreeMap<>();
        for (Path place : places) {
            if (Files.isDirectory(place)) {
                folder(place, content);
            } else if (Files.isRegularFile(place)) {
                jar(place, content);
            }
        }
        Digest digest = new Digest();
        content.forEach((name, sum) -> digest.put(name).put(Long.toHexString(sum)));
        return digest.hex();
    }

    private static void folder(Path place, Map<String, Long> content) throws IOException {
        try (Stream<Path> files = Files.walk(place)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                CRC32 sum = new CRC32();
                sum.update(Files.readAllBytes(file));
                put(place.relativize(file).toString().replace('\\', '/'), sum.getValue(), content);
            }
        }
    }

    /** Check sums stand in a jar's list of contents. */
    private static void jar(Path place, Map<String, Long> content) throws IOException {
        try (ZipFile jar = new ZipFile(place.toFile())) {
            for (ZipEntry entry : jar.stream().filter(e -> !e.isDirectory()).toList()) {
                put(entry.getName(), entry.getCrc(), content);
            }
        }
    }

    /** Of two of one name the first is used. */
    private static void put(String name, long sum, Map<String, Long> content) {
        boolean counts = !name.startsWith("META-INF/");
        if (counts && OF_REPORTS.stream().noneMatch(name::startsWith)) {
            content.putIfAbsent(name, sum);
        }
    }
}
