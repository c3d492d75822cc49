package org.ridewright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.ridewright.io.FileKind;
import org.ridewright.io.InputException;
import org.ridewright.io.InputProblem;
import org.ridewright.io.MeasurementsFile;
import org.ridewright.io.RoadFile;
import org.ridewright.io.ScenarioFile;
import org.ridewright.io.StudyFile;
import org.ridewright.io.VehicleFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads files and says what is wrong with them, without running anything. */
@Command(
        name = "check",
        description =
                "Says what is wrong with vehicle, scenario, road and measurements files, all faults at once, without running them;"
                        + " of measurements also what they say directly.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class CheckCommand implements Callable<Integer> {
    @Parameters(
            arity = "1..*",
            paramLabel = "FILE",
            description =
                    "Vehicle, scenario, study, road or measurements file, YAML or JSON, or measured profile, CSV.")
    private List<Path> files = new ArrayList<>();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        FaultList told = new FaultList();
        for (Path named : files) {
            Path file = ScenarioPath.resolve(named);
            try {
                List<String> further = read(file);
                out.println(file + ": in order");
                further.forEach(out::println);
            } catch (InputException e) {
                List<InputProblem> fresh = told.add(e.problems());
                fresh.forEach(problem -> err.println(problem.render()));
                if (fresh.isEmpty()) {
                    boolean itself =
                            e.problems().stream().anyMatch(p -> p.file().equals(file.toString()));
                    out.println(file
                            + (itself
                                    ? ": in order but for the faults above"
                                    : ": in order itself; the faults above are in files that it names"));
                }
            }
        }
        if (told.size() > 0) {
            err.println(told.count() + ".");
        }
        return told.size() > 0 ? ExitCode.BAD_INPUT : ExitCode.DONE;
    }

    /** Reads a file, and gives what may be told of it besides. */
    private static List<String> read(Path file) {
        if (RoadFile.isProfile(file)) {
            RoadFile.read(file);
            return List.of();
        }
        switch (FileKind.of(file)) {
            case VEHICLE -> VehicleFile.read(file);
            case SCENARIO -> ScenarioFile.read(file);
            case ROAD -> RoadFile.read(file);
            case STUDY -> StudyFile.read(file, "");
            case MEASUREMENTS -> {
                return FindingsTable.lines(MeasurementsFile.read(file));
            }
        }
        return List.of();
    }
}
