package org.ridewright.vehicle;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;

/**
 * A damper, or the like pair of them; figures are those of one.
 *
 * @param name unique on its axle
 * @param law force against speed; absent for a friction damper
 * @param friction constant dry friction (N), ≥ 0
 * @param lockedRate rate of the mountings before the friction slides (N/m); absent: the friction divided by 1 mm, estimated
 * @param motionRatio damper travel over wheel travel, independent wheels only, > 0
 */
public record Damper(
        String name,
        Attachment attachment,
        Optional<Law> law,
        Measure friction,
        Optional<Measure> lockedRate,
        Optional<Measure> motionRatio) {
    /** Force against speed of compression. */
    public sealed interface Law {
        /** Damping in bump and in rebound (N·s/m), each ≥ 0. */
        record Rates(Measure bump, Measure rebound) implements Law {}

        /** Points, speed strictly rising (bump positive); straight between them, end slopes continued. */
        record Table(List<Point> points) implements Law {
            public Table {
                points = List.copyOf(points);
            }
        }

        /** Speed of compression (m/s) and force against it (N). */
        record Point(Measure speed, Measure force) {}
    }
}
