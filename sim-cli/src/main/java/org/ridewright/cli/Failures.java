package org.ridewright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import org.ridewright.calibration.CalibrationException;
import org.ridewright.dynamics.RideException;
import org.ridewright.io.InputException;
import org.ridewright.io.InputProblem;
import org.ridewright.quantity.UnfitValueException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** Turns what went wrong into a message and an exit code; into a stack trace only where one was asked for. */
final class Failures implements IExecutionExceptionHandler {
    private final Main options;

    Failures(Main options) {
        this.options = options;
    }

    @Override
    public int handleExecutionException(Exception failure, CommandLine command, ParseResult parsed) {
        command.getOut().flush();
        return report(failure, command.getErr(), options.trace());
    }

    /**
     * Says what went wrong.
     *
     * @param trace whether to add the stack trace
     * @return exit code
     */
    static int report(Throwable failure, PrintWriter err, boolean trace) {
        int code = message(failure, err);
        if (trace) {
            failure.printStackTrace(err);
        }
        err.flush();
        return code;
    }

    private static int message(Throwable failure, PrintWriter err) {
        if (failure instanceof InputException input) {
            FaultList told = new FaultList();
            for (InputProblem problem : told.add(input.problems())) {
                err.println(problem.render());
            }
            err.println(told.count() + "; nothing was run.");
            return ExitCode.BAD_INPUT;
        } else if (failure instanceof UnfitValueException || failure instanceof CalibrationException) {
            err.println(failure.getMessage());
            return ExitCode.BAD_INPUT;
        } else if (failure instanceof RideException) {
            err.println("The run was given up: " + failure.getMessage());
            return ExitCode.FAILED_RUN;
        } else if (failure instanceof UncheckedIOException unchecked) {
            return message(unchecked.getCause(), err);
        } else if (failure instanceof IOException io) {
            err.println("The results were not written: " + reason(io) + ".");
            return ExitCode.NOT_WRITTEN;
        } else if (failure instanceof OutOfMemoryError) {
            err.println("The memory did not suffice. Shorten the run or lower the sampling rate in the scenario.");
            return ExitCode.FAILED_RUN;
        }
        err.println("A defect of Ridewright itself: " + failure
                + (failure.getStackTrace().length > 0 ? " at " + failure.getStackTrace()[0] : "")
                + ". Please report it together with the files that led to it.");
        return ExitCode.DEFECT;
    }

    private static String reason(IOException failure) {
        if (!(failure instanceof FileSystemException file)) {
            return String.valueOf(failure.getMessage());
        } else if (file instanceof FileAlreadyExistsException) {
            return file.getFile() + " "
                    + (file.getReason() == null ? "stands in the way and is not a folder" : file.getReason());
        } else if (file instanceof AccessDeniedException) {
            return file.getFile() + " may not be written by this user";
        } else if (file instanceof NoSuchFileException) {
            return "there is no " + file.getFile();
        } else if (file instanceof NotDirectoryException) {
            return file.getFile() + " is not a folder";
        }
        return file.getMessage();
    }
}
