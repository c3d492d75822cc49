package org.ridewright.solver;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.ridewright.dynamics.Equations;

/** Runs the benchmarks and writes their table. Argument: the file to write. */
public final class WriteBenchmarks {
    private static final Map<String, String> MEANING = Map.of(
            "coefficient", "one Taylor coefficient of two axles with four springs (8 elements, 7 coordinates)",
            "step", "one step of 1 ms of the same: series at the usual tolerance, guards, energy",
            "event", "first crossing of one guard of degree 8, isolated and refined",
            "noEvent", "one guard of degree 8 that is not crossed",
            "crossing", "3 s with a 40 mm plank under both axles, two axles with four seats",
            "gravelOfCubics", "60 s of gravel of the same, cubic between joints 8 ms apart",
            "gravelOfStraights", "60 s of gravel of the same, straight between joints 1 ms apart",
            "growth", "10 s of gravel, cubic between joints 8 ms apart");

    private WriteBenchmarks() {}

    public static void main(String[] args) throws RunnerException, IOException {
        Collection<RunResult> results = new Runner(new OptionsBuilder()
                        .include("KernelBenchmark|RideBenchmark")
                        .forks(1)
                        .warmupIterations(3)
                        .warmupTime(TimeValue.seconds(1))
                        .measurementIterations(5)
                        .measurementTime(TimeValue.seconds(1))
                        .build())
                .run();
        StringBuilder page = new StringBuilder("# Benchmarks\n\n");
        page.append("Written by `mvn -q -Pbenchmark -pl sim-core` with JMH; one fork, three warm-up and five measured "
                + "seconds. Errors are JMH's 99.9 % intervals; a figure whose error is above 20 % is worthless: run it again on a "
                + "quiet machine.\n\n");
        page.append(String.format(
                Locale.ROOT,
                "Machine: %d processors, %s, Java %s.%n%n",
                Runtime.getRuntime().availableProcessors(),
                System.getProperty("os.arch"),
                System.getProperty("java.version")));
        page.append("| benchmark | what | time | error |\n|---|---|---:|---:|\n");
        results.stream().filter(r -> !name(r).equals("growth")).forEach(r -> row(page, r));
        page.append("\nGrowth with the vehicle, each over the same kind of gravel:\n\n");
        page.append("| vehicle | elements | coordinates | steps a simulated second | time | error | time a step | a step and element |\n"
                + "|---|---:|---:|---:|---:|---:|---:|---:|\n");
        results.stream().filter(r -> name(r).equals("growth")).forEach(r -> growth(page, r));
        Files.writeString(Path.of(args[0]), page.toString());
    }

    private static String name(RunResult result) {
        String full = result.getParams().getBenchmark();
        return full.substring(full.lastIndexOf('.') + 1);
    }

    private static void row(StringBuilder page, RunResult result) {
        TimeWithError time = time(result);
        page.append(String.format(
                Locale.ROOT,
                "| %s | %s | %s | %s |%n",
                name(result),
                MEANING.get(name(result)),
                time.timeText(),
                time.errorText()));
    }

    private static TimeWithError time(RunResult result) {
        Result<?> time = result.getPrimaryResult();
        return new TimeWithError(
                time.getScore(), time.getScoreError(), time.getScoreUnit().replace("/op", ""));
    }

    private static void growth(StringBuilder page, RunResult result) {
        String vehicle = result.getParams().getParam("vehicle");
        Equations equations = RideBenchmark.Size.equations(vehicle);
        double duration = 10;
        long steps = RegimeSolver.solve(BenchVehicles.gravel(equations, duration, true), step -> {})
                .statistics()
                .steps();
        double time = result.getPrimaryResult().getScore();
        page.append(String.format(
                Locale.ROOT,
                "| %s | %d | %d | %.0f | %s | %s | %.0f ns | %.0f ns |%n",
                vehicle,
                equations.elements().size(),
                equations.size(),
                steps / duration,
                time(result).timeText(),
                time(result).errorText(),
                time * 1e6 / steps,
                time * 1e6 / steps / equations.elements().size()));
    }
}
