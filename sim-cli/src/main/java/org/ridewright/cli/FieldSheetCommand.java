package org.ridewright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ridewright.io.ResultFolder;
import org.ridewright.io.VehicleDocument;
import org.ridewright.narrowing.Answer;
import org.ridewright.narrowing.Narrowing;
import org.ridewright.narrowing.StandardRide;
import org.ridewright.narrowing.UncertainValues;
import org.ridewright.report.NarrowingJson;
import org.ridewright.sheet.FieldSheet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes the sheet on which a person writes down what a vehicle measures. */
@Command(
        name = "fieldsheet",
        description =
                "Writes a sheet to print (HTML, PDF): what to measure on a vehicle in a yard, how, with what and how closely;"
                        + " for a given vehicle also what is still estimated, and what of it to measure first.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class FieldSheetCommand implements Callable<Integer> {
    /** Values told on the terminal; the sheet has all. */
    private static final int TOLD = 10;

    @Parameters(
            arity = "0..1",
            paramLabel = "VEHICLE",
            description =
                    "A vehicle file; the ending .yaml may be left out. Without one, a blank sheet for any vehicle.")
    private Path named;

    @Option(
            names = "--into",
            paramLabel = "FOLDER",
            description =
                    "Where the sheet goes; results/<name of the file>-fieldsheet unless stated, results/fieldsheet for a"
                            + " blank one.")
    private Path folder;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        Optional<Path> file = Optional.ofNullable(named).map(ScenarioPath::resolve);
        String usual = file.map(f -> ScenarioPath.stem(f) + "-fieldsheet").orElse("fieldsheet");
        Path target = folder != null ? folder : Path.of("results", usual);
        Optional<VehicleDocument> document = file.map(VehicleDocument::read);
        String subject = document.map(d -> d.asWritten().name()).orElse("any vehicle");
        PrintWriter out = spec.commandLine().getOut();
        try (ResultFolder results = ResultFolder.begin(target, "field sheet of " + subject)) {
            FieldSheet sheet = document.isPresent() ? filled(document.get(), results, out) : FieldSheet.blank();
            results.write("report.html", sheet.html().getBytes(StandardCharsets.UTF_8));
            results.write("fieldsheet.pdf", sheet.pdf());
            results.commit();
        }
        out.println("To print: " + target.resolve("fieldsheet.pdf"));
        out.println("Report: " + target.resolve("report.html"));
        return ExitCode.DONE;
    }

    private static FieldSheet filled(VehicleDocument document, ResultFolder results, PrintWriter out)
            throws IOException {
        Answer answer = new StandardRide(document.asWritten());
        Narrowing narrowing = Narrowing.of(document.asWritten(), UncertainValues.of(document), answer);
        PriorityLines.lines(document.asWritten(), narrowing, answer, TOLD).forEach(out::println);
        out.flush();
        String json = NarrowingJson.render(document.asWritten().name(), narrowing, answer);
        results.write("metrics.json", json.getBytes(StandardCharsets.UTF_8));
        return FieldSheet.of(document.asWritten(), narrowing, answer);
    }
}
