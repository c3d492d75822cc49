package org.ridewright.vehicle;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;

/**
 * Shafts, drawbar or hitch that hold up a point of the body.
 *
 * @param place where it holds the body
 * @param rate (N/m), > 0
 * @param damping a coefficient, or none
 * @param motion of its other end
 * @param levelWith load case under which the body stands level on it; absent: its rate counts from the height that its place has in the
 *     free state
 */
public record Hitch(
        String name, Place place, Measure rate, Damping damping, Motion motion, Optional<String> levelWith) {
    /** Height of the held end against time. */
    public sealed interface Motion {
        /** At rest. */
        record Still() implements Motion {}

        /** {@code a sin(2π f t)}, fading in over the first period. */
        record Sinusoid(Measure amplitude, Measure frequency) implements Motion {}

        /** Recorded heights against time, straight between them. */
        record Recorded(List<Point> points) implements Motion {
            public Recorded {
                points = List.copyOf(points);
            }
        }

        /** Time (s) and height (m). */
        record Point(Measure time, Measure height) {}
    }
}
