package org.ridewright.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

/**
 * A search of one value over the range from 0 to 1: looks at equal distances; between neighbours of which one keeps the limits and the other does not, the
 * border, by Brent's root search on the limit that is broken most; and in each stretch of looks that keep them, Brent's minimum between the neighbours of the best.
 * A stretch that lies between two looks is not seen.
 */
final class LineSearch {
    /** Where it ends, in shares of the range. */
    private static final double FINENESS = 1e-4;
    /** Least margin that the root search is told. */
    private static final double OFF_ZERO = 1e-9;

    private final Trail trail;
    private final int looks;

    LineSearch(Trail trail, int looks) {
        this.trail = trail;
        this.looks = Math.max(2, Math.min(looks, trail.most()));
    }

    private List<Tried> look() {
        List<double[]> at = new ArrayList<>();
        for (int i = 0; i < looks; i++) {
            at.add(new double[] {i / (looks - 1.0)});
        }
        return trail.look(at);
    }

    /** Finds the least. */
    void least() {
        settle(look());
    }

    private void settle(List<Tried> row) {
        List<Tried> seen = row.stream().noneMatch(Tried::keeps) ? approached(row) : row;
        List<List<Tried>> stretches = stretches(seen);
        // the most hopeful first, lest the runs be spent on the others
        stretches.sort(Comparator.comparing(LineSearch.this::best, trail.order()));
        for (List<Tried> stretch : stretches) {
            List<Tried> inside = bordered(stretch, seen);
            descend(inside, inside.indexOf(best(inside)));
        }
    }

    private Tried best(List<Tried> of) {
        return of.stream().min(trail.order()).orElseThrow();
    }

    /** No look keeps the limits: from the one that breaks them least towards keeping them. */
    private List<Tried> approached(List<Tried> row) {
        Tried nearest = best(row);
        if (Double.isInfinite(nearest.broken())) {
            return row;
        }
        List<Tried> all = new ArrayList<>(row);
        int i = row.indexOf(nearest);
        minimum(x -> seen(x, all).broken(), row, i);
        all.sort(Comparator.comparingDouble(t -> t.at()[0]));
        return all;
    }

    private Tried seen(double x, List<Tried> all) {
        Tried point = trail.look(x);
        all.add(point);
        return point;
    }

    /** Runs of neighbours that keep the limits. */
    private static List<List<Tried>> stretches(List<Tried> row) {
        List<List<Tried>> stretches = new ArrayList<>();
        boolean open = false;
        for (Tried point : row) {
            if (point.keeps()) {
                if (!open) {
                    stretches.add(new ArrayList<>());
                }
                stretches.get(stretches.size() - 1).add(point);
            }
            open = point.keeps();
        }
        return stretches;
    }

    /** The stretch with its borders, as far as it does not reach the ends of the range. */
    private List<Tried> bordered(List<Tried> stretch, List<Tried> row) {
        List<Tried> inside = new ArrayList<>(stretch);
        int first = row.indexOf(stretch.get(0));
        int last = row.indexOf(stretch.get(stretch.size() - 1));
        if (first > 0) {
            inside.add(0, border(row.get(first), row.get(first - 1)));
        }
        if (last < row.size() - 1) {
            inside.add(border(row.get(last), row.get(last + 1)));
        }
        return inside;
    }

    /** The last point that keeps the limits on the way to one that does not. */
    private Tried border(Tried kept, Tried broken) {
        Tried[] last = {kept, broken};
        double side = Math.signum(broken.at()[0] - kept.at()[0]);
        UnivariateFunction margin = x -> {
            Tried point = x == last[0].at()[0] ? last[0] : x == last[1].at()[0] ? last[1] : trail.look(x);
            boolean farther = side * (point.at()[0] - last[0].at()[0]) > 0;
            boolean nearer = side * (last[1].at()[0] - point.at()[0]) > 0;
            if (point.keeps() && farther && nearer) {
                last[0] = point;
            } else if (!point.keeps() && farther && nearer) {
                last[1] = point;
            }
            return point.keeps()
                    ? Math.min(point.margin(), -OFF_ZERO)
                    // a count that stays on its bound for a while is a step, and no sign that the border is near
                    : point.margin() > Limit.HAIR
                            ? Math.max(point.margin(), OFF_ZERO)
                            : Math.max(-kept.margin(), OFF_ZERO);
        };
        double low = Math.min(kept.at()[0], broken.at()[0]);
        double high = Math.max(kept.at()[0], broken.at()[0]);
        try {
            BracketedUnivariateSolver<UnivariateFunction> solver =
                    new BracketingNthOrderBrentSolver(1e-12, FINENESS, OFF_ZERO / 2, 2);
            solver.solveInterval(Math.max(1, trail.most()), margin, low, high);
        } catch (MathIllegalStateException | IllegalStateException gap) {
            return last[0];
        }
        return last[0];
    }

    private void descend(List<Tried> row, int least) {
        double worst = row.stream().mapToDouble(trail::goal).max().orElse(0);
        double span = worst - row.stream().mapToDouble(trail::goal).min().orElse(0);
        minimum(
                x -> {
                    Tried point = trail.look(x);
                    // a hole in the stretch is a hill
                    return point.keeps()
                            ? trail.goal(point)
                            : worst + (1 + Math.min(1, point.broken())) * (span + Math.abs(worst));
                },
                row,
                least);
    }

    private void minimum(UnivariateFunction of, List<Tried> row, int least) {
        double low = row.get(Math.max(0, least - 1)).at()[0];
        double high = row.get(Math.min(row.size() - 1, least + 1)).at()[0];
        if (high - low < FINENESS) {
            return;
        }
        new BrentOptimizer(1e-10, FINENESS)
                .optimize(
                        new MaxEval(Math.max(1, trail.most())),
                        new UnivariateObjectiveFunction(of),
                        GoalType.MINIMIZE,
                        new SearchInterval(low, high, row.get(least).at()[0]));
    }

    /** Meets a target, or comes as near to it as it finds; whether it is met. */
    boolean meet(double target) {
        List<Tried> row = look();
        for (int i = 0; i + 1 < row.size(); i++) {
            Tried a = row.get(i);
            Tried b = row.get(i + 1);
            boolean across = (a.worth() - target) * (b.worth() - target) <= 0;
            if (across && (a.keeps() || b.keeps()) && cross(a, b, target)) {
                return true;
            }
        }
        settle(row);
        Optional<Tried> best = trail.best().filter(Tried::keeps);
        return best.isPresent() && trail.goal(best.get()) <= FINENESS * Math.abs(target);
    }

    /** Whether the target is met between two points, at a place that keeps the limits. */
    private boolean cross(Tried a, Tried b, double target) {
        try {
            double x = new BrentSolver(1e-12, FINENESS, 1e-15)
                    .solve(Math.max(1, trail.most()), at -> trail.look(at).worth() - target, a.at()[0], b.at()[0]);
            return trail.all().stream().anyMatch(t -> t.at()[0] == x && t.keeps());
        } catch (MathIllegalStateException | IllegalStateException gap) {
            return false;
        }
    }
}
