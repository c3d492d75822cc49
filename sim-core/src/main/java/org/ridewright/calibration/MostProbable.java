package org.ridewright.calibration;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.PointValuePair;
import org.hipparchus.optim.SimpleBounds;
import org.hipparchus.optim.SimpleValueChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.CMAESOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresFactory;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.ValueAndJacobianFunction;
import org.hipparchus.random.SobolSequenceGenerator;
import org.hipparchus.random.Well19937c;
import org.hipparchus.util.Pair;

/**
 * Finds the least of (1): Levenberg–Marquardt from several starts, and CMA-ES from the best where none of them came to rest. The starts are
 * the values before and points of Sobol's sequence made normal, so that the same data give the same answer.
 */
final class MostProbable {
    /** Unknowns further than this from what was known before are taken for impossible (standard deviations). */
    private static final double FURTHEST = 8;
    /** What a Gauss–Newton step would still gain, in Q, where the search has come to rest: a third of a standard error at most. */
    private static final double AT_REST = 0.1;
    /** The same beyond which it has stalled. */
    private static final double STALLED = 0.5;
    /** Two ends of the search whose Q differs by less are told as equally good. */
    private static final double AS_GOOD = 2;
    /** Root mean square distance of two ends that are told apart, in standard errors. */
    private static final double APART = 1.5;

    /** Of each unknown, in standard deviations: all together are then as far off as many unknowns are likely to be. */
    private static final double SPREAD_OF_STARTS = 0.7;
    /** Bound of the first step, in scaled standard deviations. */
    private static final double FIRST_STEP = 10;
    /** A step that gains a smaller share of Q, or moves z by a smaller share, is the last. */
    private static final double ENOUGH = 1e-4;

    private static final int MOST_STEPS = 40;
    private static final int GENERATIONS = 60;
    private static final long CHANCE = 20_000L;
    private static final NormalDistribution NORMAL = new NormalDistribution();

    private final FitProblem problem;
    private final int starts;

    MostProbable(FitProblem problem, int starts) {
        this.problem = problem;
        this.starts = starts;
    }

    /**
     * An end of the search.
     *
     * @param z unknowns
     * @param objective Q
     * @param jacobian of all data
     * @param gain what a Gauss–Newton step would still gain (Q)
     * @param byEvolution whether CMA-ES was needed
     */
    record Found(double[] z, double objective, RealMatrix jacobian, double gain, boolean byEvolution) {
        boolean atRest() {
            return gain <= AT_REST;
        }
    }

    /**
     * What was found.
     *
     * @param best the least Q
     * @param tried starts from which a vehicle could be had
     * @param agreeing starts that ended there
     * @param other another end that explains the data as well, if there is one
     */
    record Search(Found best, int tried, int agreeing, Optional<Found> other) {}

    /** @throws CalibrationException if from no start a vehicle can be had that predicts the data */
    Search search() {
        List<Found> ends = new ArrayList<>();
        for (double[] start : starts()) {
            if (problem.residuals(start) != null) {
                ends.add(end(marquardt(start, FitProblem.STEP), false));
            }
        }
        if (ends.isEmpty()) {
            throw new CalibrationException("no vehicle within the tolerances can stand and show what was measured: "
                    + "check the vehicle file by itself first (ridewright check)");
        }
        Found best =
                ends.stream().min(Comparator.comparingDouble(Found::objective)).orElseThrow();
        if (!best.atRest()) {
            best = better(best, end(marquardt(best.z(), FitProblem.WIDE_STEP), false));
        }
        if (best.gain() > STALLED) {
            best = better(best, end(evolve(best.z()), true));
        }
        Found least = best;
        List<Found> others = ends.stream()
                .filter(e -> distance(least, e) > APART && e.objective() - least.objective() < AS_GOOD && e.atRest())
                .toList();
        long agreeing = ends.stream().filter(e -> distance(least, e) <= APART).count();
        return new Search(best, ends.size(), (int) agreeing, others.stream().findFirst());
    }

    private static Found better(Found one, Found other) {
        return other.objective() < one.objective() ? other : one;
    }

    private List<double[]> starts() {
        List<double[]> list = new ArrayList<>();
        list.add(new double[problem.unknowns()]);
        SobolSequenceGenerator sobol = new SobolSequenceGenerator(problem.unknowns());
        sobol.skipTo(1);
        for (int i = 1; i < starts; i++) {
            double[] point = sobol.nextVector();
            for (int j = 0; j < point.length; j++) {
                point[j] = SPREAD_OF_STARTS * NORMAL.inverseCumulativeProbability(point[j]);
            }
            list.add(point);
        }
        return list;
    }

    private double[] marquardt(double[] start, double step) {
        int rows = problem.fitted().length + problem.unknowns();
        Stacked vector = new Stacked(problem, start, step);
        LeastSquaresProblem least = LeastSquaresFactory.create(
                vector,
                new ArrayRealVector(rows),
                new ArrayRealVector(start),
                null,
                null,
                20 * MOST_STEPS,
                MOST_STEPS,
                true,
                MostProbable::bounded);
        try {
            return new LevenbergMarquardtOptimizer(FIRST_STEP, ENOUGH, ENOUGH, 1e-8, 1e-300)
                    .optimize(least)
                    .getPoint()
                    .toArray();
        } catch (MathRuntimeException outOfSteps) {
            return vector.best;
        }
    }

    private static RealVector bounded(RealVector z) {
        return z.map(v -> Math.max(-FURTHEST, Math.min(FURTHEST, v)));
    }

    private double[] evolve(double[] from) {
        int n = from.length;
        int population = 4 + (int) (3 * Math.log(n));
        double[] sigma = new double[n];
        double[] lower = new double[n];
        double[] upper = new double[n];
        for (int j = 0; j < n; j++) {
            sigma[j] = 0.3;
            lower[j] = -FURTHEST;
            upper[j] = FURTHEST;
        }
        CMAESOptimizer optimizer = new CMAESOptimizer(
                GENERATIONS, 0, true, 0, 1, new Well19937c(CHANCE), false, new SimpleValueChecker(-1, 1e-4));
        try {
            PointValuePair found = optimizer.optimize(
                    new MaxEval(GENERATIONS * population + 1),
                    new ObjectiveFunction(problem::objective),
                    GoalType.MINIMIZE,
                    new InitialGuess(from),
                    new SimpleBounds(lower, upper),
                    new CMAESOptimizer.Sigma(sigma),
                    new CMAESOptimizer.PopulationSize(population));
            return found.getPoint();
        } catch (MathRuntimeException outOfSteps) {
            return from;
        }
    }

    private Found end(double[] z, boolean byEvolution) {
        RealMatrix jacobian = problem.cautiousJacobian(z);
        RealMatrix stacked = problem.stackedJacobian(jacobian);
        RealVector gradient = stacked.transpose().operate(new ArrayRealVector(problem.stacked(z)));
        RealVector step = new CholeskyDecomposition(stacked.transposeMultiply(stacked), 1e-10, 1e-14)
                .getSolver()
                .solve(gradient);
        return new Found(z, problem.objective(z), jacobian, gradient.dotProduct(step), byEvolution);
    }

    /** Root mean square over the unknowns, in standard errors of the first. */
    private double distance(Found a, Found b) {
        RealMatrix stacked = problem.stackedJacobian(a.jacobian());
        RealVector apart = new ArrayRealVector(a.z()).subtract(new ArrayRealVector(b.z()));
        return stacked.operate(apart).getNorm() / Math.sqrt(a.z().length);
    }

    /** The vector whose squared length is least sought, with its derivative only where it is asked for; remembers the best. */
    private static final class Stacked implements ValueAndJacobianFunction {
        private final FitProblem problem;
        private final double step;
        private double[] best;
        private double least = Double.POSITIVE_INFINITY;

        Stacked(FitProblem problem, double[] start, double step) {
            this.problem = problem;
            this.step = step;
            best = start;
        }

        @Override
        public Pair<RealVector, RealMatrix> value(RealVector z) {
            return new Pair<>(computeValue(z.toArray()), computeJacobian(z.toArray()));
        }

        @Override
        public RealVector computeValue(double[] z) {
            RealVector residuals = new ArrayRealVector(problem.stacked(z));
            if (residuals.getNorm() < least) {
                least = residuals.getNorm();
                best = z.clone();
            }
            return residuals;
        }

        @Override
        public RealMatrix computeJacobian(double[] z) {
            return problem.stackedJacobian(problem.jacobian(z, step));
        }
    }
}
