package org.ridewright.roughness;

import org.ridewright.road.RoadProfile;
import org.ridewright.road.Track;

/**
 * Heights read off a piece of a track. Beyond the piece the road is taken as level at the height of its ends: a measured profile is followed by
 * level ground at height 0, and a wheel at its end must not climb up to that.
 */
final class TrackHeights implements HeightSource {
    private final Track track;
    private final double start;
    private final double spacing;
    private final long size;

    /**
     * @param start station of the first height (m)
     * @param spacing (m), > 0
     * @param size number of heights, ≥ 1
     */
    TrackHeights(Track track, double start, double spacing, long size) {
        this.track = track;
        this.start = start;
        this.spacing = spacing;
        this.size = size;
    }

    @Override
    public double spacing() {
        return spacing;
    }

    @Override
    public double start() {
        return start;
    }

    @Override
    public long size() {
        return size;
    }

    @Override
    public void read(long first, double[] into) {
        RoadProfile profile = track.window(station(first), station(first + into.length));
        for (int i = 0; i < into.length; i++) {
            into[i] = profile.height(station(first + i));
        }
    }

    /** Of a height, or of the nearest one that the piece has. */
    private double station(long i) {
        return start + Math.max(0, Math.min(size - 1, i)) * spacing;
    }
}
