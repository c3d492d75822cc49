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
        if (isLevel(here, from, to)) {
            return surfaces.window(from, to, here.sectionOrLevel(0).height(from));
        }
        return new ProfileSum(List.of(surfaces.window(from, to, 0), here), false)
                .build()
                .near(from, to);
    }

    private static boolean isLevel(RoadProfile profile, double from, double to) {
        return profile.joints() == 0
                || (profile.sections() == 1
                        && profile.section(0) instanceof Section.Straight straight
                        && straight.slope() == 0
                        && profile.joint(0) < from
                        && profile.joint(1) > to);
    }
}
