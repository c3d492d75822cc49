package org.ridewright.road;

/**
 * The road along one lateral position, given window by window, so that a long road needs no more memory than a short one.
 *
 * <p>The same station has the same height, to the last bit, whatever the window and in whatever order windows are asked for; walking
 * forward is quickest. Tracks that were made together share what they have worked out last: they serve one thread at a time.
 */
public interface Track {
    /** Lateral position, left positive (m). */
    double y();

    /** Station up to which the track is level at height 0 (m); +∞ where it is so throughout. */
    double begin();

    /** Station from which on the track is level (m), at whatever height; −∞ where it is so throughout, +∞ where it never is. */
    double end();

    /**
     * The profile near a window. It is the road's own for every station of the window; outside it goes on for no more than the
     * sections that reach across the window's ends, and is level from there on, without a jump.
     *
     * @param from where the window begins (m)
     * @param to where it ends (m), ≥ from
     * @throws IllegalArgumentException if the window is not finite, or ends before it begins
     */
    RoadProfile window(double from, double to);
}
