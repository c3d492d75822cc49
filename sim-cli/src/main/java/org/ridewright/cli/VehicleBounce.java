package org.ridewright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** Bounce tests of a vehicle file: the options that they need, and what is done. The command has it as a mixin and calls {@link #run}. */
final class VehicleBounce {
    /** Of the traces that are kept (Hz). */
    private static final double SAMPLING_RATE = 200;

    @Option(
            names = "--push",
            paramLabel = "FORCE",
            description =
                    "Of a vehicle: greatest force, such as '250 N'; 1000 N unless stated, two people leaning with most of their weight. "
                            + "Alone, it is used in full.")
    private String push;

    @Option(
            names = "--depth",
            paramLabel = "LENGTH",
            description =
                    "How far down a vehicle, such as '20 mm'; 25 mm unless stated. Alone, whatever force it takes.")
    private String depth;

    @Option(
            names = "--lift",
            paramLabel = "HEIGHT",
            description = "Instead, a vehicle is lifted by this height and dropped.")
    private String lift;

    @Option(
            names = "--visible",
            paramLabel = "LENGTH",
            description = "Least motion to either side that is counted, such as '2 mm'; 1 mm unless stated.")
    private String visible;

    @Option(
            names = "--load",
            paramLabel = "NAME",
            description = "Load case of a vehicle; may be repeated. All of the file unless stated.")
    private List<String> loads = new ArrayList<>();

    @Option(
            names = "--rolling",
            description = "Wheels of a vehicle may roll; they are held by the brake unless stated.")
    private boolean rolling;

    /** Names of these options, for a word to those who give them with a log. */
    static final Set<String> OPTIONS = Set.of("--push", "--depth", "--lift", "--visible", "--load", "--rolling");

    /**
     * Bounces a vehicle and writes the results.
     *
     * @param folder where they go; a folder named after the file if empty
     * @return exit code
     */
    int run(CommandSpec spec, Path file, Optional<Path> folder) throws IOException {
        Handling handling = handling(spec);
        double least = measure(spec, "--visible", visible, QuantityKind.LENGTH).orElse(BounceTest.USUALLY_VISIBLE);
        Vehicle vehicle = VehicleFile.read(file);
        List<LoadCase> cases = cases(spec, vehicle);
        Path target = folder.orElse(Path.of("results", ScenarioPath.stem(file) + "-bounce"));
        PrintWriter out = spec.commandLine().getOut();
        try (ResultFolder results = ResultFolder.begin(target, "bounce tests of " + vehicle.name())) {
            List<LoadCaseBounces> all = LoadCaseBounces.of(
                    vehicle,
                    cases,
                    kind -> new BounceTest(kind, handling, least, RegimeSolver.TOLERANCE),
                    !rolling,
                    SAMPLING_RATE);
            BounceTable.lines(all, !rolling).forEach(out::println);
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

    private Handling handling(CommandSpec spec) {
        Optional<Double> force = measure(spec, "--push", push, QuantityKind.FORCE);
        Optional<Double> down = measure(spec, "--depth", depth, QuantityKind.LENGTH);
        Optional<Double> up = measure(spec, "--lift", lift, QuantityKind.LENGTH);
        if (up.isPresent()) {
            if (force.isPresent() || down.isPresent()) {
                throw refused(spec, "--lift cannot be had together with --push or --depth");
            }
            return Handling.drop(up.get());
        }
        if (force.isEmpty() && down.isEmpty()) {
            return Handling.person();
        }
        return new Handling(false, down.orElse(Double.POSITIVE_INFINITY), force.orElse(Double.POSITIVE_INFINITY));
    }

    private List<LoadCase> cases(CommandSpec spec, Vehicle vehicle) {
        if (loads.isEmpty()) {
            return vehicle.loadCases();
        }
        return loads.stream()
                .map(name -> vehicle.loadCase(name)
                        .orElseThrow(() -> refused(
                                spec,
                                "no load case '" + name + "'; the file has "
                                        + String.join(
                                                ", ",
                                                vehicle.loadCases().stream()
                                                        .map(LoadCase::name)
                                                        .toList()))))
                .toList();
    }

    private static Optional<Double> measure(CommandSpec spec, String option, String written, QuantityKind kind) {
        if (written == null) {
            return Optional.empty();
        }
        try {
            double value = Measures.parse(written, kind).value();
            if (value > 0) {
                return Optional.of(value);
            }
            throw refused(spec, option + " must be above 0, got '" + written + "'");
        } catch (QuantityFormatException unreadable) {
            throw new ParameterException(spec.commandLine(), option + ": " + unreadable.getMessage(), unreadable);
        }
    }

    private static ParameterException refused(CommandSpec spec, String message) {
        return new ParameterException(spec.commandLine(), message);
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
