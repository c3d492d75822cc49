package org.ridewright.study;

import java.util.List;

/** The numbered runs of a study, each worked out from its number alone. Implementations belong to one thread. */
public interface Schedule {
    /** How many runs. */
    long size();

    /** Run {@code run}, from 0 to {@link #size} − 1. */
    Trial trial(long run);

    /** Heads of the columns of {@link Trial#cells}. */
    List<String> heads();
}
