package org.ridewright.cli;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says what is wrong with a command line in a line or two, without all that the command could do. */
final class Misunderstood implements IParameterExceptionHandler {
    @Override
    public int handleParseException(ParameterException failure, String[] arguments) {
        CommandLine command = failure.getCommandLine();
        PrintWriter err = command.getErr();
        if (arguments.length == 0) {
            command.usage(err);
            return ExitCode.MISUNDERSTOOD;
        }
        err.println(failure.getMessage());
        UnmatchedArgumentException.printSuggestions(failure, err);
        err.println("See " + command.getCommandSpec().qualifiedName() + " --help");
        err.flush();
        return ExitCode.MISUNDERSTOOD;
    }
}
