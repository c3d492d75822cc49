package org.ridewright.bounce;

/**
 * How the body is displaced before it is let go: with a force that grows smoothly over {@link #RAMP}, is held for {@link #HOLD} and is
 * gone at once. The force is the one that gives the depth asked for, but no more than {@code mostForce}.
 *
 * @param lifts upward, with a drop to follow, in place of a push down
 * @param depth by which the pressed place is to have moved when it is let go (m), > 0; infinite where only the force is stated
 * @param mostForce (N), > 0; infinite where only the depth is stated
 */
public record Handling(boolean lifts, double depth, double mostForce) {
    /** Time over which the force grows (s). */
    public static final double RAMP = 2;
    /** Time for which it is held (s). */
    public static final double HOLD = 1;

    /** As deep as people lean for so that the eye sees it well (m). Source: common practice. */
    public static final double USUAL_DEPTH = 0.025;
    /** Two people leaning with most of their weight (N). Source: common practice. */
    public static final double USUAL_FORCE = 1000;

    /** @throws IllegalArgumentException if neither depth nor force is a positive finite number */
    public Handling {
        if (!(depth > 0 && mostForce > 0) || Double.isInfinite(depth) && Double.isInfinite(mostForce)) {
            throw new IllegalArgumentException(
                    "a push needs a depth or a force above 0, got " + depth + " m, " + mostForce + " N");
        }
    }

    /** What people do: down by {@link #USUAL_DEPTH}, or as far as {@link #USUAL_FORCE} goes. */
    public static Handling person() {
        return new Handling(false, USUAL_DEPTH, USUAL_FORCE);
    }

    /** Pushed down with a force (N). */
    public static Handling push(double force) {
        return new Handling(false, Double.POSITIVE_INFINITY, force);
    }

    /** Pushed down by a depth (m), whatever force it takes. */
    public static Handling pushTo(double depth) {
        return new Handling(false, depth, Double.POSITIVE_INFINITY);
    }

    /** Lifted by a height (m), whatever force it takes, and dropped. */
    public static Handling drop(double height) {
        return new Handling(true, height, Double.POSITIVE_INFINITY);
    }

    /** +1 for a push down, −1 for a lift. */
    double sense() {
        return lifts ? -1 : 1;
    }
}
