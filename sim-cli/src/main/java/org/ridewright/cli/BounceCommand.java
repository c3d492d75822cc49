package org.ridewright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Bounce tests. */
@Command(
        name = "bounce",
        description =
                "Finds the bounce tests that a phone or a logger recorded: the frequency of each release, and whether dry friction or viscous"
                        + " damping brings it to rest; writes report, figures, traces and numbers into a folder.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class BounceCommand implements Callable<Integer> {
    @Parameters(paramLabel = "LOG.csv", description = "Rows of time and acceleration, as the logger exports them.")
    private Path file;

    @Mixin
    private LogBounce log;

    @Option(
            names = "--into",
            paramLabel = "FOLDER",
            description = "Where the results go; results/<name of the log> unless stated.")
    private Path folder;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        return log.run(spec, file, Optional.ofNullable(folder));
    }
}
