package org.ridewright.measurement;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes the example log; the argument is the file. */
public final class WriteExampleLog {
    private WriteExampleLog() {}

    /** See {@link ExampleLog}. */
    public static void main(String[] arguments) throws IOException {
        Path file = Path.of(arguments[0]);
        Files.createDirectories(file.toAbsolutePath().getParent());
        Files.writeString(file, ExampleLog.text());
    }
}
