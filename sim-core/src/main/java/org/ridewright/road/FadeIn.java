package org.ridewright.road;

/**
 * Share of a random surface that is there: from nothing to all by a half cosine over the run-up, and back over the same length before the
 * end. A stretch shorter than both is at its full height in the middle alone.
 */
final class FadeIn {
    private final double begin;
    private final double end;
    private final double length;

    /**
     * @param begin station (m)
     * @param end station (m); may be infinite
     * @param runUp (m), > 0
     */
    FadeIn(double begin, double end, double runUp) {
        this.begin = begin;
        this.end = end;
        this.length = Math.min(runUp, (end - begin) / 2);
    }

    /** Share at station x, 0 to 1. */
    double share(double x) {
        double s = inward(x);
        return s >= length ? 1 : s <= 0 ? 0 : (1 - StrictMath.cos(Math.PI * s / length)) / 2;
    }

    /** Its change a length (1/m). */
    double slope(double x) {
        double s = inward(x);
        if (s <= 0 || s >= length) {
            return 0;
        }
        double rise = Math.PI / (2 * length) * StrictMath.sin(Math.PI * s / length);
        return x - begin <= end - x ? rise : -rise;
    }

    private double inward(double x) {
        return Math.min(x - begin, end - x);
    }
}
