package org.ridewright.figure;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Writes the sample figures into a folder, to be looked at, and tells how long a cold machine took. */
final class WriteSampleFigures {
    private WriteSampleFigures() {}

    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        int repeats = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 1;
        List<Figure> figures = new ArrayList<>();
        for (int i = 0; i < repeats; i++) {
            figures.addAll(SampleFigures.all());
        }
        long start = System.nanoTime();
        List<FigureFiles> files = new FigureWriter().files(figures);
        long end = System.nanoTime();
        for (FigureFiles each : files) {
            Files.writeString(folder.resolve(each.fileName() + ".svg"), each.svg());
            Files.write(folder.resolve(each.fileName() + ".png"), each.png());
            Files.write(folder.resolve(each.fileName() + ".pdf"), each.pdf());
        }
        System.out.printf("%d figures in three formats: %.2f s%n", figures.size(), (end - start) / 1e9);
    }
}
