package org.ridewright.study;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.function.Supplier;
import java.util.zip.CRC32;

/**
 * Finished runs of a study, one line each, added as they come and never changed. A line is written when its run ends, so that a killed process
 * loses none that was finished, and forced to the disk from time to time; each carries its own check sum, so that a line that was torn, or
 * spoilt since, is known as such and its run ridden again.
 *
 * <p>A line counts for a run of that number and inputs alone: its key is a hash of all that the run rests on.
 */
public final class Journal implements AutoCloseable {
    private static final String HEAD = "ridewright study journal 1";
    private static final long MOST_RUNS = 1_000_000_000;

    private final Path file;
    private final FileChannel channel;

    private Journal(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /**
     * Opens a journal to add to, or begins it.
     *
     * @param study name, which a journal that is there must have
     * @throws IOException if the file is no journal, or of another study, or in use by another process
     */
    public static Journal open(Path file, String study) throws IOException {
        if (file.toAbsolutePath().getParent() != null) {
            Files.createDirectories(file.toAbsolutePath().getParent());
        }
        FileChannel channel =
                FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
        Journal journal = new Journal(file, channel);
        try {
            if (channel.tryLock() == null) {
                throw new IOException(
                        file + " is in use by another process; wait for it, or name another folder for the results");
            }
            journal.begin(HEAD + ": " + study.strip().replaceAll("\\s+", " "));
        } catch (IOException | RuntimeException e) {
            channel.close();
            throw e;
        }
        return journal;
    }

    private void begin(String head) throws IOException {
        byte[] wanted = (head + "\n").getBytes(StandardCharsets.UTF_8);
        ByteBuffer found = ByteBuffer.allocate(wanted.length);
        while (found.hasRemaining() && channel.read(found, found.position()) >= 0) {
            // until the head is read
        }
        boolean whole = !found.hasRemaining();
        boolean same =
                Arrays.equals(Arrays.copyOf(found.array(), found.position()), Arrays.copyOf(wanted, found.position()));
        if (!same) {
            throw new IOException(
                    file
                            + " holds runs of another study, or is no journal; remove it, or name another folder for the results");
        }
        if (!whole) {
            channel.truncate(0);
            append(wanted);
        }
        channel.position(channel.size());
        if (!endsLine()) {
            // what was torn becomes a line of its own, which its check sum tells from a whole one
            append(new byte[] {'\n'});
        }
    }

    private boolean endsLine() throws IOException {
        ByteBuffer last = ByteBuffer.allocate(1);
        channel.read(last, channel.size() - 1);
        return last.get(0) == '\n';
    }

    /** Adds a finished run. */
    public synchronized void add(long run, String key, Outcome outcome) throws IOException {
        String line = run + "\t" + key + "\t" + OutcomeText.write(outcome);
        append((line + "\t" + check(line) + "\n").getBytes(StandardCharsets.UTF_8));
    }

    /** A line that could not be written whole is taken back, so that the next begins where it should. */
    private void append(byte[] bytes) throws IOException {
        long before = channel.position();
        ByteBuffer rest = ByteBuffer.wrap(bytes);
        try {
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
        } catch (IOException full) {
            channel.truncate(before);
            channel.position(before);
            throw full;
        }
    }

    /** Forces to the disk what was added. */
    public void force() throws IOException {
        channel.force(false);
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }

    private static String check(String line) {
        CRC32 crc = new CRC32();
        crc.update(line.getBytes(StandardCharsets.UTF_8));
        return Long.toHexString(crc.getValue());
    }

    /** Takes a finished run. */
    @FunctionalInterface
    public interface Visitor {
        void finished(long run, String key, Supplier<Outcome> outcome) throws IOException;
    }

    /** All whole lines of a journal, in the order in which they were added; none if there is no such file. */
    public static void read(Path file, Visitor visitor) throws IOException {
        if (!Files.exists(file)) {
            return;
        }
        try (InputStream in = Files.newInputStream(file);
                BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            String line;
            while ((line = reader.readLine()) != null) {
                int last = line.lastIndexOf('\t');
                if (last > 0 && check(line.substring(0, last)).equals(line.substring(last + 1))) {
                    String[] parts = line.substring(0, last).split("\t", 3);
                    long run = Long.parseLong(parts[0]);
                    if (run >= 0 && run < MOST_RUNS) {
                        visitor.finished(run, parts[1], () -> OutcomeText.read(parts[2]));
                    }
                }
            }
        }
    }
}
