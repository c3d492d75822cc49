package org.ridewright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ridewright.bounce.BounceResult;
import org.ridewright.bounce.BounceTest;
import org.ridewright.bounce.Handling;
import org.ridewright.bounce.LoadCaseBounces;
import org.ridewright.figure.Figure;
import org.ridewright.figure.FigureFiles;
import org.ridewright.figure.FigureWriter;
import org.ridewright.io.ResultFolder;
import org.ridewright.io.VehicleFile;
import org.ridewright.quantity.Measures;
import org.ridewright.quantity.QuantityFormatException;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.report.BounceMetricsJson;
import org.ridewright.report.BouncePage;
import org.ridewright.report.FigureGroup;
import org.ridewright.report.TracesCsv;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.Vehicle;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Bounces a vehicle as a yard does and counts. */
@Command(
        name = "bounce",
        description =
                "Presses a vehicle down at front, rear and side, lets go and counts, under every load; writes report, figures, traces and numbers "
                        + "into a folder. Beside each ride frequency stand the natural ones with springs that slide and that are held.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class BounceCommand implements Callable<Integer> {
    /** Of the traces that are kept (Hz). */
    private static final double SAMPLING_RATE = 200;

    @Parameters(paramLabel = "VEHICLE", description = "Vehicle file, YAML or JSON; its ending may be left out.")
    private Path named;

    @Option(
            names = "--push",
            paramLabel = "FORCE",
            description =
                    "Greatest force, such as '250 N'; 1000 N unless stated, two people leaning with most of their weight. "
                            + "Alone, it is used in full.")
    private String push;

    @Option(
            names = "--depth",
            paramLabel = "LENGTH",
            description = "How far down, such as '20 mm'; 25 mm unless stated. Alone, whatever force it takes.")
    private String depth;

    @Option(names = "--lift", paramLabel = "HEIGHT", description = "Instead, lifted by this height and dropped.")
    private String lift;

    @Option(
            names = "--visible",
            paramLabel = "LENGTH",
            description = "Least motion to either side that is counted, such as '2 mm'; 1 mm unless stated.")
    private String visible;

    @Option(
            names = "--load",
            paramLabel = "NAME",
            description = "Load case; may be repeated. All of the file unless stated.")
    private List<String> loads = new ArrayList<>();

    @Option(names = "--rolling", description = "The wheels may roll; they are held by the brake unless stated.")
    private boolean rolling;

    @Option(
            names = "--into",
            paramLabel = "FOLDER",
            description = "Where the results go; results/<name of the file>-bounce unless stated.")
    private Path folder;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        Handling handling = handling();
        double least = measure("--visible", visible, QuantityKind.LENGTH).orElse(BounceTest.USUALLY_VISIBLE);
        Path file = ScenarioPath.resolve(named);
        Vehicle vehicle = VehicleFile.read(file);
        List<LoadCase> cases = cases(vehicle);
        Path target = folder != null ? folder : Path.of("results", ScenarioPath.stem(file) + "-bounce");
        PrintWriter out = spec.commandLine().getOut();
        try (ResultFolder results = ResultFolder.begin(target, "bounce tests of " + vehicle.name())) {
            List<LoadCaseBounces> all = LoadCaseBounces.of(
                    vehicle,
                    cases,
                    kind -> new BounceTest(kind, handling, least, RegimeSolver.TOLERANCE),
                    !rolling,
                    SAMPLING_RATE);
            BounceTable.lines(all).forEach(out::println);
            out.flush();
            write(results, all);
            results.commit();
        }
        out.println("Report: " + target.resolve("report.html"));
        return ExitCode.DONE;
    }

    private void write(ResultFolder results, List<LoadCaseBounces> all) throws IOException {
        List<Figure> figures = FigureGroup.ofBounces(all).stream()
                .flatMap(g -> g.figures().stream())
                .toList();
        List<FigureFiles> drawn = new FigureWriter().files(figures);
        for (FigureFiles figure : drawn) {
            results.write("figures/" + figure.fileName() + ".svg", utf8(figure.svg()));
            results.write("figures/" + figure.fileName() + ".png", figure.png());
            results.write("figures/" + figure.fileName() + ".pdf", figure.pdf());
        }
        for (int i = 0; i < all.size(); i++) {
            String load =
                    (i + 1) + "-" + RunFiles.plain(all.get(i).model().loadCase().name());
            for (BounceResult result : all.get(i).results()) {
                String name = load + "-" + RunFiles.plain(result.test().kind().word());
                results.write("traces/" + name + ".csv", utf8(TracesCsv.render(result.traces())));
            }
        }
        results.write("metrics.json", utf8(BounceMetricsJson.render(all)));
        results.write("report.html", utf8(BouncePage.render(all, !rolling, drawn)));
    }

    private Handling handling() {
        Optional<Double> force = measure("--push", push, QuantityKind.FORCE);
        Optional<Double> down = measure("--depth", depth, QuantityKind.LENGTH);
        Optional<Double> up = measure("--lift", lift, QuantityKind.LENGTH);
        if (up.isPresent()) {
            if (force.isPresent() || down.isPresent()) {
                throw refused("--lift cannot be had together with --push or --depth");
            }
            return Handling.drop(up.get());
        }
        if (force.isEmpty() && down.isEmpty()) {
            return Handling.person();
        }
        return new Handling(false, down.orElse(Double.POSITIVE_INFINITY), force.orElse(Double.POSITIVE_INFINITY));
    }

    private List<LoadCase> cases(Vehicle vehicle) {
        if (loads.isEmpty()) {
            return vehicle.loadCases();
        }
        return loads.stream()
                .map(name -> vehicle.loadCase(name)
                        .orElseThrow(() -> refused("no load case '" + name + "'; the file has "
                                + String.join(
                                        ", ",
                                        vehicle.loadCases().stream()
                                                .map(LoadCase::name)
                                                .toList()))))
                .toList();
    }

    private Optional<Double> measure(String option, String written, QuantityKind kind) {
        if (written == null) {
            return Optional.empty();
        }
        try {
            double value = Measures.parse(written, kind).value();
            if (value > 0) {
                return Optional.of(value);
            }
            throw refused(option + " must be above 0, got '" + written + "'");
        } catch (QuantityFormatException unreadable) {
            throw new ParameterException(spec.commandLine(), option + ": " + unreadable.getMessage(), unreadable);
        }
    }

    private ParameterException refused(String message) {
        return new ParameterException(spec.commandLine(), message);
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
