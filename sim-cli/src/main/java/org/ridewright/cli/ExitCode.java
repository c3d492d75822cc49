package org.ridewright.cli;

/** Exit codes, as listed in the help and in README. */
final class ExitCode {
    static final int DONE = 0;
    static final int MISUNDERSTOOD = 2;
    static final int BAD_INPUT = 3;
    static final int FAILED_RUN = 4;
    static final int NOT_WRITTEN = 5;
    static final int DEFECT = 70;

    private ExitCode() {}
}
