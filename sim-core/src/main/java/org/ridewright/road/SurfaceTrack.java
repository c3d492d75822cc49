package org.ridewright.road;

/** A surface along one track: cubic pieces of the station between a beginning and an end, level at 0 outside them. */
interface SurfaceTrack {
    /** Where it begins (m), a joint. */
    double begin();

    /** Where it ends (m), a joint; +∞ where it does not. */
    double end();

    /**
     * Gives the pieces that touch [from, to], each whole, so that a piece is the same whatever the window. There may be more of them on
     * either side.
     *
     * @param out takes them from left to right
     */
    void pieces(double from, double to, Pieces out);
}
