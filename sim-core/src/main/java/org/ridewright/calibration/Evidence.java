package org.ridewright.calibration;

import java.util.List;
import org.ridewright.fieldwork.Fact;

/** A fact as numbers, with what predicts them. Immutable. */
interface Evidence {
    /** From which it comes. */
    Fact fact();

    /** At least one. */
    List<Datum> data();

    /** What is not known of the circumstances and is sought besides, such as a speed. */
    default List<Unknown> circumstances() {
        return List.of();
    }

    /**
     * What a vehicle would have shown.
     *
     * @param circumstances values of {@link #circumstances} (SI)
     * @return one number for each datum
     */
    double[] predict(Trial trial, double[] circumstances);

    /** Half-width over standard deviation of a value that may lie anywhere within a band with equal chance. */
    double EVEN = Math.sqrt(3);
}
