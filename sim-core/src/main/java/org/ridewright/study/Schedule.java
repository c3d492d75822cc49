package org.ridewright.study;

import java.util.List;

/** The numbered runs of a study, each worked out from its number alone. Implementations belong to one thread. */
public interface Schedule {
    /** How many runs. */
    long size();

    /** Run {@code run}, from 0 to {@link #size} − 1. */
    Trial trial(long run);

    /** Which draw run {@code run} belongs to, counted from 1, the same for all that goes with it; 0 of runs without one. */
    default long draw(long run) {
        return 0;
    }

    /** Heads of the columns of {@link Trial#cells}. */
    List<String> heads();
}
