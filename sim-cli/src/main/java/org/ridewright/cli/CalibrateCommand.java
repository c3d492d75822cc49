package org.ridewright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.ridewright.calibration.CalibratedVehicle;
import org.ridewright.calibration.Sources;
import org.ridewright.calibration.VehicleCalibration;
import org.ridewright.fieldwork.Measurements;
import org.ridewright.figure.FigureFiles;
import org.ridewright.figure.FigureWriter;
import org.ridewright.io.MeasurementsFile;
import org.ridewright.io.ResultFolder;
import org.ridewright.io.VehicleDocument;
import org.ridewright.report.CalibrationCsv;
import org.ridewright.report.CalibrationFigures;
import org.ridewright.report.CalibrationJson;
import org.ridewright.report.CalibrationPage;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Fits a vehicle file to what was measured on the vehicle. */
@Command(
        name = "calibrate",
        description =
                "Fits the uncertain values of a vehicle file to what was measured on the vehicle, and writes the calibrated file with "
                        + "standard errors, a report, figures and numbers into a folder.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class CalibrateCommand implements Callable<Integer> {
    @Parameters(
            index = "0",
            paramLabel = "VEHICLE",
            description = "Vehicle file, YAML or JSON; its ending may be left out. It stays as it is.")
    private Path vehicle;

    @Parameters(
            index = "1",
            paramLabel = "MEASUREMENTS",
            description = "Measurements file, YAML or JSON; its ending may be left out.")
    private Path measured;

    @Option(
            names = "--into",
            paramLabel = "FOLDER",
            description = "Where the results go; results/<name of the vehicle file>-calibrated unless stated.")
    private Path folder;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        Path file = ScenarioPath.resolve(vehicle);
        VehicleDocument document = VehicleDocument.read(file);
        Measurements measurements = MeasurementsFile.read(ScenarioPath.resolve(measured));
        String stem = ScenarioPath.stem(file) + "-calibrated";
        Path target = folder != null ? folder : Path.of("results", stem);
        PrintWriter out = spec.commandLine().getOut();
        try (ResultFolder results = ResultFolder.begin(
                target, "calibration of " + document.asWritten().name())) {
            CalibratedVehicle calibrated = VehicleCalibration.of(
                    document, measurements, new Sources(MeasurementsFile::road, MeasurementsFile::recording));
            CalibrationTable.lines(calibrated).forEach(out::println);
            out.flush();
            String name = stem + ending(file);
            results.write(
                    name,
                    utf8(document.rewritten(
                            calibrated.values(),
                            calibrated.heldTogether().paths(),
                            calibrated.correlation(),
                            measurements.name())));
            write(results, measurements, calibrated, name);
            results.commit();
            out.println("Calibrated vehicle: " + target.resolve(name));
        }
        out.println("Report: " + target.resolve("report.html"));
        return ExitCode.DONE;
    }

    private static void write(
            ResultFolder results, Measurements measurements, CalibratedVehicle calibrated, String name)
            throws IOException {
        List<FigureFiles> drawn = new FigureWriter().files(CalibrationFigures.of(calibrated));
        for (FigureFiles figure : drawn) {
            results.write("figures/" + figure.fileName() + ".svg", utf8(figure.svg()));
            results.write("figures/" + figure.fileName() + ".png", figure.png());
            results.write("figures/" + figure.fileName() + ".pdf", figure.pdf());
        }
        results.write("data.csv", utf8(CalibrationCsv.data(calibrated)));
        results.write("metrics.json", utf8(CalibrationJson.render(measurements.name(), calibrated)));
        results.write("report.html", utf8(CalibrationPage.render(measurements, calibrated, name, drawn)));
    }

    private static String ending(Path file) {
        String name = file.getFileName().toString();
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(dot) : ".yaml";
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
