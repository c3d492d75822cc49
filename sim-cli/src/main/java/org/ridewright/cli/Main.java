package org.ridewright.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** The program: {@code ridewright COMMAND …}. */
@Command(
        name = "ridewright",
        description = "Simulates how vehicles ride, from a description written by hand.",
        subcommands = {
            RunCommand.class,
            RoadCommand.class,
            ComfortCommand.class,
            StudyCommand.class,
            CheckCommand.class,
            FieldSheetCommand.class,
            BounceCommand.class,
            FrictionCommand.class,
            ModesCommand.class,
            LoadsCommand.class,
            CalibrateCommand.class,
            WhyCommand.class
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:done",
            "2:the command line was not understood",
            "3:a file has faults, describes a vehicle that cannot stand, or cannot be measured; each fault is listed",
            "4:a run had to be given up",
            "5:results could not be written",
            "70:a defect of the program itself"
        })
public final class Main {
    /** Set by the launcher where the output goes to a terminal. */
    static final String AT_TERMINAL = "ridewright.terminal";

    @Option(names = "--trace", hidden = true, scope = ScopeType.INHERIT)
    private boolean trace;

    private Main() {}

    /** Runs the command line and ends with its exit code. */
    public static void main(String[] arguments) {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        int code;
        try {
            code = commandLine(out, err).execute(arguments);
        } catch (StackOverflowError | OutOfMemoryError e) {
            code = Failures.report(e, err, false);
        }
        out.flush();
        err.flush();
        System.exit(code);
    }

    /** The commands, writing to the given streams. */
    static CommandLine commandLine(PrintWriter out, PrintWriter err) {
        Main main = new Main();
        return new CommandLine(main)
                .registerConverter(int.class, new WholeNumber())
                .registerConverter(Integer.class, new WholeNumber())
                .setOut(out)
                .setErr(err)
                .setUsageHelpWidth(100)
                .setParameterExceptionHandler(new Misunderstood())
                .setExecutionExceptionHandler(new Failures(main));
    }

    /** Whether a stack trace is wanted with a failure. */
    boolean trace() {
        return trace;
    }
}
