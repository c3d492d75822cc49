package org.ridewright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileAlreadyExistsException;
import org.ridewright.dynamics.RideException;
import org.ridewright.io.InputException;
import org.ridewright.io.InputProblem;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** Turns what went wrong into a message and an exit code; never into a stack trace. */
final class Failures implements IExecutionExceptionHandler {
    @Override
    public int handleExecutionException(Exception failure, CommandLine command, ParseResult parsed) {
        return report(failure, command.getErr());
    }

    static int report(Exception failure, PrintWriter err) {
        if (failure instanceof InputException input) {
            for (InputProblem problem : input.problems()) {
                err.println(problem.render());
            }
            int count = input.problems().size();
            err.println(count == 1 ? "1 fault; nothing was run." : count + " faults; nothing was run.");
            return ExitCode.BAD_INPUT;
        } else if (failure instanceof RideException) {
            err.println("The run was given up: " + failure.getMessage());
            return ExitCode.FAILED_RUN;
        } else if (failure instanceof FileAlreadyExistsException) {
            err.println("The results were not written: " + failure.getMessage()
                    + ". Name another folder with --into, or remove this one yourself.");
            return ExitCode.NOT_WRITTEN;
        } else if (failure instanceof IOException) {
            err.println("The results were not written: " + failure.getMessage());
            return ExitCode.NOT_WRITTEN;
        }
        err.println("A defect of Ridewright itself: " + failure
                + (failure.getStackTrace().length > 0 ? " at " + failure.getStackTrace()[0] : "")
                + ". Please report it together with the files that led to it.");
        return ExitCode.DEFECT;
    }
}
