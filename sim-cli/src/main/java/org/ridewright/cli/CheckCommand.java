package org.ridewright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ridewright.dynamics.RideException;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.io.FileKind;
import org.ridewright.io.InputException;
import org.ridewright.io.InputProblem;
import org.ridewright.io.ScenarioFile;
import org.ridewright.io.VehicleFile;
import org.ridewright.ride.Scenario;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.Vehicle;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads files and says what is wrong with them, without running anything. */
@Command(
        name = "check",
        description = "Says what is wrong with vehicle and scenario files, all faults at once, without running them.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class CheckCommand implements Callable<Integer> {
    @Parameters(arity = "1..*", paramLabel = "FILE", description = "Vehicle or scenario file, YAML or JSON.")
    private List<Path> files = new ArrayList<>();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        int worst = ExitCode.DONE;
        for (Path file : files) {
            worst = Math.max(worst, check(ScenarioPath.resolve(file), out, err));
        }
        return worst;
    }

    private static int check(Path file, PrintWriter out, PrintWriter err) {
        try {
            List<Vehicle> vehicles = FileKind.of(file) == FileKind.VEHICLE
                    ? List.of(VehicleFile.read(file))
                    : ScenarioFile.read(file).entrants().stream()
                            .map(Scenario.Entrant::vehicle)
                            .toList();
            for (Vehicle vehicle : vehicles) {
                for (LoadCase load : vehicle.loadCases()) {
                    VehicleModel.assemble(vehicle, load, Optional.empty(), false);
                }
            }
            out.println(file + ": in order");
            return ExitCode.DONE;
        } catch (InputException e) {
            for (InputProblem problem : e.problems()) {
                err.println(problem.render());
            }
            return ExitCode.BAD_INPUT;
        } catch (RideException e) {
            err.println(file + ": " + e.getMessage());
            return ExitCode.BAD_INPUT;
        }
    }
}
