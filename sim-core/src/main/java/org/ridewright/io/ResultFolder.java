package org.ridewright.io;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A folder of results that appears complete or not at all. It is built under a temporary name beside the target and moved there by
 * {@link #commit}; closing it before that removes what was built, and so does an interrupted program.
 *
 * <p>What already stands at the target is replaced if it is an empty folder, or a folder that holds a file {@value #MARKER} naming
 * the same scenario. Anything else is refused, so that results of two scenarios never mix and no other folder is lost. A file
 * that a person put into an earlier result folder is removed with it.
 */
public final class ResultFolder implements AutoCloseable {
    /** Name of the file that marks a folder as results, and says of which scenario. */
    public static final String MARKER = "ridewright-result.txt";

    private final Path target;
    private final Path building;
    private final String mark;
    private final Thread sweeper;
    private volatile boolean committed;

    private ResultFolder(Path target, Path building, String mark) {
        this.target = target;
        this.building = building;
        this.mark = mark;
        sweeper = new Thread(this::sweep, "result-folder-sweeper");
    }

    /**
     * Begins a folder of results.
     *
     * @param target where it is to stand in the end
     * @param scenario name of the scenario
     * @throws FileAlreadyExistsException if something stands there that must not be replaced
     * @throws IOException if no folder can be made there
     */
    public static ResultFolder begin(Path target, String scenario) throws IOException {
        Path absolute = target.toAbsolutePath().normalize();
        String mark = "scenario: " + scenario.strip().replaceAll("\\s+", " ") + "\n";
        refuseForeign(absolute, mark);
        if (absolute.getParent() != null) {
            Files.createDirectories(absolute.getParent());
        }
        Path building = AtomicFiles.beside(absolute);
        Files.createDirectory(building);
        Files.writeString(building.resolve(MARKER), mark);
        ResultFolder folder = new ResultFolder(absolute, building, mark);
        Runtime.getRuntime().addShutdownHook(folder.sweeper);
        return folder;
    }

    /** Run while the program is being ended from outside. */
    private void sweep() {
        try {
            if (!committed && Files.exists(building)) {
                delete(building);
            }
        } catch (IOException | UncheckedIOException left) {
            // nobody is there any more to be told; the folder's name says that it is partial
        }
    }

    /** The folder under its temporary name, to write into. */
    public Path path() {
        return building;
    }

    /**
     * Writes one of the results.
     *
     * @param name within the folder, with '/' before each folder further down
     * @throws IllegalArgumentException if the name leads out of the folder, or is the marker's
     */
    public void write(String name, byte[] content) throws IOException {
        Path file = building.resolve(name).normalize();
        if (!file.startsWith(building) || file.equals(building) || file.equals(building.resolve(MARKER))) {
            throw new IllegalArgumentException("a result must lie in the folder under a name of its own, got " + name);
        }
        Files.createDirectories(file.getParent());
        AtomicFiles.write(file, content);
    }

    /**
     * Moves the folder to its target, in place of earlier results of the same scenario.
     *
     * @throws FileAlreadyExistsException if meanwhile something stands there that must not be replaced
     */
    public void commit() throws IOException {
        if (committed) {
            throw new IllegalStateException("the results are in place already: " + target);
        }
        refuseForeign(target, mark);
        Path earlier = AtomicFiles.beside(target);
        boolean replaces = Files.exists(target, LinkOption.NOFOLLOW_LINKS);
        if (replaces) {
            AtomicFiles.move(target, earlier);
        }
        try {
            AtomicFiles.move(building, target);
        } catch (IOException failed) {
            if (replaces) {
                AtomicFiles.move(earlier, target);
            }
            throw failed;
        }
        committed = true;
        if (replaces) {
            delete(earlier);
        }
    }

    /** Removes what was built, unless it was committed. */
    @Override
    public void close() throws IOException {
        try {
            Runtime.getRuntime().removeShutdownHook(sweeper);
        } catch (IllegalStateException ending) {
            // the sweeper is at work already
            return;
        }
        if (!committed && Files.exists(building)) {
            delete(building);
        }
    }

    private static void refuseForeign(Path target, String mark) throws IOException {
        if (!Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        if (!Files.isDirectory(target, LinkOption.NOFOLLOW_LINKS)) {
            throw new FileAlreadyExistsException(
                    target.toString(), null, "is not a folder; name another place for the results");
        }
        Path marker = target.resolve(MARKER);
        if (Files.isRegularFile(marker)) {
            String found = Files.readString(marker, StandardCharsets.UTF_8);
            if (!found.equals(mark)) {
                throw new FileAlreadyExistsException(
                        target.toString(),
                        null,
                        "holds results of another " + found.strip() + "; name another folder, or remove that one");
            }
        } else if (!isEmpty(target)) {
            throw new FileAlreadyExistsException(
                    target.toString(),
                    null,
                    "holds files that are not results (there is no " + MARKER + " in it); name another folder");
        }
    }

    private static boolean isEmpty(Path folder) throws IOException {
        try (Stream<Path> content = Files.list(folder)) {
            return content.findAny().isEmpty();
        }
    }

    private static void delete(Path folder) throws IOException {
        List<Path> deepestFirst;
        try (Stream<Path> all = Files.walk(folder)) {
            deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
        } catch (UncheckedIOException failed) {
            throw failed.getCause();
        }
        for (Path path : deepestFirst) {
            Files.delete(path);
        }
    }
}
