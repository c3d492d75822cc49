package org.ridewright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.ridewright.figure.FigureFiles;
import org.ridewright.io.ResultFolder;

/** What every folder of results holds: figures in three formats, numbers and page. */
final class PageFolder {
    private PageFolder() {}

    static void write(ResultFolder results, List<FigureFiles> figures, String json, String page) throws IOException {
        for (FigureFiles figure : figures) {
            results.write("figures/" + figure.fileName() + ".svg", utf8(figure.svg()));
            results.write("figures/" + figure.fileName() + ".png", figure.png());
            results.write("figures/" + figure.fileName() + ".pdf", figure.pdf());
        }
        results.write("metrics.json", utf8(json));
        results.write("report.html", utf8(page));
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
