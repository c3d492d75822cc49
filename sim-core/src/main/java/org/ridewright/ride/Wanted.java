package org.ridewright.ride;

/** What a ride that is measured lightly is asked for; each costs time of its own. */
public enum Wanted {
    /** Weighted measures of ISO 2631-1 of the vertical motion at the seats. */
    SEAT,
    /** The same fore and aft and sideways; goes with {@link #SEAT}. */
    ALL_AXES,
    /** The same at the feet; goes with {@link #SEAT}. */
    FEET,
    /** Heave, jolt, buzz and jerk of the vertical motion at those places, which is three quarters of their work. */
    KINDS_OF_MOTION,
    /** The vertical motion at those places in third octaves; goes with {@link #SEAT}. */
    THIRD_OCTAVES,
    /** Backrest, rotations, floor below a sprung seat and motion sickness; goes with {@link #SEAT}. */
    WHOLE_RIDER,
    /** Extremes of the unweighted accelerations at seats and named points. */
    PEAKS,
    /** R.m.s. of the unweighted vertical accelerations at the same places. */
    LEVELS,
    /** Extremes of the wheels' loads. */
    WHEEL_LOADS,
    /** Extremes of travel and force of springs, dampers, bars and cushions. */
    TRAVEL,
    /** Extreme of the draught. */
    DRAUGHT,
    /** Extremes of the body's heave, roll and pitch, and how they die away. */
    SWINGS
}
