package org.ridewright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The last line of a command: where the report is, and its size where a browser will take a while over it. */
final class ReportLine {
    private static final double MEGABYTE = 1e6;
    private static final double LARGE = 10 * MEGABYTE;

    private ReportLine() {}

    static String of(Path folder) throws IOException {
        Path report = folder.resolve("report.html");
        long size = Files.size(report);
        return "Report: " + report
                + (size > LARGE
                        ? " (" + Math.round(size / MEGABYTE) + " MB, which a browser takes a while to open)"
                        : "");
    }
}
