package org.ridewright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.ToDoubleFunction;
import org.ridewright.figure.FigureFiles;
import org.ridewright.figure.FigureWriter;
import org.ridewright.friction.ForcedResponse;
import org.ridewright.friction.FrictionLab;
import org.ridewright.friction.RingDowns;
import org.ridewright.friction.TradeOff;
import org.ridewright.friction.VehicleDraws;
import org.ridewright.io.ResultFolder;
import org.ridewright.io.VehicleDocument;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Measures;
import org.ridewright.quantity.QuantityFormatException;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.report.FigureGroup;
import org.ridewright.report.FrictionMetricsJson;
import org.ridewright.report.FrictionPage;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.Vehicle;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What the dry friction of its springs does to a vehicle. */
@Command(
        name = "friction",
        description = {
            "Finds what the dry friction of a vehicle's springs does: load–deflection loops, ring-downs oiled, as written and rusted, motion over a "
                    + "sinusoidal road, and what more or less friction makes of a plank and of gravel, with the best where there is one.",
            "Writes report, figures and numbers into a folder. It rides some three thousand times: a minute or two on two cores."
        },
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class FrictionCommand implements Callable<Integer> {
    private static final double KMH = 3.6;
    /** Faster than this nobody rides on gravel for comfort (m/s). */
    private static final double FASTEST = 60 / KMH;

    private static final double USUAL_TOP = 24 / KMH;
    private static final int MOST_SPEEDS = 5;
    private static final int MOST_AMPLITUDES = 4;
    private static final double GREATEST_WAVE = 0.2;
    private static final int MOST_DRAWS = 200;

    @Parameters(paramLabel = "VEHICLE", description = "A vehicle file; the ending .yaml may be left out.")
    private Path named;

    @Option(
            names = "--into",
            paramLabel = "FOLDER",
            description = "Where the results go; results/<name of the file>-friction unless stated.")
    private Path folder;

    @Option(
            names = "--load",
            paramLabel = "NAME",
            description =
                    "Load case of everything but the loops; the middle one of those with somebody aboard unless stated.")
    private String load;

    @Option(
            names = "--speed",
            paramLabel = "SPEED",
            description =
                    "Speed over plank and gravel, such as '9 mph'; up to five times. A third, two thirds and the whole of the top speed, at most of 60 km/h, unless stated.")
    private List<String> speeds = new ArrayList<>();

    @Option(
            names = "--amplitude",
            paramLabel = "LENGTH",
            description = "Of the sinusoidal road, such as '2 mm'; up to four times. 1, 3 and 10 mm unless stated.")
    private List<String> amplitudes = new ArrayList<>();

    @Option(
            names = "--depth",
            paramLabel = "LENGTH",
            description = "How far down the body is pressed before it is let go; 25 mm unless stated.")
    private String depth;

    @Option(
            names = "--draws",
            paramLabel = "N",
            description =
                    "Draws of vehicle and road, from which intervals come, up to 200; 1 for none; ${DEFAULT-VALUE} unless stated.",
            defaultValue = "" + TradeOff.USUAL_DRAWS)
    private int draws;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        if (draws < 1 || draws > MOST_DRAWS) {
            throw refused("--draws must be from 1 to " + MOST_DRAWS + ", got " + draws);
        }
        Path file = ScenarioPath.resolve(named);
        Path target = folder != null ? folder : Path.of("results", ScenarioPath.stem(file) + "-friction");
        VehicleDocument document = VehicleDocument.read(file);
        FrictionLab.Settings settings = settings(document.asWritten());
        PrintWriter out = spec.commandLine().getOut();
        try (ResultFolder results =
                ResultFolder.begin(target, "friction of " + document.asWritten().name())) {
            FrictionLab lab = lab(new VehicleDraws(document, document.spread()), settings, out);
            FrictionTable.lines(lab).forEach(out::println);
            out.flush();
            List<FigureGroup> groups = FrictionPage.groups(lab);
            List<FigureFiles> drawn = new FigureWriter().files(FrictionPage.figures(groups));
            PageFolder.write(results, drawn, FrictionMetricsJson.render(lab), FrictionPage.render(lab, groups, drawn));
            results.commit();
        }
        out.println("Report: " + target.resolve("report.html"));
        return ExitCode.DONE;
    }

    private static FrictionLab lab(VehicleDraws vehicles, FrictionLab.Settings settings, PrintWriter out) {
        if (!Boolean.getBoolean(Main.AT_TERMINAL)) {
            return FrictionLab.of(vehicles, settings, (done, of) -> {});
        }
        ProgressLine line = new ProgressLine(out, System::nanoTime);
        try {
            return FrictionLab.of(vehicles, settings, line::at);
        } finally {
            line.clear();
        }
    }

    private FrictionLab.Settings settings(Vehicle vehicle) {
        List<Double> waves = several("--amplitude", amplitudes, MOST_AMPLITUDES, this::amplitude);
        List<Double> ridden = several("--speed", speeds, MOST_SPEEDS, text -> RiddenSpeed.of(spec, text));
        return new FrictionLab.Settings(
                loadCase(vehicle),
                ridden.isEmpty() ? usualSpeeds(vehicle) : ridden,
                waves.isEmpty() ? ForcedResponse.USUAL : waves,
                depth == null ? RingDowns.USUAL_DEPTH : length("--depth", depth),
                draws);
    }

    private String loadCase(Vehicle vehicle) {
        if (load != null) {
            return vehicle.loadCase(load)
                    .map(LoadCase::name)
                    .orElseThrow(() -> refused("no load case '" + load + "'; the file has "
                            + String.join(
                                    ", ",
                                    vehicle.loadCases().stream()
                                            .map(LoadCase::name)
                                            .toList())));
        }
        return FrictionLab.usualLoad(vehicle).name();
    }

    /** In whole km/h. */
    private static List<Double> usualSpeeds(Vehicle vehicle) {
        double top = Math.min(FASTEST, vehicle.topSpeed().map(Measure::value).orElse(USUAL_TOP));
        List<Double> usual = new ArrayList<>();
        for (int i = 1; i <= 3; i++) {
            usual.add(Math.max(1, Math.rint(KMH * top * i / 3)) / KMH);
        }
        return usual.stream().distinct().toList();
    }

    private List<Double> several(String option, List<String> written, int most, ToDoubleFunction<String> read) {
        if (written.size() > most) {
            throw refused(option + " may be given " + most + " times at most");
        }
        return written.stream().mapToDouble(read).distinct().sorted().boxed().toList();
    }

    private double amplitude(String written) {
        double value = length("--amplitude", written);
        if (value > GREATEST_WAVE) {
            throw refused("--amplitude may be up to 200 mm, got '" + written
                    + "'; on greater waves nothing stays on the road");
        }
        return value;
    }

    private double length(String option, String written) {
        try {
            double value = Measures.parse(written, QuantityKind.LENGTH).value();
            if (value > 0) {
                return value;
            }
            throw refused(option + " must be above 0, got '" + written + "'");
        } catch (QuantityFormatException unreadable) {
            throw new ParameterException(spec.commandLine(), option + ": " + unreadable.getMessage(), unreadable);
        }
    }

    private ParameterException refused(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
