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
    /** A bar from the left, or from x = 0, at each sample: level bars for what has names. */
    BARS_ACROSS,
    /** The samples are the edge of an area that is lightly tinted. */
    AREA,
    /** The same, tinted deeper. */
    DEEP_AREA,
    /** Nothing: its name alone stands in the legend, to say what a number on the axis means. */
    KEY;

    /** Whether there is a mark at each sample. */
    boolean marked() {
        return this == MARKS || this == LINE_AND_MARKS;
    }

    /** Whether the samples are the edge of an area. */
    boolean filled() {
        return this == AREA || this == DEEP_AREA;
    }

    /** Whether it is drawn by itself, and not by the chart library. */
    boolean ownInk() {
        return filled() || this == BARS || this == BARS_ACROSS || this == KEY;
    }
}
