package org.ridewright.measurement;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.ridewright.ringdown.ExampleBounceLog;

/** Writes the example logs; the arguments are the file of the ride and that of the bounce tests. */
public final class WriteExampleLog {
    private WriteExampleLog() {}

    /** See {@link ExampleLog} and {@link ExampleBounceLog}. */
    public static void main(String[] arguments) throws IOException {
        write(Path.of(arguments[0]), ExampleLog.text());
        write(Path.of(arguments[1]), ExampleBounceLog.text());
    }

    private static void write(Path file, String text) throws IOException {
        Files.createDirectories(file.toAbsolutePath().getParent());
        Files.writeString(file, text);
    }
}
