package org.ridewright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.ridewright.dynamics.RideException;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.io.FileKind;
import org.ridewright.io.InputException;
import org.ridewright.io.InputProblem;
import org.ridewright.io.RoadFile;
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
        description =
                "Says what is wrong with vehicle, scenario and road files, all faults at once, without running them.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class CheckCommand implements Callable<Integer> {
    @Parameters(
            arity = "1..*",
            paramLabel = "FILE",
            description = "Vehicle, scenario or road file, YAML or JSON, or measured profile, CSV.")
    private List<Path> files = new ArrayList<>();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        int code = ExitCode.DONE;
        for (Path named : files) {
            Path file = ScenarioPath.resolve(named);
            Set<String> faults = faults(file);
            if (faults.isEmpty()) {
                out.println(file + ": in order");
            } else {
                faults.forEach(err::println);
                code = ExitCode.BAD_INPUT;
            }
        }
        return code;
    }

    private static Set<String> faults(Path file) {
        Set<String> faults = new LinkedHashSet<>();
        try {
            for (Vehicle vehicle : vehicles(file)) {
                stand(vehicle, file, faults);
            }
        } catch (InputException e) {
            e.problems().stream().map(InputProblem::render).forEach(faults::add);
        }
        return faults;
    }

    private static List<Vehicle> vehicles(Path file) {
        if (!RoadFile.isProfile(file) && FileKind.of(file) == FileKind.VEHICLE) {
            return List.of(VehicleFile.read(file));
        }
        if (RoadFile.isProfile(file) || FileKind.of(file) == FileKind.ROAD) {
            RoadFile.read(file);
            return List.of();
        }
        return ScenarioFile.read(file).entrants().stream()
                .map(Scenario.Entrant::vehicle)
                .toList();
    }

    /** Stands the vehicle on its springs under each of its load cases. */
    static void stand(Vehicle vehicle, Path file, Set<String> faults) {
        for (LoadCase load : vehicle.loadCases()) {
            try {
                VehicleModel.assemble(vehicle, load, Optional.empty(), false);
            } catch (RideException e) {
                faults.add(file + "  " + e.getMessage() + (e.getMessage().endsWith(".") ? "" : "."));
            }
        }
    }
}
