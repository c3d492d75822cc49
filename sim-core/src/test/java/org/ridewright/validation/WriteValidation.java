package org.ridewright.validation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;

/** Writes the table of all checks to the file named. */
final class WriteValidation {
    private WriteValidation() {}

    public static void main(String[] arguments) throws IOException {
        String text = ValidationDocument.lines().stream().map(Line::text).collect(Collectors.joining("\n", "", "\n"));
        Files.writeString(Path.of(arguments[0]), text);
    }
}
