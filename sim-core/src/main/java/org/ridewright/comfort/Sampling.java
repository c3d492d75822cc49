package org.ridewright.comfort;

/**
 * When samples are taken: sample i at {@code start + i/rate}.
 *
 * @param start instant of the first sample (s), finite
 * @param rate samples per second (Hz), &gt; 0 and finite
 */
record Sampling(double start, double rate) {
    /** An instant within this share of a sample interval of a sample counts as that sample: times carry rounding. */
    static final double SLACK = 1e-6;

    Sampling {
        if (!(rate > 0) || Double.isInfinite(rate)) {
            throw new IllegalArgumentException("sampling rate must be > 0 Hz and finite, got " + rate + " Hz");
        }
        if (!Double.isFinite(start)) {
            throw new IllegalArgumentException("start must be finite, got " + start + " s");
        }
    }

    /** Instant of sample i (s). */
    double time(long i) {
        return start + i / rate;
    }

    /** Place of an instant, counted in samples from the first; not below 0. */
    double place(double time) {
        return Math.max(0, snapped((time - start) * rate));
    }

    /** A place within the slack of a sample is that sample. */
    static double snapped(double place) {
        double nearest = Math.rint(place);
        return Math.abs(place - nearest) < SLACK ? nearest : place;
    }

    /** Refuses a window that begins before the first sample. */
    void requireBefore(Window window) {
        if (window.from() < start - SLACK / rate) {
            throw new IllegalArgumentException("window must lie within the samples, which begin at " + start
                    + " s, got " + window.from() + " s to " + window.to() + " s");
        }
    }
}
