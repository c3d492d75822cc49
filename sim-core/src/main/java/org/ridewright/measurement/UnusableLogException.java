package org.ridewright.measurement;

/** A log was read but holds nothing that metrics could be taken of. */
public final class UnusableLogException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient LogFault fault;

    /** With its reason. */
    public UnusableLogException(LogFault fault) {
        super(fault.column() + " " + fault.value() + " " + fault.fault());
        this.fault = fault;
    }

    /** What is wrong and what would put it right. */
    public LogFault fault() {
        return fault;
    }
}
