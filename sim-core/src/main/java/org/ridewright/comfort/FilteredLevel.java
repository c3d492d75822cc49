package org.ridewright.comfort;

import org.ridewright.signal.AnalogueFilter;

/** R.m.s. and peak over a window of what a filter makes of samples that come one by one. */
final class FilteredLevel {
    private final LevelMeter meter;
    private final FilterFeed feed;

    FilteredLevel(AnalogueFilter filter, Sampling sampling, Window window, StartUp startUp) {
        meter = new LevelMeter(sampling, window);
        feed = new FilterFeed(filter.at(sampling.rate()), startUp, meter::accept);
    }

    void accept(double sample) {
        feed.accept(sample);
    }

    /** To be called after the last sample. */
    Level level() {
        feed.finish();
        return meter.level();
    }
}
