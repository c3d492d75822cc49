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
        throw new IllegalStateException("no layout for " + surface.getClass());
    }
}
