package org.ridewright.road;

import java.util.List;

/** Obstacles, whose whole profile is at hand, with surfaces added window by window. */
final class RoadTrack implements Track {
    private final double y;
    private final RoadProfile obstacles;
    private final SurfaceSum surfaces;

    RoadTrack(double y, RoadProfile obstacles, List<SurfaceTrack> surfaces) {
        this.y = y;
        this.obstacles = obstacles;
        this.surfaces = new SurfaceSum(surfaces);
    }

    @Override
    public double y() {
        return y;
    }

    @Override
    public double begin() {
        double first = obstacles.joints() == 0 ? Double.POSITIVE_INFINITY : obstacles.joint(0);
        return Math.min(first, surfaces.begin());
    }

    @Override
    public double end() {
        double last = obstacles.joints() == 0 ? Double.NEGATIVE_INFINITY : obstacles.joint(obstacles.joints() - 1);
        return Math.max(last, surfaces.end());
    }

    @Override
    public RoadProfile window(double from, double to) {
        RoadProfile here = obstacles.near(from, to);
        if (surfaces.begin() > to || surfaces.end() < from) {
            return here;
        }
        if (here.joints() == 0) {
            return surfaces.window(from, to, here.heightBefore());
        }
        return new ProfileSum(List.of(surfaces.window(from, to, 0), here), false)
                .build()
                .near(from, to);
    }
}
