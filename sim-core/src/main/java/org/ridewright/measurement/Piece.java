package org.ridewright.measurement;

import java.util.Map;
import org.ridewright.comfort.Window;
import org.ridewright.signal.Channel;

/**
 * An unbroken stretch of a log, upright and at even instants, gravity taken off.
 *
 * @param channels X forward, Y left, Z up (m/s²), as far as logged; where forward is not known, X and Y are some two horizontal directions
 * @param window what counts: without the start-up of the filters and the last samples, which they see only in part
 */
public record Piece(Map<LogAxis, Channel> channels, Window window) {
    public Piece {
        channels = Map.copyOf(channels);
    }

    /** The vertical one. */
    public Channel vertical() {
        return channels.get(LogAxis.Z);
    }
}
