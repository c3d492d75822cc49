package org.ridewright.road;

/** A track whose whole profile is at hand. */
record ProfileTrack(double y, RoadProfile whole) implements Track {
    @Override
    public double begin() {
        return whole.joints() == 0 ? Double.POSITIVE_INFINITY : whole.joint(0);
    }

    @Override
    public double end() {
        return whole.joints() == 0 ? Double.NEGATIVE_INFINITY : whole.joint(whole.joints() - 1);
    }

    @Override
    public RoadProfile window(double from, double to) {
        return whole.near(from, to);
    }
}
