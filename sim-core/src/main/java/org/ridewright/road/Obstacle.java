package org.ridewright.road;

import java.util.Optional;
import org.ridewright.quantity.Measure;

/** A single departure of the road from the level. Heights are above the level road (m). */
public sealed interface Obstacle {
    /** Where it lies. */
    Lie lie();

    /**
     * Where an obstacle lies.
     *
     * @param at station of its leading edge on the centre line (m); the front axle starts at station 0
     * @param side which wheels it lies before
     * @param skew angle of its leading edge to the square across the road (rad); positive: the left wheel meets it later
     * @param count how many of them follow one another, ≥ 1
     * @param pitch distance from one leading edge to the next (m); needed where there are more than one
     */
    record Lie(Measure at, Side side, Measure skew, int count, Optional<Measure> pitch) {}

    /** Sides of the road. */
    enum Side {
        BOTH("both"),
        LEFT("left"),
        RIGHT("right");

        private final String word;

        Side(String word) {
            this.word = word;
        }

        /** The word as written in files. */
        public String word() {
            return word;
        }
    }

    /** A plank or stone laid on the road: height > 0, length along the road > 0. */
    record Plank(Lie lie, Measure height, Measure length, Shape shape) implements Obstacle {}

    /** Cross-section of a plank along the road. */
    sealed interface Shape {
        /** Square edges. */
        record Rectangular() implements Shape {}

        /** Straight slopes of the given length (m) at both ends, within the plank's length. */
        record Bevelled(Measure slopeLength) implements Shape {}

        /** An arc of a circle over the plank's length; a half circle where the length is twice the height. */
        record HalfRound() implements Shape {}
    }

    /** A lasting change of level: height up, or down if negative; over a ramp if one is given (m). */
    record Step(Lie lie, Measure height, Optional<Measure> ramp) implements Obstacle {}

    /** A hole with upright sides: depth > 0, length > 0. */
    record Pothole(Lie lie, Measure depth, Measure length) implements Obstacle {}

    /** A hump {@code h/2 (1 − cos 2πs/L)}: height h, length L. */
    record Hump(Lie lie, Measure height, Measure length) implements Obstacle {}

    /**
     * A rail across the road.
     *
     * @param height of the rail head above the road, ≥ 0
     * @param width of the head along the road
     * @param edgeRadius of its rounded edges
     * @param grooveWidth of the flangeway behind the head, ≥ 0
     * @param grooveDepth of the flangeway below the road
     */
    record Rail(Lie lie, Measure height, Measure width, Measure edgeRadius, Measure grooveWidth, Measure grooveDepth)
            implements Obstacle {}
}
