package org.ridewright.ride;

/**
 * Counts how often a motion turns before it comes to rest, from samples: memory grows with the turns beyond a threshold alone, of which a
 * motion that dies away has few.
 *
 * <p>A turn is counted by its place; afterwards those farther than the threshold from the last sample, where the motion came to rest, are
 * halves of cycles. A motion that does not die away keeps {@value #MOST} turns, the rest are only counted.
 */
final class SwingCounter {
    private static final int MOST = 400;

    private final double threshold;
    private final double from;
    private final double[] turns = new double[MOST];
    private int count;
    private int beyond;
    private double extreme = Double.NaN;
    private double last = Double.NaN;
    private int direction;
    private double greatest;
    private double after;

    /**
     * @param threshold below which a swing is rest (unit of the motion), > 0
     * @param from instant from which turns count (s)
     */
    SwingCounter(double threshold, double from) {
        this.threshold = threshold;
        this.from = from;
    }

    void accept(double t, double value) {
        greatest = Math.max(greatest, Math.abs(value));
        if (t < from) {
            return;
        }
        after = Math.max(after, Math.abs(value));
        last = value;
        if (Double.isNaN(extreme)) {
            extreme = value;
        } else if (direction == 0) {
            direction = Math.abs(value - extreme) > 0.5 * threshold ? (int) Math.signum(value - extreme) : 0;
            extreme = direction == 0 ? extreme : value;
        } else if (direction * (value - extreme) > 0) {
            extreme = value;
        } else if (direction * (extreme - value) > 0.5 * threshold) {
            turn();
            direction = -direction;
            extreme = value;
        }
    }

    private void turn() {
        if (count < MOST) {
            turns[count++] = extreme;
        } else {
            beyond++;
        }
    }

    double greatest() {
        return greatest;
    }

    double after() {
        return after;
    }

    /** Cycles before rest, in halves. */
    double cycles() {
        int halves = beyond;
        for (int i = 0; i < count; i++) {
            if (Math.abs(turns[i] - last) > threshold) {
                halves++;
            }
        }
        return halves / 2.0;
    }
}
