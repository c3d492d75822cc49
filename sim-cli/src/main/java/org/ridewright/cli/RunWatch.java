package org.ridewright.cli;

import java.io.PrintWriter;
import java.util.function.BooleanSupplier;
import org.ridewright.study.Runs;
import picocli.CommandLine;

/** Shows progress at a terminal and listens for Ctrl-C while runs are under way. */
final class RunWatch implements AutoCloseable {
    private final CommandLine command;
    private final ProgressLine line;
    private final boolean terminal = Boolean.getBoolean(Main.AT_TERMINAL);
    private final Interruption interruption = new Interruption(this::tellInterrupted);
    private volatile long done;
    private volatile long of;

    RunWatch(CommandLine command) {
        this.command = command;
        line = new ProgressLine(command.getOut(), System::nanoTime);
    }

    Runs.Progress progress() {
        return (now, all) -> {
            done = now;
            of = all;
            if (terminal) {
                line.at(now, all);
            }
        };
    }

    BooleanSupplier stop() {
        return interruption::isStopping;
    }

    private void tellInterrupted() {
        line.clear();
        PrintWriter err = command.getErr();
        err.println("Interrupted: " + done + " of " + of + " runs are kept; the same command goes on from there.");
        err.flush();
    }

    @Override
    public void close() {
        interruption.close();
        line.clear();
    }
}
