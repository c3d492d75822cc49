package org.ridewright.friction;

/** What is asked of a ride with more or less friction. */
public enum Criterion {
    /** Greatest vertical acceleration, up or down, at the worst seat. */
    PLANK_PEAK("peak over the plank", "m/s²", true),
    /** Weighted vertical r.m.s. at the worst seat, ISO 2631-1. */
    WEIGHTED("weighted acceleration", "m/s²", true),
    /** Greatest pitch from rest after the last axle has left the plank. */
    PITCH_AFTER("pitch after the last axle's hit", "rad", true),
    /**
     * Cycles of heave or pitch, whichever takes more, after the last axle has left the plank: swings of at least 2 mm or 2 mrad from turn to turn,
     * without the tremor on held springs, as far as the run goes.
     */
    CYCLES("cycles to rest", "", true),
    /** How far heave goes to either side in the last second behind the plank, on springs that friction holds; 0 where a spring slides. */
    HEAVE_LEFT("heave left on held springs", "m", false),
    /** The same of pitch. */
    PITCH_LEFT("pitch left on held springs", "rad", false),
    /** Share of the time during which a spring is locked, mean of the springs that rub. */
    LOCKED("time locked", "", false);

    /** Half of the least difference of vibration that seated people notice, about a tenth (from memory). */
    public static final double NEAR = 0.05;

    private static final double HALF_CYCLE = 0.5;

    private final String title;
    private final String unit;
    private final boolean lessIsBetter;

    Criterion(String title, String unit, boolean lessIsBetter) {
        this.title = title;
        this.unit = unit;
        this.lessIsBetter = lessIsBetter;
    }

    /** What it is, in words. */
    public String title() {
        return title;
    }

    /** Unit of its numbers. */
    public String unit() {
        return unit;
    }

    /**
     * The greatest value that is as good as a least one: {@link #NEAR} above it, or half a cycle, the step in which cycles are counted.
     */
    public double asGoodAs(double least) {
        return this == CYCLES ? least + HALF_CYCLE : (1 + NEAR) * least;
    }

    /** Whether it has a best, which is its least; the others are no good or ill in themselves. */
    public boolean lessIsBetter() {
        return lessIsBetter;
    }
}
