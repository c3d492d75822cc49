package org.ridewright.road;

import java.util.ArrayList;
import java.util.List;

/** Lays out the tracks of a road. Those of one vehicle are made together, since random surfaces are alike from track to track. */
public final class RoadTracks {
    private RoadTracks() {}

    /**
     * One track for each lateral position. An obstacle on the left lies before positions y > 0, one on the right before y < 0.
     *
     * @param ys lateral positions, left positive (m); not modified
     * @throws IllegalArgumentException if an obstacle's dimensions exclude one another; the message says which
     */
    public static List<Track> of(Road road, double... ys) {
        List<Track> tracks = new ArrayList<>();
        for (double y : ys) {
            tracks.add(new ProfileTrack(y, RoadProfile.along(road, y)));
        }
        return tracks;
    }

    /** The centre line, every obstacle met whichever side it lies on: for vehicles without a left and right. */
    public static Track everySide(Road road) {
        return new ProfileTrack(0, RoadProfile.alongEverySide(road));
    }
}
