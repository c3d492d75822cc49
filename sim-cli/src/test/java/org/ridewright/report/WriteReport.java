package org.ridewright.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.ridewright.figure.Figure;
import org.ridewright.figure.FigureWriter;

/** Writes the report of a scenario for looking at: scenario file name, folder to write to. */
final class WriteReport {
    private WriteReport() {}

    public static void main(String[] args) throws IOException {
        Rides rides = Rides.of(args[0]);
        List<Figure> figures = FigureGroup.of(rides.scenario(), rides.results()).stream()
                .flatMap(g -> g.figures().stream())
                .toList();
        Path folder = Files.createDirectories(Path.of(args[1]));
        String page = HtmlReport.render(rides.scenario(), rides.results(), new FigureWriter().files(figures));
        Files.writeString(folder.resolve("report.html"), page);
        Files.writeString(folder.resolve("metrics.json"), MetricsJson.render(rides.scenario(), rides.results()));
        Files.writeString(
                folder.resolve("traces.csv"), TracesCsv.render(rides.results().get(0)));
    }
}
