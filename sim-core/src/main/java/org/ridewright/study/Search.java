package org.ridewright.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

/**
 * Looks for the point of the unit cube at which a function is least, or meets a target. One value: a first look at equal distances over the whole range,
 * then Brent's method between the neighbours of the best, or across the change of sign nearest to the range's beginning. Several: {@link CmaEs}.
 */
public final class Search {
    private static final int FIRST_LOOK = 9;
    /** Where a search of one value ends, in shares of its range. */
    private static final double FINENESS = 1e-4;
    /** Where a search of several ends. */
    private static final double COARSE = 1e-3;

    /** Works out the function at several points, in any order. */
    @FunctionalInterface
    public interface Function {
        /** @return values in the order of the points; NaN where there is none */
        double[] at(List<double[]> points);
    }

    /** Thrown when no more evaluations may be had. */
    static final class Spent extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    private final Function function;
    private final int most;
    private int used;
    private double[] best = new double[0];
    private double bestValue = Double.POSITIVE_INFINITY;

    /** @param most evaluations at most */
    public Search(Function function, int most) {
        this.function = function;
        this.most = most;
    }

    /**
     * How it ended.
     *
     * @param best the best point; empty if the function has no value anywhere
     * @param value of the function there, or its distance from the target
     * @param settled whether the search ended by itself, with a change of sign enclosed where a target is sought
     */
    public record Found(double[] best, double value, boolean settled) {}

    /** The least value. */
    public Found least(int dimensions, long seed) {
        boolean settled;
        try {
            settled = dimensions == 1 ? leastOfOne() : leastOfSeveral(dimensions, seed);
        } catch (Spent spent) {
            settled = false;
        }
        return new Found(best, bestValue, settled && best.length > 0);
    }

    private boolean leastOfOne() {
        double[] at = look();
        double[] values = evaluate(at, v -> v);
        int least = leastOf(values);
        if (least < 0) {
            return false;
        }
        descend(at, least, v -> v);
        return true;
    }

    private void descend(double[] at, int least, DoubleUnaryOperator worth) {
        double low = at[Math.max(0, least - 1)];
        double high = at[Math.min(at.length - 1, least + 1)];
        new BrentOptimizer(1e-10, FINENESS)
                .optimize(
                        new MaxEval(Math.max(1, most)),
                        new UnivariateObjectiveFunction(x -> finite(worth.applyAsDouble(one(x, worth)))),
                        GoalType.MINIMIZE,
                        new SearchInterval(low, high, at[least]));
    }

    private boolean leastOfSeveral(int dimensions, long seed) {
        double[] middle = new double[dimensions];
        Arrays.fill(middle, 0.5);
        CmaEs strategy = new CmaEs(middle, seed);
        while (strategy.spread() > COARSE) {
            strategy.tell(evaluate(List.of(strategy.ask()), v -> v));
        }
        evaluate(List.of(new double[][] {strategy.mean()}), v -> v);
        return true;
    }

    /** Where the function of one value meets a target. */
    public Found meeting(double target) {
        boolean settled;
        try {
            settled = meet(target);
        } catch (Spent spent) {
            settled = false;
        }
        return new Found(best, bestValue, settled);
    }

    private boolean meet(double target) {
        double[] at = look();
        double[] values = evaluate(at, v -> Math.abs(v - target));
        for (int i = 0; i + 1 < at.length; i++) {
            if ((values[i] - target) * (values[i + 1] - target) <= 0) {
                return cross(at[i], at[i + 1], target);
            }
        }
        return approach(at, values, target);
    }

    /** No neighbours of the first look lie on either side: as near as can be, which may yet be across. */
    private boolean approach(double[] at, double[] values, double target) {
        double[] distances =
                Arrays.stream(values).map(v -> Math.abs(v - target)).toArray();
        int nearest = leastOf(distances);
        if (nearest >= 0) {
            descend(at, nearest, v -> Math.abs(v - target));
        }
        return bestValue <= FINENESS * Math.abs(target);
    }

    private boolean cross(double low, double high, double target) {
        try {
            new BrentSolver(1e-12, FINENESS, 1e-15)
                    .solve(Math.max(1, most), x -> one(x, v -> Math.abs(v - target)) - target, low, high);
            return true;
        } catch (MathIllegalStateException | IllegalStateException gap) {
            return false;
        }
    }

    /** Several values together: as near to the target as can be. */
    public Found nearest(int dimensions, double target, long seed) {
        Search squares = new Search(
                points -> Arrays.stream(function.at(points))
                        .map(v -> (v - target) * (v - target))
                        .toArray(),
                most);
        Found found = squares.least(dimensions, seed);
        return new Found(found.best(), Math.sqrt(found.value()), found.settled());
    }

    private double[] look() {
        int count = Math.min(FIRST_LOOK, most);
        double[] at = new double[count];
        for (int i = 0; i < count; i++) {
            at[i] = count == 1 ? 0.5 : i / (count - 1.0);
        }
        return at;
    }

    private static int leastOf(double[] values) {
        int least = -1;
        for (int i = 0; i < values.length; i++) {
            if (Double.isFinite(values[i]) && (least < 0 || values[i] < values[least])) {
                least = i;
            }
        }
        return least;
    }

    private static double finite(double value) {
        return Double.isFinite(value) ? value : Double.MAX_VALUE;
    }

    private double one(double x, DoubleUnaryOperator worth) {
        return evaluate(new double[] {x}, worth)[0];
    }

    private double[] evaluate(double[] at, DoubleUnaryOperator worth) {
        List<double[]> points = new ArrayList<>();
        for (double x : at) {
            points.add(new double[] {x});
        }
        return evaluate(points, worth);
    }

    private double[] evaluate(List<double[]> points, DoubleUnaryOperator worth) {
        if (used + points.size() > most) {
            throw new Spent();
        }
        used += points.size();
        double[] values = function.at(points);
        for (int i = 0; i < values.length; i++) {
            double each = worth.applyAsDouble(values[i]);
            if (each < bestValue) {
                bestValue = each;
                best = points.get(i).clone();
            }
        }
        return values;
    }
}
