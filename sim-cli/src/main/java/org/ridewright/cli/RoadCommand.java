package org.ridewright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ridewright.figure.Figure;
import org.ridewright.figure.FigureFiles;
import org.ridewright.figure.FigureWriter;
import org.ridewright.io.ResultFolder;
import org.ridewright.quantity.Measures;
import org.ridewright.quantity.QuantityFormatException;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.report.FigureGroup;
import org.ridewright.report.RoadMetricsJson;
import org.ridewright.report.RoadPage;
import org.ridewright.roughness.SurveyedRoad;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says how rough roads are and what wheels make of them. */
@Command(
        name = "road",
        description =
                "Says how rough a road is, by the class of ISO 8608 and the International Roughness Index, and what wheels of "
                        + "several sizes make of it; writes report, figures and numbers into a folder.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class RoadCommand implements Callable<Integer> {
    @Parameters(
            paramLabel = "FILE",
            description =
                    "A scenario (all its roads), a road, or a measured profile (CSV); the ending .yaml may be left out.")
    private Path named;

    @Option(
            names = "--into",
            paramLabel = "FOLDER",
            description = "Where the results go; results/<name of the file>-road unless stated.")
    private Path folder;

    @Option(
            names = "--length",
            paramLabel = "LENGTH",
            description =
                    "How much is looked at, such as '10 km'; unless stated, the whole road, and 1 km of one without end.")
    private String length;

    @Option(
            names = "--spacing",
            paramLabel = "LENGTH",
            description =
                    "Distance of the heights looked at, such as '5 mm'; 10 mm unless stated, and that of a measured profile.")
    private String spacing;

    @Option(
            names = "--track",
            paramLabel = "LENGTH",
            description =
                    "Distance of left and right track, such as '4 ft 8 in'; that of the scenario's first vehicle, or 1.5 m, unless stated.")
    private String track;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        Path file = ScenarioPath.resolve(named);
        Path target = folder != null ? folder : Path.of("results", ScenarioPath.stem(file) + "-road");
        RoadSources sources = RoadSources.read(
                file, measure("--length", length), measure("--spacing", spacing), measure("--track", track));
        PrintWriter out = spec.commandLine().getOut();
        try (ResultFolder results = ResultFolder.begin(target, "roads of " + sources.name())) {
            List<SurveyedRoad> roads = sources.survey();
            RoadTable.lines(roads).forEach(out::println);
            out.flush();
            write(results, sources, roads);
            results.commit();
        }
        out.println(ReportLine.of(target));
        return ExitCode.DONE;
    }

    private static void write(ResultFolder results, RoadSources sources, List<SurveyedRoad> roads) throws IOException {
        List<Figure> figures = FigureGroup.of(roads).stream()
                .flatMap(g -> g.figures().stream())
                .toList();
        List<FigureFiles> drawn = new FigureWriter().files(figures);
        for (FigureFiles figure : drawn) {
            results.write("figures/" + figure.fileName() + ".svg", utf8(figure.svg()));
            results.write("figures/" + figure.fileName() + ".png", figure.png());
            results.write("figures/" + figure.fileName() + ".pdf", figure.pdf());
        }
        results.write("metrics.json", utf8(RoadMetricsJson.render(sources.name(), roads)));
        results.write("report.html", utf8(RoadPage.render(sources.name(), sources.about(), roads, drawn)));
    }

    /** A length above nothing, as people write it. */
    private Optional<Double> measure(String option, String written) {
        if (written == null) {
            return Optional.empty();
        }
        try {
            double value = Measures.parse(written, QuantityKind.LENGTH).value();
            if (value > 0) {
                return Optional.of(value);
            }
            throw new ParameterException(spec.commandLine(), option + " must be above 0, got '" + written + "'");
        } catch (QuantityFormatException refused) {
            throw new ParameterException(spec.commandLine(), option + ": " + refused.getMessage(), refused);
        }
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
