package org.ridewright.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Looks for the point of the unit cube at which a function is least, or meets a target, while limits are kept. One value: {@link LineSearch}. Several:
 * {@link CmaEs}, whose points are ranked by the rules of {@link Trail}.
 */
public final class Search {
    /** Looks at equal distances unless stated. */
    public static final int LOOKS = 9;
    /** Where a search of several ends, in shares of their ranges. */
    private static final double COARSE = 1e-3;
    /** What another start must gain, as a share, for one more to follow. */
    private static final double GAIN = 2e-3;

    /** Works out the function at several points, in any order. */
    @FunctionalInterface
    public interface Function {
        /** @return what is there, in the order of the points */
        List<Tried> at(List<double[]> points);
    }

    private final Function function;
    private final int looks;
    private final int most;

    /**
     * @param looks at equal distances over the range of one value, ≥ 2
     * @param most evaluations at most
     */
    public Search(Function function, int looks, int most) {
        this.function = function;
        this.looks = looks;
        this.most = most;
    }

    /**
     * How it ended.
     *
     * @param best the best point that keeps the limits, or, if none does, the one that breaks them least; absent if the function has no value anywhere
     * @param settled whether the search ended by itself, with a change of sign enclosed where a target is sought
     */
    public record Found(Optional<Tried> best, boolean settled) {
        /** Whether the limits are kept. */
        public boolean keeps() {
            return best.map(Tried::keeps).orElse(false);
        }
    }

    /** The least value. */
    public Found least(int dimensions, long seed) {
        return least(new Trail(function, most, v -> v), dimensions, seed);
    }

    private Found least(Trail trail, int dimensions, long seed) {
        boolean settled = true;
        try {
            if (dimensions == 1) {
                new LineSearch(trail, looks).least();
            } else {
                leastOfSeveral(trail, dimensions, seed);
            }
        } catch (Trail.Spent spent) {
            settled = false;
        }
        return new Found(trail.best(), settled && trail.best().isPresent());
    }

    /** Once; where limits were broken on the way, which can bring it to rest before its time, anew from where it ended as long as that is better. */
    private static void leastOfSeveral(Trail trail, int dimensions, long seed) {
        double[] middle = new double[dimensions];
        Arrays.fill(middle, 0.5);
        descend(trail, middle, seed);
        boolean limited = trail.all().stream().anyMatch(t -> t.broken() > 0 && Double.isFinite(t.broken()));
        for (int again = 1; limited; again++) {
            Tried before = trail.best().orElseThrow();
            descend(trail, before.at(), Mix.bits(seed, again));
            Tried after = trail.best().orElseThrow();
            double gain = before.keeps() == after.keeps()
                    ? before.keeps() ? trail.goal(before) - trail.goal(after) : before.broken() - after.broken()
                    : Double.POSITIVE_INFINITY;
            limited = gain > GAIN * Math.abs(before.keeps() ? trail.goal(before) : before.broken());
        }
    }

    private static void descend(Trail trail, double[] start, long seed) {
        CmaEs strategy = new CmaEs(start, seed);
        while (strategy.spread() > COARSE) {
            strategy.tell(ranks(trail.look(List.of(strategy.ask())), trail.order()));
        }
        trail.look(List.<double[]>of(strategy.mean()));
    }

    /** The place of each point in an order, which is all that the strategy makes use of. */
    private static double[] ranks(List<Tried> points, Comparator<Tried> order) {
        List<Integer> sorted =
                new ArrayList<>(IntStream.range(0, points.size()).boxed().toList());
        sorted.sort((a, b) -> order.compare(points.get(a), points.get(b)));
        double[] ranks = new double[points.size()];
        for (int i = 0; i < sorted.size(); i++) {
            ranks[sorted.get(i)] = i;
        }
        return ranks;
    }

    /** Where the function of one value meets a target, nearest to the range's beginning of those places that keep the limits. */
    public Found meeting(double target) {
        Trail trail = new Trail(function, most, v -> Math.abs(v - target));
        boolean settled;
        try {
            settled = new LineSearch(trail, looks).meet(target);
        } catch (Trail.Spent spent) {
            settled = false;
        }
        return new Found(trail.best(), settled && trail.best().isPresent());
    }

    /** Several values together: as near to the target as can be. */
    public Found nearest(int dimensions, double target, long seed) {
        return least(new Trail(function, most, v -> Math.abs(v - target)), dimensions, seed);
    }
}
