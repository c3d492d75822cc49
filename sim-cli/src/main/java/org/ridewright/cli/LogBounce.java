package org.ridewright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
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
import org.ridewright.report.BounceLogCsv;
import org.ridewright.report.BounceLogFigures;
import org.ridewright.report.BounceLogJson;
import org.ridewright.report.BounceLogPage;
import org.ridewright.report.BounceLogResult;
import org.ridewright.report.BounceLogResult.Direction;
import org.ridewright.ringdown.RingDown;
import org.ridewright.ringdown.RingDownOptions;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** Bounce tests in a log: the options that a log needs, and what is done with it. The command has it as a mixin and calls {@link #run}. */
final class LogBounce {
    private static final Pattern BAND =
            Pattern.compile("\\s*([0-9.]+)\\s*(?:-|to|,|\\.\\.|–)\\s*([0-9.]+)\\s*(?:Hz)?\\s*");
    private static final List<String> ENDINGS = List.of(".csv", ".txt", ".tsv", ".log");

    @Mixin
    private LogReading reading;

    @Option(
            names = "--direction",
            paramLabel = "WORD",
            defaultValue = "vertical",
            description = "Of a log: vertical, fore-aft or lateral; vertical unless stated.")
    private String direction;

    @Option(
            names = "--forward",
            paramLabel = "AXIS",
            defaultValue = "unknown",
            description =
                    "Axis of the logger that pointed forward: x, -x, y, -y, z or -z; or 'principal', the horizontal"
                            + " direction that shook most.")
    private String forward;

    @Option(
            names = "--gravity",
            paramLabel = "in|removed",
            defaultValue = "found",
            description = "Whether gravity is in a log's values; told from their mean unless stated.")
    private String gravity;

    @Option(
            names = "--from",
            paramLabel = "SECONDS",
            description = "Beginning of what counts of a log, from its first row.")
    private Double from;

    @Option(names = "--to", paramLabel = "SECONDS", description = "End of what counts.")
    private Double to;

    @Option(
            names = "--gap",
            paramLabel = "SECONDS",
            description = "Longest interval between rows that is no dropout; 2.5 median intervals unless stated.")
    private Double gap;

    @Option(
            names = "--band",
            paramLabel = "FROM-TO",
            defaultValue = "0.6-5",
            description = "Frequencies that count as a bounce in a log (Hz); 0.6-5 unless stated.")
    private String band;

    @Option(
            names = "--with",
            paramLabel = "WORD|LOG",
            description =
                    "A second sensor: a word of its columns' names, or a log of its own. Both together and one against the other are measured.")
    private String with;

    @Option(
            names = "--apart",
            paramLabel = "METRES",
            description = "Distance of the two sensors; turning is then an angle.")
    private Double apart;

    /** Whether a file is a log rather than a description, by its ending. */
    static boolean isLog(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        return ENDINGS.stream().anyMatch(name::endsWith);
    }

    /**
     * Measures a log and writes its results.
     *
     * @param folder where they go; a folder named after the log if empty
     * @return exit code
     */
    int run(CommandSpec spec, Path file, Optional<Path> folder) throws IOException {
        LogOptions options = options(spec);
        RingDownOptions bounce = band(spec);
        Direction along = one(spec, "--direction", direction, Direction.values(), Direction::word);
        requirePositive(spec, "--gap", gap);
        requirePositive(spec, "--apart", apart);
        if (reading.hasBadRate()) {
            throw refused(spec, reading.rateFault());
        }
        if (apart != null && with == null) {
            throw refused(spec, "--apart needs a second sensor: name it with --with");
        }
        Recording recording = reading.read(file);
        Optional<BounceLogResult.Second> second = second(file);
        Path target = folder.orElse(Path.of("results", ScenarioPath.stem(file)));
        PrintWriter out = spec.commandLine().getOut();
        try (ResultFolder results = ResultFolder.begin(target, "bounce log " + file.getFileName())) {
            BounceLogResult result = BounceLogResult.of(recording, second, options, along, bounce);
            BounceLogTable.lines(result).forEach(out::println);
            out.flush();
            write(results, result);
            results.commit();
        } catch (UnusableLogException unusable) {
            throw LogFile.fault(file.toString(), unusable.fault());
        }
        out.println("Report: " + target.resolve("report.html"));
        return ExitCode.DONE;
    }

    private Optional<BounceLogResult.Second> second(Path file) {
        if (with == null) {
            return Optional.empty();
        }
        Path other = Path.of(with);
        double distance = apart == null ? Double.NaN : apart;
        return Optional.of(
                Files.isRegularFile(other)
                        ? new BounceLogResult.Second(reading.read(other), distance, false)
                        : new BounceLogResult.Second(reading.read(file, with), distance, true));
    }

    private static void write(ResultFolder results, BounceLogResult result) throws IOException {
        List<FigureFiles> drawn = new FigureWriter().files(BounceLogFigures.of(result));
        for (FigureFiles figure : drawn) {
            results.write("figures/" + figure.fileName() + ".svg", utf8(figure.svg()));
            results.write("figures/" + figure.fileName() + ".png", figure.png());
            results.write("figures/" + figure.fileName() + ".pdf", figure.pdf());
        }
        for (int m = 0; m < result.motions().size(); m++) {
            int number = 1;
            for (RingDown release : result.motions().get(m).ringDowns().releases()) {
                String name = (m == 0 ? "" : "turning-") + "release-" + number++ + ".csv";
                results.write("traces/" + name, utf8(BounceLogCsv.render(release)));
            }
        }
        results.write("metrics.json", utf8(BounceLogJson.render(result)));
        results.write("report.html", utf8(BounceLogPage.render(result, drawn)));
    }

    private LogOptions options(CommandSpec spec) {
        if (from != null && to != null && !(to > from)) {
            throw refused(spec, "--to must be after --from, got " + to + " s after " + from + " s");
        }
        return new LogOptions(
                Position.FEET,
                one(spec, "--forward", forward, Forward.values(), Forward::word),
                one(spec, "--gravity", gravity, Gravity.values(), Gravity::word),
                from == null ? Double.NaN : from,
                to == null ? Double.NaN : to,
                gap == null ? Double.NaN : gap,
                Double.NaN);
    }

    private RingDownOptions band(CommandSpec spec) {
        Matcher matcher = BAND.matcher(band);
        if (matcher.matches()) {
            try {
                double low = Double.parseDouble(matcher.group(1));
                double high = Double.parseDouble(matcher.group(2));
                if (low > 0 && low < high) {
                    return new RingDownOptions(low, high);
                }
            } catch (NumberFormatException several) {
                throw refused(spec, "--band must be two frequencies in Hz, as in 0.6-5, got '" + band + "'");
            }
        }
        throw refused(spec, "--band must be two frequencies in Hz, the lower first, as in 0.6-5, got '" + band + "'");
    }

    private static void requirePositive(CommandSpec spec, String option, Double value) {
        if (value != null && !(value > 0 && value < 1e9)) {
            throw refused(spec, option + " must be > 0, got " + value);
        }
    }

    private static <E> E one(CommandSpec spec, String option, String written, E[] values, Function<E, String> word) {
        return Arrays.stream(values)
                .filter(value -> word.apply(value).equalsIgnoreCase(written.strip()))
                .findFirst()
                .orElseThrow(() -> refused(
                        spec,
                        option + " must be one of "
                                + String.join(
                                        ", ", Arrays.stream(values).map(word).toList()) + ", got '" + written + "'"));
    }

    private static ParameterException refused(CommandSpec spec, String message) {
        return new ParameterException(spec.commandLine(), message);
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
