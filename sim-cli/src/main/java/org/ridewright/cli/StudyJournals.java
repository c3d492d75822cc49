package org.ridewright.cli;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.ridewright.study.Part;

/**
 * Where the finished runs of a study are kept: a folder beside its results with one journal for the whole and one for each part.
 *
 * @param folder may not be there yet
 */
record StudyJournals(Path folder) {
    private static final String ENDING = ".journal";
    private static final Pattern OF_PART = Pattern.compile("part-(\\d+)-of-(\\d+)\\.journal");

    /** @param results folder of the results */
    static StudyJournals beside(Path results) {
        Path absolute = results.toAbsolutePath().normalize();
        return new StudyJournals(absolute.resolveSibling(absolute.getFileName() + ".runs"));
    }

    /** Of the whole, or of a part. */
    Path of(Part part) {
        return folder.resolve(
                part.isWhole() ? "whole" + ENDING : "part-" + part.number() + "-of-" + part.of() + ENDING);
    }

    /** All in which there is something. */
    List<Path> all() throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.getFileName().toString().endsWith(ENDING))
                    .filter(f -> f.toFile().length() > 0)
                    .sorted(Comparator.comparing(Path::toString))
                    .toList();
        }
    }

    /**
     * Forgets all runs, or those of a part's own journal. Journals are emptied rather than deleted, since another process may be about to open one.
     *
     * @throws IOException if another process is using one of them; then all are left as they are
     */
    void forget(Part part) throws IOException {
        List<Path> journals =
                part.isWhole() ? all() : all().stream().filter(of(part)::equals).toList();
        List<FileChannel> locked = new ArrayList<>();
        try {
            for (Path journal : journals) {
                FileChannel channel = FileChannel.open(journal, StandardOpenOption.WRITE);
                locked.add(channel);
                if (!isFree(channel)) {
                    throw new IOException(
                            journal + " is in use by another process, and nothing was removed; wait for it to end");
                }
            }
            for (FileChannel channel : locked) {
                channel.truncate(0);
            }
        } finally {
            for (FileChannel channel : locked) {
                channel.close();
            }
        }
    }

    private static boolean isFree(FileChannel channel) throws IOException {
        try {
            return channel.tryLock() != null;
        } catch (OverlappingFileLockException inThisProcess) {
            return false;
        }
    }

    /** Says which parts lack how many runs, by the parts that there are journals of. */
    String lacking(BitSet done, long runs) throws IOException {
        int parts = 1;
        for (Path journal : all()) {
            Matcher part = OF_PART.matcher(journal.getFileName().toString());
            if (part.matches()) {
                parts = Math.max(parts, Integer.parseInt(part.group(2)));
            }
        }
        TreeMap<Integer, Integer> lacking = new TreeMap<>();
        for (int run = 0; run < runs; run++) {
            if (!done.get(run)) {
                lacking.merge(run % parts + 1, 1, Integer::sum);
            }
        }
        List<String> words = new ArrayList<>();
        int of = parts;
        lacking.forEach((part, count) -> words.add(count + " of part " + part + "/" + of));
        long missing = lacking.values().stream().mapToLong(Integer::longValue).sum();
        String list =
                String.join(", ", words.subList(0, Math.min(words.size(), 8))) + (words.size() > 8 ? ", ..." : "");
        return missing + " of " + runs + " runs are missing" + (parts == 1 ? "" : ": " + list);
    }
}
