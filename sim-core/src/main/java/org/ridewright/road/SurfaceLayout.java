package org.ridewright.road;

/** Lays out one surface along any of the tracks of a vehicle. */
interface SurfaceLayout {
    /** Its track at a lateral position of the lane order that it was made for (m). */
    SurfaceTrack track(double y);

    /** Its track for a vehicle without a left and right. */
    default SurfaceTrack everySide() {
        return track(0);
    }

    /** @param runUp of the road (m), > 0 */
    static SurfaceLayout of(Surface surface, LaneOrder lanes, double runUp) {
        if (surface instanceof Surface.Spectral spectral) {
            return new SpectralSurface(spectral, lanes, runUp);
        }
        if (surface instanceof Surface.Washboard washboard) {
            return new WashboardSurface(washboard);
        }
        if (surface instanceof Surface.Setts setts) {
            return new SettsSurface(setts);
        }
        if (surface instanceof Surface.Ruts ruts) {
            return new RutsSurface(ruts);
        }
        if (surface instanceof Surface.Twist twist) {
            return new TwistSurface(twist);
        }
        if (surface instanceof Surface.Joints joints) {
            return new JointsSurface(joints);
        }
        if (surface instanceof Surface.Stones stones) {
            return new StonesSurface(stones);
        }
        if (surface instanceof Surface.Measured measured) {
            return new MeasuredSurface(measured, runUp);
        }
        throw new IllegalStateException("no layout for " + surface.getClass());
    }
}
