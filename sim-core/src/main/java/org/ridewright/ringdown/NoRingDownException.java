package org.ridewright.ringdown;

/** A record holds no release that can be measured. */
public final class NoRingDownException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String fault;
    private final String expected;
    private final String fix;

    /**
     * @param fault what was found, as a clause
     * @param expected what would do
     * @param fix what most likely puts it right
     */
    public NoRingDownException(String fault, String expected, String fix) {
        super(fault + "; expected " + expected + "; " + fix);
        this.fault = fault;
        this.expected = expected;
        this.fix = fix;
    }

    /** What was found. */
    public String fault() {
        return fault;
    }

    /** What would do. */
    public String expected() {
        return expected;
    }

    /** What most likely puts it right. */
    public String fix() {
        return fix;
    }
}
