package org.ridewright.ride;

/**
 * Counts the swings of a motion after an instant, as an onlooker does in a bounce test: a swing runs from one turning point to the next, is half a
 * cycle, and counts while the motion goes at least {@code visible} to either side, that is while the swing is at least {@code 2 visible}; what ripples
 * less is passed over. The first swing begins at that instant.
 *
 * <p>A swing during which no spring slides, but for at most a twentieth of its time, is the tremor of a body on springs that friction holds. Next to
 * nothing damps it in a model whose friction has one slider, where real springs go on sliding leaf by leaf, so it is no part of the count.
 *
 * <p>Source: common practice of counting bounces; the least motion and the twentieth are those of the bounce test.
 */
final class SwingCounter {
    /** Share of a swing's time for which springs may slide while it is still a tremor, at whose turns they do for a moment. */
    private static final double MOMENTS = 0.05;
    /** Before the end of the run, in which is seen what still swings (s). */
    private static final double LAST = 1;

    private final double visible;
    private final double from;
    private final Last last;
    private double greatest;
    private double after;
    private int swings;
    private int direction;
    private boolean begun;
    private Place start = new Place(0, 0, 0);
    private Place extreme = start;

    /** A sample: time (s), the motion, and for how long springs have slid until then (s). */
    private record Place(double t, double value, double slid) {
        double distance(Place other) {
            return Math.abs(value - other.value);
        }
    }

    /** The motion during the last stretch of the run. */
    private static final class Last {
        private final double from;
        private Place first;
        private Place now;
        private double least = Double.POSITIVE_INFINITY;
        private double most = Double.NEGATIVE_INFINITY;

        Last(double from) {
            this.from = from;
        }

        void accept(Place place) {
            if (place.t >= from) {
                first = first == null ? place : first;
                now = place;
                least = Math.min(least, place.value);
                most = Math.max(most, place.value);
            }
        }

        double held() {
            return first == null || now.slid - first.slid > MOMENTS * (now.t - first.t) ? 0 : (most - least) / 2;
        }
    }

    /**
     * @param visible least motion to either side that counts (unit of the motion), > 0
     * @param from instant from which swings count (s)
     * @param end of the run (s)
     */
    SwingCounter(double visible, double from, double end) {
        this.visible = visible;
        this.from = from;
        last = new Last(Math.max(from, end - LAST));
    }

    /** @param slid for how long springs have slid since the run's beginning (s) */
    void accept(double t, double value, double slid) {
        greatest = Math.max(greatest, Math.abs(value));
        if (t < from) {
            return;
        }
        after = Math.max(after, Math.abs(value));
        Place now = new Place(t, value, slid);
        last.accept(now);
        if (!begun) {
            begun = true;
            start = now;
            extreme = now;
        } else if (direction == 0) {
            begin(now);
        } else if (direction * (value - extreme.value) > 0) {
            extreme = now;
        } else if (now.distance(extreme) >= 2 * visible) {
            end();
            start = extreme;
            extreme = now;
            direction = -direction;
        }
    }

    /** Until the first swing is seen it may go either way. */
    private void begin(Place now) {
        if (now.distance(start) >= 2 * visible) {
            direction = (int) Math.signum(now.value - start.value);
            extreme = now;
        }
    }

    /** A swing has come to its turning point. */
    private void end() {
        if (extreme.slid - start.slid > MOMENTS * (extreme.t - start.t)) {
            swings++;
        }
    }

    /**
     * How far the motion still goes to either side during the last second of the run, if friction holds every spring then; 0 where a spring slides
     * (unit of the motion).
     */
    double leftHeld() {
        return last.held();
    }

    double greatest() {
        return greatest;
    }

    double after() {
        return after;
    }

    /** Cycles, in halves, the swing under way included. */
    double cycles() {
        boolean under = direction != 0 && extreme.slid - start.slid > MOMENTS * (extreme.t - start.t);
        return (swings + (under ? 1 : 0)) / 2.0;
    }
}
