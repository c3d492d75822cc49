package org.ridewright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.ridewright.figure.FigureFiles;
import org.ridewright.figure.FigureWriter;
import org.ridewright.io.ResultFolder;
import org.ridewright.io.VehicleFile;
import org.ridewright.report.FigureGroup;
import org.ridewright.report.LoadsMetricsJson;
import org.ridewright.report.LoadsPage;
import org.ridewright.standing.Standing;
import org.ridewright.standing.StandingVehicle;
import org.ridewright.vehicle.Vehicle;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** How a vehicle stands under each of its loads. */
@Command(
        name = "loads",
        description =
                "Tells how a vehicle stands under each of its loads: what wheels, axles and springs carry, how far springs give and what travel is left, "
                        + "stresses of leaf springs, how the body lies; writes report, figures and numbers into a folder.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class LoadsCommand implements Callable<Integer> {
    @Parameters(paramLabel = "VEHICLE", description = "A vehicle file; the ending .yaml may be left out.")
    private Path named;

    @Option(
            names = "--into",
            paramLabel = "FOLDER",
            description = "Where the results go; results/<name of the file>-loads unless stated.")
    private Path folder;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        Path file = ScenarioPath.resolve(named);
        Path target = folder != null ? folder : Path.of("results", ScenarioPath.stem(file) + "-loads");
        Vehicle vehicle = VehicleFile.read(file);
        PrintWriter out = spec.commandLine().getOut();
        try (ResultFolder results = ResultFolder.begin(target, "loads of " + vehicle.name())) {
            List<Standing> all = StandingVehicle.of(vehicle);
            LoadsTable.lines(vehicle, all).forEach(out::println);
            out.flush();
            FigureGroup group = LoadsPage.group(vehicle, all);
            List<FigureFiles> drawn = new FigureWriter().files(group.figures());
            PageFolder.write(
                    results,
                    drawn,
                    LoadsMetricsJson.render(vehicle, all),
                    LoadsPage.render(vehicle, all, group, drawn));
            results.commit();
        }
        out.println("Report: " + target.resolve("report.html"));
        return ExitCode.DONE;
    }
}
