package org.ridewright.figure;

/** How the samples of a series become ink. */
public enum Trace {
    /** Straight from sample to sample. */
    LINE,
    /** Each value held until the next sample. */
    STEP,
    /** A mark at each sample, no line. */
    MARKS,
    /** Straight from sample to sample, with a mark at each. */
    LINE_AND_MARKS,
    /** A bar from zero at each sample, those of several series side by side. */
    BARS,
    /** Nothing: its name alone stands in the legend, to say what a number on the axis means. */
    KEY;

    /** Whether there is a mark at each sample. */
    boolean marked() {
        return this == MARKS || this == LINE_AND_MARKS;
    }
}
