package org.ridewright.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ridewright.figure.Figure;
import org.ridewright.figure.FigureFiles;
import org.ridewright.figure.FigureWriter;
import org.ridewright.io.ResultFolder;
import org.ridewright.report.FigureGroup;
import org.ridewright.report.FileNamePart;
import org.ridewright.report.HtmlReport;
import org.ridewright.report.MetricsJson;
import org.ridewright.report.TracesCsv;
import org.ridewright.ride.RideResult;
import org.ridewright.ride.Scenario;
import org.ridewright.signal.Channel;
import org.ridewright.uncertainty.UncertainRide;
import org.ridewright.uncertainty.UncertainRides;

/** The files that a run leaves. */
final class RunFiles {
    private RunFiles() {}

    /** Report, figures, traces and numbers, into a folder not yet in its place. */
    static void write(ResultFolder results, Scenario scenario, List<RideResult> rides) throws IOException {
        List<FigureFiles> drawn = drawn(results, FigureGroup.of(scenario, rides));
        traces(results, rides);
        results.write("metrics.json", utf8(MetricsJson.render(scenario, rides)));
        results.write("report.html", utf8(HtmlReport.render(scenario, rides, drawn)));
    }

    /** The same with intervals and bands. */
    static void write(ResultFolder results, Scenario scenario, UncertainRides.Outcome outcome) throws IOException {
        List<FigureFiles> drawn = drawn(results, FigureGroup.of(scenario, outcome));
        List<RideResult> rides =
                outcome.rides().stream().map(UncertainRide::ride).toList();
        traces(results, rides);
        IdentityHashMap<RideResult, String> names = new IdentityHashMap<>();
        named(rides).forEach((name, ride) -> names.put(ride, name));
        for (UncertainRide ride : outcome.rides()) {
            if (!ride.bands().isEmpty()) {
                List<Channel> bands = ride.bands().stream()
                        .flatMap(band -> Stream.of(band.low(), band.median(), band.high()))
                        .toList();
                results.write("traces/" + names.get(ride.ride()) + "-bands.csv", utf8(TracesCsv.render(bands)));
            }
        }
        results.write("metrics.json", utf8(MetricsJson.render(scenario, outcome)));
        results.write("report.html", utf8(HtmlReport.render(scenario, outcome, drawn)));
    }

    private static List<FigureFiles> drawn(ResultFolder results, List<FigureGroup> groups) throws IOException {
        List<Figure> figures =
                groups.stream().flatMap(g -> g.figures().stream()).toList();
        List<FigureFiles> drawn = new FigureWriter().files(figures);
        for (FigureFiles figure : drawn) {
            results.write("figures/" + figure.fileName() + ".svg", utf8(figure.svg()));
            results.write("figures/" + figure.fileName() + ".png", figure.png());
            results.write("figures/" + figure.fileName() + ".pdf", figure.pdf());
        }
        return drawn;
    }

    /** Several at a time: they are long. */
    private static void traces(ResultFolder results, List<RideResult> rides) throws IOException {
        Map<String, RideResult> byName = named(rides);
        try {
            byName.entrySet().parallelStream().forEach(e -> trace(results, e.getKey(), e.getValue()));
        } catch (UncheckedIOException failed) {
            throw failed.getCause();
        }
    }

    private static void trace(ResultFolder results, String name, RideResult ride) {
        try {
            results.write("traces/" + name + ".csv", utf8(TracesCsv.render(ride)));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static Map<String, RideResult> named(List<RideResult> rides) {
        Map<String, RideResult> byName = new HashMap<>();
        Set<String> taken = new HashSet<>();
        for (RideResult ride : rides) {
            String name = traceName(ride);
            String unlike = name;
            for (int n = 2; !taken.add(unlike); n++) {
                unlike = name + "-" + n;
            }
            byName.put(unlike, ride);
        }
        return byName;
    }

    private static String traceName(RideResult ride) {
        return Stream.of(
                        ride.model().vehicle().name(),
                        ride.model().loadCase().name(),
                        ride.road().name(),
                        Wording.speed(ride))
                .map(RunFiles::plain)
                .collect(Collectors.joining("-"));
    }

    /** Small letters, digits, points and hyphens, as every file system takes them. */
    static String plain(String text) {
        String plain = text.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}.]+", "-")
                .replaceAll("^[-.]+|[-.]+$", "");
        return plain.isEmpty() ? "unnamed" : FileNamePart.shortened(plain);
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
