package org.ridewright.comfort;

import org.ridewright.signal.Channel;

/**
 * A stretch of time over which metrics are taken.
 *
 * @param from beginning (s)
 * @param to end (s), &gt; from
 */
public record Window(double from, double to) {
    /** @throws IllegalArgumentException if an end is not finite or {@code to} is not after {@code from} */
    public Window {
        if (!Double.isFinite(from) || !Double.isFinite(to) || !(to > from)) {
            throw new IllegalArgumentException(
                    "window must be finite and end after it begins, got " + from + " s to " + to + " s");
        }
    }

    /**
     * From the first to the last sample.
     *
     * @throws IllegalArgumentException if the channel has one sample only
     */
    public static Window of(Channel channel) {
        return new Window(channel.start(), channel.end());
    }

    /** T (s), &gt; 0. */
    public double length() {
        return to - from;
    }

    /** Refuses a channel that does not cover this window; a millionth of a sampling interval is let pass as rounding. */
    void requireWithin(Channel channel) {
        double slack = 1e-6 / channel.sampleRate();
        if (from < channel.start() - slack || to > channel.end() + slack) {
            throw new IllegalArgumentException("window must lie within " + channel.start() + " s to " + channel.end()
                    + " s, got " + from + " s to " + to + " s (channel " + channel.name() + ")");
        }
    }
}
