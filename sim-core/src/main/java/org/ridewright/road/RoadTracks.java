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
        LaneOrder lanes = LaneOrder.of(ys);
        List<List<SurfaceTrack>> surfaces = new ArrayList<>();
        for (int i = 0; i < ys.length; i++) {
            surfaces.add(new ArrayList<>());
        }
        for (Surface surface : road.surfaces()) {
            SurfaceLayout layout = SurfaceLayout.of(surface, lanes, road.runUp().value());
            for (int i = 0; i < ys.length; i++) {
                surfaces.get(i).add(layout.track(ys[i]));
            }
        }
        List<Track> tracks = new ArrayList<>();
        for (int i = 0; i < ys.length; i++) {
            tracks.add(new RoadTrack(ys[i], RoadProfile.along(road, ys[i]), surfaces.get(i)));
        }
        return tracks;
    }

    /**
     * One track for vehicles without a left and right: every obstacle is met whichever side it lies on, and of surfaces that differ from
     * side to side the left is; the rest lies on the centre line.
     */
    public static Track everySide(Road road) {
        LaneOrder lanes = LaneOrder.of(new double[0]);
        List<SurfaceTrack> surfaces = road.surfaces().stream()
                .map(surface ->
                        SurfaceLayout.of(surface, lanes, road.runUp().value()).everySide())
                .toList();
        return new RoadTrack(0, RoadProfile.alongEverySide(road), surfaces);
    }
}
