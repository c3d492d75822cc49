package org.ridewright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.ridewright.figure.Figure;
import org.ridewright.figure.FigureFiles;
import org.ridewright.figure.FigureWriter;
import org.ridewright.io.InputException;
import org.ridewright.io.InputProblem;
import org.ridewright.io.ResultFolder;
import org.ridewright.io.ScenarioFile;
import org.ridewright.report.FigureGroup;
import org.ridewright.report.HtmlReport;
import org.ridewright.report.MetricsJson;
import org.ridewright.report.TracesCsv;
import org.ridewright.ride.RideResult;
import org.ridewright.ride.RideRunner;
import org.ridewright.ride.Scenario;
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

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        if (folder != null && named.size() > 1) {
            throw new ParameterException(
                    spec.commandLine(), "--into names the folder of one scenario, got " + named.size() + " scenarios");
        }
        List<Path> files = named.stream().map(ScenarioPath::resolve).toList();
        List<Scenario> scenarios = read(files);
        for (int i = 0; i < files.size(); i++) {
            Path target = folder != null ? folder : Path.of("results", ScenarioPath.stem(files.get(i)));
            run(scenarios.get(i), target);
        }
        return ExitCode.DONE;
    }

    /** All of them before the first runs, so that every fault is told at once. */
    private static List<Scenario> read(List<Path> files) {
        List<Scenario> scenarios = new ArrayList<>();
        List<InputProblem> problems = new ArrayList<>();
        for (Path file : files) {
            try {
                scenarios.add(ScenarioFile.read(file));
            } catch (InputException e) {
                problems.addAll(e.problems());
            }
        }
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
        return scenarios;
    }

    private void run(Scenario scenario, Path target) throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        try (ResultFolder results = ResultFolder.begin(target, scenario.name())) {
            List<RideResult> rides = RideRunner.run(scenario, this::tell);
            ResultTable.lines(rides).forEach(out::println);
            out.flush();
            write(results, scenario, rides);
            results.commit();
        }
        out.println("Report: " + target.resolve("report.html"));
    }

    private void tell(RideResult ride) {
        if (Boolean.getBoolean(Main.AT_TERMINAL)) {
            PrintWriter out = spec.commandLine().getOut();
            out.println("  " + Wording.test(ride));
            out.flush();
        }
    }

    private static void write(ResultFolder results, Scenario scenario, List<RideResult> rides) throws IOException {
        List<FigureGroup> groups = FigureGroup.of(scenario, rides);
        List<Figure> figures =
                groups.stream().flatMap(g -> g.figures().stream()).toList();
        List<FigureFiles> drawn = new FigureWriter().files(figures);
        for (FigureFiles figure : drawn) {
            results.write("figures/" + figure.fileName() + ".svg", utf8(figure.svg()));
            results.write("figures/" + figure.fileName() + ".png", figure.png());
            results.write("figures/" + figure.fileName() + ".pdf", figure.pdf());
        }
        Set<String> taken = new HashSet<>();
        for (RideResult ride : rides) {
            results.write("traces/" + traceName(ride, taken) + ".csv", utf8(TracesCsv.render(ride)));
        }
        results.write("metrics.json", utf8(MetricsJson.render(scenario, rides)));
        results.write("report.html", utf8(HtmlReport.render(scenario, rides, drawn)));
    }

    private static String traceName(RideResult ride, Set<String> taken) {
        String speed = String.format(Locale.ROOT, "%.4g km-h", 3.6 * ride.speed());
        String name = String.join(
                "-",
                Stream.of(
                                ride.model().vehicle().name(),
                                ride.model().loadCase().name(),
                                ride.road().name(),
                                speed)
                        .map(RunCommand::plain)
                        .toList());
        List<String> candidates = new ArrayList<>();
        candidates.add(name);
        while (!taken.add(candidates.get(candidates.size() - 1))) {
            candidates.add(name + "-" + (candidates.size() + 1));
        }
        return candidates.get(candidates.size() - 1);
    }

    private static String plain(String text) {
        String plain = text.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}.]+", "-")
                .replaceAll("^-|-$", "");
        return plain.isEmpty() ? "unnamed" : plain;
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
