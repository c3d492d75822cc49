package org.ridewright.fieldwork;

import java.util.List;

/** Which values of the vehicle file a calibration is to find. */
public sealed interface Unknowns {
    /** The file does not say. */
    record NotStated() implements Unknowns {}

    /** Every value that is marked estimated. */
    record EverythingEstimated() implements Unknowns {}

    /**
     * The values at some paths.
     *
     * @param paths such as {@code axles[front].springs[0].rate}
     */
    record Listed(List<String> paths) implements Unknowns {
        public Listed {
            paths = List.copyOf(paths);
        }
    }
}
