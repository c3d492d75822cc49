package org.ridewright.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.ridewright.figure.FigureFiles;
import org.ridewright.figure.FigureWriter;
import org.ridewright.roughness.SurveyedRoad;

/** Writes the figures of the sample roads into the folder that it is given, to be looked at. */
final class WriteRoadFigures {
    private WriteRoadFigures() {}

    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        for (SurveyedRoad road : List.of(SampleRoads.gravel(1000, 0.01), SampleRoads.setts())) {
            for (FigureFiles files : new FigureWriter().files(RoadFigures.of(road))) {
                Files.write(folder.resolve(files.fileName() + ".png"), files.png());
            }
        }
    }
}
