package org.ridewright.io;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/** Writes files so that a reader, or a crash, never meets half of one. */
public final class AtomicFiles {
    private AtomicFiles() {}

    /**
     * Writes a file, in place of one of that name if there is one: into a temporary file beside it, then moved.
     *
     * @throws IOException if it cannot be written; what stood there before still does
     */
    public static void write(Path file, byte[] content) throws IOException {
        Path temporary = beside(file);
        try {
            try (FileChannel channel =
                    FileChannel.open(temporary, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
                ByteBuffer rest = ByteBuffer.wrap(content);
                while (rest.hasRemaining()) {
                    channel.write(rest);
                }
                channel.force(true);
            }
            move(temporary, file);
        } finally {
            Files.deleteIfExists(temporary);
        }
    }

    /** A name in the same folder, hidden and not in use. */
    static Path beside(Path target) {
        Path name = target.toAbsolutePath().getFileName();
        if (name == null) {
            throw new IllegalArgumentException("a file or folder needs a name, got " + target);
        }
        return target.toAbsolutePath().resolveSibling("." + name + ".partial-" + UUID.randomUUID());
    }

    /** Moves in one go where the file system can. */
    static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException plain) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
