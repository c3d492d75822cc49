package org.ridewright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.ridewright.figure.FigureFiles;
import org.ridewright.figure.FigureWriter;
import org.ridewright.io.ResultFolder;
import org.ridewright.io.VehicleFile;
import org.ridewright.modal.ModalAnalysis;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Measures;
import org.ridewright.quantity.QuantityFormatException;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.report.FigureGroup;
import org.ridewright.report.ModesMetricsJson;
import org.ridewright.report.ModesPage;
import org.ridewright.vehicle.Vehicle;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Natural frequencies, mode shapes and frequency responses of a vehicle. */
@Command(
        name = "modes",
        description =
                "Finds natural frequencies and mode shapes of a vehicle under each of its loads, with springs sliding and locked by friction, and "
                        + "what reaches its seats from waves of the road; writes report, figures and numbers into a folder.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class ModesCommand implements Callable<Integer> {
    private static final double USUAL_SPEED = 3;
    private static final List<Double> USUAL_AMPLITUDES = List.of(0.002, 0.005);

    @Parameters(paramLabel = "VEHICLE", description = "A vehicle file; the ending .yaml may be left out.")
    private Path named;

    @Option(
            names = "--into",
            paramLabel = "FOLDER",
            description = "Where the results go; results/<name of the file>-modes unless stated.")
    private Path folder;

    @Option(
            names = "--speed",
            paramLabel = "SPEED",
            description =
                    "Speed at which the axles meet waves one after the other, such as '9 mph'; half the top speed of the file, or 3 m/s, unless stated.")
    private String speed;

    @Option(
            names = "--amplitude",
            paramLabel = "LENGTH",
            description =
                    "Height of waves above their mean for what friction does, such as '5 mm'; up to three times. 2 mm and 5 mm unless stated.")
    private List<String> amplitudes = new ArrayList<>();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        List<Double> waves = amplitudes.isEmpty()
                ? USUAL_AMPLITUDES
                : amplitudes.stream()
                        .map(a -> measure("--amplitude", a, QuantityKind.LENGTH))
                        .toList();
        if (waves.size() > 3) {
            throw new ParameterException(spec.commandLine(), "--amplitude may be given three times at most");
        }
        Path file = ScenarioPath.resolve(named);
        Path target = folder != null ? folder : Path.of("results", ScenarioPath.stem(file) + "-modes");
        Vehicle vehicle = VehicleFile.read(file);
        double v = speed != null
                ? measure("--speed", speed, QuantityKind.SPEED)
                : vehicle.topSpeed().map(Measure::value).map(top -> top / 2).orElse(USUAL_SPEED);
        ModalAnalysis.Settings settings = new ModalAnalysis.Settings(v, waves);
        PrintWriter out = spec.commandLine().getOut();
        try (ResultFolder results = ResultFolder.begin(target, "modes of " + vehicle.name())) {
            List<ModalAnalysis> all = vehicle.loadCases().stream()
                    .map(load -> ModalAnalysis.of(vehicle, load, settings))
                    .toList();
            ModesTable.lines(all).forEach(out::println);
            out.flush();
            List<FigureGroup> groups = ModesPage.groups(all);
            List<FigureFiles> drawn = new FigureWriter().files(ModesPage.figures(groups));
            PageFolder.write(results, drawn, ModesMetricsJson.render(all), ModesPage.render(all, groups, drawn));
            results.commit();
        }
        out.println("Report: " + target.resolve("report.html"));
        return ExitCode.DONE;
    }

    private double measure(String option, String written, QuantityKind kind) {
        try {
            double value = Measures.parse(written, kind).value();
            if (value > 0) {
                return value;
            }
            throw new ParameterException(spec.commandLine(), option + " must be above 0, got '" + written + "'");
        } catch (QuantityFormatException refused) {
            throw new ParameterException(spec.commandLine(), option + ": " + refused.getMessage(), refused);
        }
    }
}
