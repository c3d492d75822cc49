package org.ridewright.figure;

/** Where the names of a panel's series stand; never over the curves. */
public enum LegendPlace {
    /** Not named. */
    NONE,
    /** Below the panel, in rows. */
    BELOW,
    /** To the right of the panel, one below the other. */
    RIGHT,
    /** Once at the foot of the figure, together with the other panels that share it. */
    SHARED
}
