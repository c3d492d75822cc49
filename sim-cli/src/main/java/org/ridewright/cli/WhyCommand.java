package org.ridewright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ridewright.figure.FigureFiles;
import org.ridewright.figure.FigureWriter;
import org.ridewright.io.OwnRide;
import org.ridewright.io.ResultFolder;
import org.ridewright.io.SwapDocument;
import org.ridewright.io.VehicleDocument;
import org.ridewright.quantity.NamedValue;
import org.ridewright.report.FigureGroup;
import org.ridewright.report.Section;
import org.ridewright.report.WhyBasis;
import org.ridewright.report.WhyFigures;
import org.ridewright.report.WhyJson;
import org.ridewright.report.WhyPage;
import org.ridewright.report.WhyWords;
import org.ridewright.ride.RideRunner;
import org.ridewright.study.Part;
import org.ridewright.study.Question;
import org.ridewright.study.RideMeasure;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.why.Choices;
import org.ridewright.why.KeptRides;
import org.ridewright.why.Swap;
import org.ridewright.why.UsualRide;
import org.ridewright.why.UsualSwaps;
import org.ridewright.why.WheelDefaults;
import org.ridewright.why.WhyFindings;
import org.ridewright.why.WhyRun;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says what each ingredient of a vehicle contributes to its ride. */
@Command(
        name = "why",
        description =
                "Exchanges one ingredient of a vehicle at a time (friction, wheel size, tyres, frame twist, cushions, place of the load, dampers) "
                        + "for another, and says with intervals what each contributes to the ride; writes report, figure and numbers into a folder.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class WhyCommand implements Callable<Integer> {
    private static final int FEWEST_DRAWS = 20;
    private static final int MOST_DRAWS = 10_000;
    private static final List<RideMeasure> ASKED = List.of(
            RideMeasure.SEAT_RMS,
            RideMeasure.SEAT_VDV,
            RideMeasure.PEAK,
            RideMeasure.SEAT_HEAVE,
            RideMeasure.SEAT_JOLT,
            RideMeasure.SEAT_BUZZ);

    @Parameters(paramLabel = "VEHICLE", description = "A vehicle file; the ending .yaml may be left out.")
    private Path named;

    @Option(
            names = "--ride",
            paramLabel = "SCENARIO",
            description =
                    "A scenario in which the vehicle rides: all its roads, at all its speeds there. A plank and gravel unless stated.")
    private Path scenario;

    @Option(
            names = "--speed",
            paramLabel = "SPEED",
            description =
                    "Speed over plank and gravel; half the top speed of the file but no more than 8 m/s, or 3 m/s, unless stated.")
    private String speed;

    @Option(
            names = "--load",
            paramLabel = "NAME",
            description = "Load case; the heaviest with which somebody sits unless stated.")
    private String load;

    @Option(
            names = "--swap",
            paramLabel = "SWAP",
            description =
                    "An alternative of your own, as \"NAME (WORDS): PATH = VALUE; PATH = VALUE\", such as \"friction (half of it): "
                            + "axles[*].springs[*].friction.share of load = x 0.5\". It takes the place of the usual one of that name, or is one more. May be given several times.")
    private List<String> own = new ArrayList<>();

    @Option(
            names = "--swaps",
            paramLabel = "FILE",
            description = "A text file of such alternatives, one a line; lines that begin with # are not looked at.")
    private Path ownFile;

    @Option(
            names = "--without",
            paramLabel = "NAME",
            description = "An ingredient to leave as it is. May be given several times.")
    private List<String> without = new ArrayList<>();

    @Option(
            names = "--draws",
            paramLabel = "N",
            defaultValue = "24",
            description =
                    "How many vehicles are drawn within the tolerances, at least 20; ${DEFAULT-VALUE} unless stated.")
    private int draws;

    @Option(
            names = "--whole",
            description =
                    "Rides every combination of swaps in every draw, so that the shares have intervals too. Takes longer.")
    private boolean whole;

    @Option(
            names = "--into",
            paramLabel = "FOLDER",
            description = "Where the results go; results/<name of the file>-why unless stated.")
    private Path folder;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        if (draws < FEWEST_DRAWS || draws > MOST_DRAWS) {
            throw new ParameterException(
                    spec.commandLine(), "--draws takes from " + FEWEST_DRAWS + " to " + MOST_DRAWS + ", got " + draws);
        }
        if (scenario != null && speed != null) {
            throw new ParameterException(
                    spec.commandLine(), "--speed goes with the usual ride; the speeds of --ride stand in its scenario");
        }
        Path file = ScenarioPath.resolve(named);
        Path target = folder != null ? folder : Path.of("results", ScenarioPath.stem(file) + "-why");
        VehicleDocument document = VehicleDocument.read(file);
        Vehicle vehicle = document.asWritten();
        Asked asked = asked(document, vehicle, file);
        List<NamedValue> written = SwapDocument.values(document, asked.ride());
        WheelDefaults defaults = new WheelDefaults(asked.vehicle(), written);
        UsualSwaps swaps = UsualSwaps.of(asked.vehicle(), written, asked.load())
                .with(own().stream().map(defaults::held).toList(), without);
        SwapDocument rides = new SwapDocument(document, swaps.swaps(), asked.ride());
        if (whole && swaps.swaps().size() > Choices.MOST_WHOLE) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--whole takes up to " + Choices.MOST_WHOLE + " swaps; leave some out with --without");
        }
        try (ResultFolder results = ResultFolder.begin(target, "why " + vehicle.name())) {
            WhyFindings findings = ridden(rides, vehicle.name(), target);
            WhyBasis basis = new WhyBasis(
                    vehicle.name(),
                    file.getFileName().toString(),
                    asked.words(),
                    asked.road(),
                    asked.load(),
                    String.join("", new Version().getVersion()),
                    swaps.skipped(),
                    remarks(rides),
                    whole);
            List<FigureGroup> groups = WhyFigures.of(findings, basis);
            List<FigureFiles> drawn = new FigureWriter()
                    .files(groups.stream().flatMap(g -> g.figures().stream()).toList());
            PageFolder.write(
                    results, drawn, WhyJson.render(findings, basis), WhyPage.render(findings, basis, groups, drawn));
            results.commit();
            PrintWriter out = spec.commandLine().getOut();
            swaps.skipped().forEach(s -> out.println("Left as it is: " + s.name() + " (" + s.reason() + ")"));
            for (Section section : WhyWords.sections(findings)) {
                out.println(section.heading());
                section.paragraphs().forEach(p -> out.println("  " + p));
                out.println();
            }
            WhyWords.summary(findings).forEach(out::println);
        } catch (WhyRun.Stopped stopped) {
            return ExitCode.FAILED_RUN;
        }
        spec.commandLine().getOut().println(ReportLine.of(target));
        return ExitCode.DONE;
    }

    /** On the vehicle and its ride as they are written. */
    private static List<String> remarks(SwapDocument rides) {
        return RideRunner.run(rides.ride(-1, new double[rides.uncertainValues()], 0), ridden -> {}).stream()
                .flatMap(ridden -> ridden.remarks().stream())
                .distinct()
                .toList();
    }

    /** Those of the file, then those of options. */
    private List<Swap> own() throws IOException {
        List<Swap> swaps = new ArrayList<>();
        if (ownFile != null) {
            try {
                swaps.addAll(Swap.parse(ownFile.toString(), Files.readAllLines(ownFile)));
            } catch (CharacterCodingException notText) {
                throw new ParameterException(
                        spec.commandLine(),
                        "--swaps: " + ownFile + " is no text file in UTF-8; save it as plain text",
                        notText);
            }
        }
        own.stream().map(Swap::parse).forEach(swaps::add);
        return swaps;
    }

    private record Asked(SwapDocument.Ride ride, Vehicle vehicle, String load, String words, String road) {}

    private Asked asked(VehicleDocument document, Vehicle vehicle, Path file) {
        if (scenario != null) {
            Path found = ScenarioPath.resolve(scenario);
            OwnRide ride = OwnRide.of(found, file, Optional.ofNullable(load));
            return new Asked(
                    ride,
                    ride.vehicle(),
                    ride.load(),
                    "the roads of " + found.getFileName() + " ("
                            + ride.document().asWritten().name() + ")"
                            + (ride.times() > 1
                                    ? ", in which the vehicle stands " + ride.times() + " times, as it does there first"
                                    : ""),
                    WhyBasis.ownRoad(ride));
        }
        String carried = OwnRide.load(vehicle, List.of(), Optional.ofNullable(load));
        UsualRide ride =
                new UsualRide(carried, speed == null ? UsualRide.of(vehicle).speed() : RiddenSpeed.of(spec, speed));
        return new Asked(
                (draw, texts, none) -> ride.scenario(
                        texts.isEmpty() ? vehicle : document.with(texts),
                        file.getFileName().toString(),
                        draw),
                vehicle,
                carried,
                WhyBasis.usual(ride),
                WhyBasis.usualRoad(ride, draws));
    }

    private WhyFindings ridden(SwapDocument rides, String name, Path target) throws IOException {
        List<Question> questions =
                ASKED.stream().map(m -> new Question(m, Optional.empty())).toList();
        Path journal = StudyJournals.beside(target).of(Part.WHOLE);
        String ground = String.join("", new Version().getVersion()) + " " + ProgramDigest.ofThis() + " " + ASKED;
        try (KeptRides kept = KeptRides.open(journal, "why " + name, ground);
                RunWatch watch = new RunWatch(spec.commandLine())) {
            return WhyRun.run(rides, questions, draws, whole, watch.progress(), kept, watch.stop());
        } catch (UncheckedIOException full) {
            throw new IOException(
                    full.getCause().getMessage() + "; the runs that were finished are kept in " + journal
                            + ", and the same command goes on from there",
                    full);
        }
    }
}
