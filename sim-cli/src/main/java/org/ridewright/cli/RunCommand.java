package org.ridewright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Callable;
import org.ridewright.io.InputException;
import org.ridewright.io.InputProblem;
import org.ridewright.io.ResultFolder;
import org.ridewright.io.ScenarioDocument;
import org.ridewright.io.ScenarioFile;
import org.ridewright.report.RideNumbers;
import org.ridewright.ride.RideResult;
import org.ridewright.ride.RideRunner;
import org.ridewright.ride.Scenario;
import org.ridewright.uncertainty.UncertainRide;
import org.ridewright.uncertainty.UncertainRides;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Rides a scenario and writes a report. */
@Command(
        name = "run",
        description = "Rides every vehicle of a scenario and writes report, figures, traces and numbers into a folder.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class RunCommand implements Callable<Integer> {
    private static final int FEWEST_DRAWS = 20;
    private static final int MOST_DRAWS = 10_000;

    @Parameters(
            arity = "1..*",
            paramLabel = "SCENARIO",
            description = "Scenario file, YAML or JSON; its ending may be left out.")
    private List<Path> named = new ArrayList<>();

    @Option(
            names = "--into",
            paramLabel = "FOLDER",
            description = "Where the results of one scenario go; results/<name of the scenario file> unless stated.")
    private Path folder;

    @Option(
            names = "--uncertain",
            paramLabel = "N",
            description =
                    "Draws N vehicles and roads within the tolerances of their files, rides each, and gives every number"
                            + " and trace the interval that holds nine tenths of them.")
    private Integer uncertain;

    @Option(
            names = "--cross-check",
            hidden = true,
            description = "Instead of a report, compares both solvers on each ride test.")
    private boolean crossCheck;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        if (folder != null && named.size() > 1) {
            throw new ParameterException(
                    spec.commandLine(), "--into names the folder of one scenario, got " + named.size() + " scenarios");
        }
        if (uncertain != null && (uncertain < FEWEST_DRAWS || uncertain > MOST_DRAWS)) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--uncertain takes from " + FEWEST_DRAWS + " to " + MOST_DRAWS + " draws, got " + uncertain);
        }
        List<Path> files = named.stream().map(ScenarioPath::resolve).toList();
        List<Scenario> scenarios = read(files);
        if (crossCheck) {
            scenarios.forEach(this::compareSolvers);
            return ExitCode.DONE;
        }
        for (int i = 0; i < files.size(); i++) {
            Path target = folder != null ? folder : Path.of("results", ScenarioPath.stem(files.get(i)));
            if (uncertain != null) {
                runUncertain(files.get(i), target);
            } else {
                run(scenarios.get(i), target);
            }
        }
        return ExitCode.DONE;
    }

    /** All of them before the first runs, so that every fault is told at once. */
    private static List<Scenario> read(List<Path> files) {
        List<Scenario> scenarios = new ArrayList<>();
        Set<InputProblem> problems = new LinkedHashSet<>();
        for (Path file : files) {
            try {
                scenarios.add(ScenarioFile.read(file));
            } catch (InputException e) {
                problems.addAll(e.problems());
            }
        }
        if (!problems.isEmpty()) {
            throw new InputException(List.copyOf(problems));
        }
        return scenarios;
    }

    private void run(Scenario scenario, Path target) throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        try (ResultFolder results = ResultFolder.begin(target, scenario.name())) {
            List<RideResult> rides = RideRunner.run(scenario, this::tell);
            ResultTable.lines(rides).forEach(out::println);
            out.flush();
            RunFiles.write(results, scenario, rides);
            results.commit();
        }
        out.println(ReportLine.of(target));
    }

    private void runUncertain(Path file, Path target) throws IOException {
        ScenarioDocument document = ScenarioDocument.read(file);
        Scenario scenario = document.asWritten();
        PrintWriter out = spec.commandLine().getOut();
        try (ResultFolder results = ResultFolder.begin(target, scenario.name())) {
            UncertainRides.Outcome outcome =
                    UncertainRides.run(document, uncertain, RideNumbers::of, ride -> tell(ride.ride()));
            ResultTable.lines(outcome.rides().stream().map(UncertainRide::ride).toList())
                    .forEach(out::println);
            IntervalTable.lines(outcome).forEach(out::println);
            out.flush();
            RunFiles.write(results, scenario, outcome);
            results.commit();
        }
        out.println(ReportLine.of(target));
    }

    private void compareSolvers(Scenario scenario) {
        PrintWriter out = spec.commandLine().getOut();
        out.println(scenario.name() + ": relative r.m.s. difference of accelerations, worst coordinate");
        RideRunner.differencesFromReference(scenario, (test, difference) -> {
            out.printf(Locale.ROOT, "  %.1e  %s%n", difference, test);
            out.flush();
        });
    }

    private void tell(RideResult ride) {
        if (Boolean.getBoolean(Main.AT_TERMINAL)) {
            PrintWriter out = spec.commandLine().getOut();
            out.println("  " + Wording.test(ride));
            out.flush();
        }
    }
}
