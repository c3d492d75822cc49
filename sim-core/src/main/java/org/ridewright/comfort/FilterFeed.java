package org.ridewright.comfort;

import java.util.function.DoubleConsumer;
import org.ridewright.signal.FilterStream;
import org.ridewright.signal.SampledFilter;

/** Hands what a filter makes of samples on to a meter. */
final class FilterFeed {
    private final SampledFilter filter;
    private final StartUp startUp;
    private final DoubleConsumer meter;
    private FilterStream stream;

    FilterFeed(SampledFilter filter, StartUp startUp, DoubleConsumer meter) {
        this.filter = filter;
        this.startUp = startUp;
        this.meter = meter;
    }

    void accept(double sample) {
        if (stream == null) {
            stream = startUp == StartUp.AT_REST ? filter.stream() : filter.streamAfter(sample);
        }
        if (stream.accept(sample)) {
            meter.accept(stream.output());
        }
    }

    /** After the last sample. */
    void finish() {
        while (stream != null && stream.drain()) {
            meter.accept(stream.output());
        }
    }
}
