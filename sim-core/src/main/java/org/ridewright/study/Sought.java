package org.ridewright.study;

import java.util.Optional;

/**
 * What a search is after.
 *
 * @param asked the answer, and in which ride tests: the worst of them counts
 * @param target value that is sought (unit of the answer); absent: its best
 * @param least whether the least is best, rather than the greatest
 */
public record Sought(Asked asked, Optional<Double> target, boolean least) {
    /** Whether one value is nearer to what is sought than another. */
    public boolean isBetter(double a, double than) {
        if (target.isPresent()) {
            return Math.abs(a - target.get()) < Math.abs(than - target.get());
        }
        return least ? a < than : a > than;
    }
}
