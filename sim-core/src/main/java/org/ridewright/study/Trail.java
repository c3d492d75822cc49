package org.ridewright.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * All points at which a search has looked, and the best of them by its goal. A point that keeps the limits is better than one that breaks one; of two that
 * keep them the better is that of the lesser worth, of two that break some that which breaks them less, the excesses added up.
 *
 * <p>Source: Deb, An efficient constraint handling method for genetic algorithms, Comput. Methods Appl. Mech. Eng. 186 (2000), its three rules; from memory.
 */
final class Trail {
    private final Search.Function function;
    private final int most;
    private final DoubleUnaryOperator goal;
    private final List<Tried> tried = new ArrayList<>();
    private Tried best;

    /** Thrown when no more evaluations may be had. */
    static final class Spent extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    /**
     * @param most evaluations at most
     * @param goal what of a worth is to be least: itself, or its distance from a target
     */
    Trail(Search.Function function, int most, DoubleUnaryOperator goal) {
        this.function = function;
        this.most = most;
        this.goal = goal;
    }

    /** @throws Spent if that were more than may be had, of which none is then evaluated */
    List<Tried> look(List<double[]> points) {
        if (tried.size() + points.size() > most) {
            throw new Spent();
        }
        List<Tried> looked = function.at(points);
        for (Tried each : looked) {
            tried.add(each);
            if (best == null || order().compare(each, best) < 0) {
                best = each;
            }
        }
        return looked;
    }

    Tried look(double x) {
        return look(List.<double[]>of(new double[] {x})).get(0);
    }

    /** Better ones first. */
    Comparator<Tried> order() {
        return Comparator.comparingDouble(Tried::broken)
                .thenComparingDouble(t -> Double.isFinite(t.worth()) ? goal(t) : Double.POSITIVE_INFINITY);
    }

    double goal(Tried point) {
        return goal.applyAsDouble(point.worth());
    }

    int most() {
        return most;
    }

    List<Tried> all() {
        return List.copyOf(tried);
    }

    /** The best; absent if none has a value. */
    Optional<Tried> best() {
        return Optional.ofNullable(best).filter(b -> Double.isFinite(b.worth()));
    }
}
