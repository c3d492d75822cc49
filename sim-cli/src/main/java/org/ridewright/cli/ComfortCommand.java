package org.ridewright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.ridewright.comfort.Position;
import org.ridewright.figure.FigureFiles;
import org.ridewright.figure.FigureWriter;
import org.ridewright.io.LogFile;
import org.ridewright.io.ResultFolder;
import org.ridewright.measurement.LogOptions;
import org.ridewright.measurement.LogOptions.Forward;
import org.ridewright.measurement.LogOptions.Gravity;
import org.ridewright.measurement.Recording;
import org.ridewright.measurement.UnusableLogException;
import org.ridewright.quantity.Measures;
import org.ridewright.quantity.QuantityFormatException;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.report.LogFigures;
import org.ridewright.report.LogMetricsJson;
import org.ridewright.report.LogPage;
import org.ridewright.report.LogResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Puts a recorded acceleration through the metrics of a simulated ride. */
@Command(
        name = "comfort",
        description =
                "Measures a ride that a phone or a logger recorded, by ISO 2631-1, and writes report, figures and numbers into a"
                        + " folder.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class ComfortCommand implements Callable<Integer> {
    private static final double HOUR = 3600;
    private static final Pattern BARE = Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)");

    @Parameters(paramLabel = "LOG.csv", description = "Rows of time and acceleration, as the logger exports them.")
    private Path file;

    @Mixin
    private LogReading log;

    @Option(
            names = "--at",
            paramLabel = "PLACE",
            defaultValue = "seat",
            description = "Where it was recorded: seat, backrest or feet; seat unless stated.")
    private String place;

    @Option(
            names = "--forward",
            paramLabel = "AXIS",
            defaultValue = "unknown",
            description =
                    "Axis of the logger that pointed forward: x, -x, y, -y, z or -z; or 'principal', the horizontal"
                            + " direction that shook most. Unless stated, horizontal motion is one value.")
    private String forward;

    @Option(
            names = "--gravity",
            paramLabel = "in|removed",
            defaultValue = "found",
            description = "Whether gravity is in the values; told from their mean unless stated.")
    private String gravity;

    @Option(names = "--from", paramLabel = "SECONDS", description = "Beginning of what counts, from the first row.")
    private Double from;

    @Option(names = "--to", paramLabel = "SECONDS", description = "End of what counts.")
    private Double to;

    @Option(
            names = "--gap",
            paramLabel = "SECONDS",
            description = "Longest interval between rows that is no dropout; 2.5 median intervals unless stated.")
    private Double gap;

    @Option(
            names = "--start-up",
            paramLabel = "SECONDS",
            description = "Time left out after the beginning and each dropout, while the filters settle; what they need"
                    + " unless stated. 0 for a log that begins at rest.")
    private Double startUp;

    @Option(
            names = "--riding",
            paramLabel = "TIME",
            description =
                    "Time of such riding a day, for the daily exposure: hours, or with its unit, such as '90 min'.")
    private String riding;

    @Option(
            names = "--into",
            paramLabel = "FOLDER",
            description = "Where the results go; results/<name of the log> unless stated.")
    private Path folder;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        if (log.hasBadRate()) {
            throw refused(log.rateFault());
        }
        LogOptions options = options();
        OptionalDouble day = riding == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(HOUR * positive("--riding", hours(riding), 24, "hours a day"));
        Recording recording = log.read(file);
        Path target = folder != null ? folder : Path.of("results", ScenarioPath.stem(file));
        PrintWriter out = spec.commandLine().getOut();
        try (ResultFolder results = ResultFolder.begin(target, "log " + file.getFileName())) {
            LogResult result = LogResult.of(recording, options, day);
            LogTable.lines(result).forEach(out::println);
            out.flush();
            write(results, result);
            results.commit();
        } catch (UnusableLogException unusable) {
            throw LogFile.fault(file.toString(), unusable.fault());
        }
        out.println(ReportLine.of(target));
        return ExitCode.DONE;
    }

    private static void write(ResultFolder results, LogResult result) throws IOException {
        List<FigureFiles> drawn = new FigureWriter().files(LogFigures.of(result));
        for (FigureFiles figure : drawn) {
            results.write("figures/" + figure.fileName() + ".svg", utf8(figure.svg()));
            results.write("figures/" + figure.fileName() + ".png", figure.png());
            results.write("figures/" + figure.fileName() + ".pdf", figure.pdf());
        }
        results.write("metrics.json", utf8(LogMetricsJson.render(result)));
        results.write("report.html", utf8(LogPage.render(result, drawn)));
    }

    private LogOptions options() {
        if (from != null && to != null && !(to > from)) {
            throw refused("--to must be after --from, got " + to + " s after " + from + " s");
        }
        return new LogOptions(
                one("--at", place, List.of(Position.values()), p -> p.name().toLowerCase(Locale.ROOT)),
                one("--forward", forward, List.of(Forward.values()), Forward::word),
                one("--gravity", gravity, List.of(Gravity.values()), Gravity::word),
                orNothing(from),
                orNothing(to),
                gap == null ? Double.NaN : positive("--gap", gap, 1e9, "seconds"),
                startUp == null ? Double.NaN : notNegative("--start-up", startUp));
    }

    /** A bare number is one of hours. */
    private double hours(String written) {
        try {
            return BARE.matcher(written.strip()).matches()
                    ? Double.parseDouble(written.strip())
                    : Measures.parse(written, QuantityKind.TIME).value() / HOUR;
        } catch (QuantityFormatException unreadable) {
            throw refused("--riding must be a time such as '4 h', or a number of hours, got '" + written + "'");
        }
    }

    private static double orNothing(Double value) {
        return value == null ? Double.NaN : value;
    }

    private double positive(String option, double value, double most, String unitName) {
        if (!(value > 0 && value <= most)) {
            throw refused(
                    option + " must be > 0 and at most " + Wording.number(most, 0) + " " + unitName + ", got " + value);
        }
        return value;
    }

    private double notNegative(String option, double value) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw refused(option + " must be ≥ 0 seconds, got " + value);
        }
        return value;
    }

    private <E> E one(String option, String written, List<E> values, Function<E, String> word) {
        return values.stream()
                .filter(value -> word.apply(value).equalsIgnoreCase(written.strip()))
                .findFirst()
                .orElseThrow(() -> refused(option + " must be one of "
                        + String.join(", ", values.stream().map(word).toList()) + ", got '" + written + "'"));
    }

    private ParameterException refused(String message) {
        return new ParameterException(spec.commandLine(), message);
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
