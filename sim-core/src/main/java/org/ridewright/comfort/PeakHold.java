package org.ridewright.comfort;

/** Largest size of the samples within a window; an end within rounding of a sample counts as that sample. */
final class PeakHold {
    private final Sampling sampling;
    private final double from;
    private final double to;
    private double largest;
    private long count;

    PeakHold(Sampling sampling, double from, double to) {
        this.sampling = sampling;
        double slack = Sampling.SLACK / sampling.rate();
        this.from = from - slack;
        this.to = to + slack;
    }

    PeakHold(Sampling sampling, Window window) {
        this(sampling, window.from(), window.to());
    }

    void accept(double sample) {
        double time = sampling.time(count++);
        if (time >= from && time <= to) {
            largest = Math.max(largest, Math.abs(sample));
        }
    }

    double largest() {
        return largest;
    }
}
