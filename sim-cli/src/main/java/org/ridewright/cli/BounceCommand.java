package org.ridewright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Bounce tests, of a vehicle or in a log. */
@Command(
        name = "bounce",
        description = {
            "Of a vehicle file: presses the vehicle down at front, rear and side, lets go and counts, under every load. Beside each ride frequency stand "
                    + "the natural ones with springs that slide and that are held.",
            "Of a log: finds the bounce tests that a phone or a logger recorded, the frequency of each release, and whether dry friction or viscous damping "
                    + "brings it to rest.",
            "Writes report, figures, traces and numbers into a folder."
        },
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class BounceCommand implements Callable<Integer> {
    /** Options of either. */
    private static final Set<String> COMMON = Set.of("--into", "--help", "--version", "--trace");

    @Parameters(
            paramLabel = "VEHICLE|LOG.csv",
            description =
                    "Vehicle file, YAML or JSON, whose ending may be left out; or rows of time and acceleration, as the logger exports them.")
    private Path file;

    @Mixin
    private VehicleBounce vehicle;

    @Mixin
    private LogBounce log;

    @Option(
            names = "--into",
            paramLabel = "FOLDER",
            description =
                    "Where the results go; unless stated, results/<name of the log>, or results/<name of the vehicle file>-bounce.")
    private Path folder;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        boolean isLog = LogBounce.isLog(file);
        for (OptionSpec option : spec.commandLine().getParseResult().matchedOptions()) {
            String name = option.longestName();
            if (!COMMON.contains(name) && VehicleBounce.OPTIONS.contains(name) == isLog) {
                throw new ParameterException(
                        spec.commandLine(),
                        name + " is an option of " + (isLog ? "a vehicle, got a log" : "a log, got a vehicle"));
            }
        }
        return isLog
                ? log.run(spec, file, Optional.ofNullable(folder))
                : vehicle.run(spec, ScenarioPath.resolve(file), Optional.ofNullable(folder));
    }
}
