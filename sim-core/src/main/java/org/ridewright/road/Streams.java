package org.ridewright.road;

/** Streams of noise of the kinds of surface, so that two kinds with one seed have nothing in common. Spectral layers use those above 999. */
final class Streams {
    static final int WASHBOARD = 1;
    static final int SETT_LENGTHS = 2;
    static final int SETT_HEIGHTS = 3;
    static final int RUTS_LEFT = 4;
    static final int RUTS_RIGHT = 5;
    static final int STONES = 6;
    static final int TWIST = 7;
    static final int JOINTS = 8;

    private Streams() {}
}
