package org.ridewright.ringdown;

/**
 * An unbroken stretch of a record, at the instants at which it was sampled. Immutable by agreement: the arrays are handed over and not copied.
 *
 * @param times rising (s), at least two
 * @param values acceleration, zero at rest or nearly (m/s²), as many
 */
public record Stretch(double[] times, double[] values) {
    /**
     * Checks the lengths.
     *
     * @throws IllegalArgumentException if there are fewer than two samples, or not as many values as instants
     */
    public Stretch {
        if (times.length < 2 || times.length != values.length) {
            throw new IllegalArgumentException("a stretch needs two samples or more and a value for each, got "
                    + times.length + " instants and " + values.length + " values");
        }
    }

    /** Mean samples per second (Hz). */
    public double rate() {
        return (times.length - 1) / (times[times.length - 1] - times[0]);
    }

    double start() {
        return times[0];
    }

    double end() {
        return times[times.length - 1];
    }

    /** Number of the first sample at or after an instant. */
    int from(double time) {
        int low = 0;
        int high = times.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (times[middle] < time) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
