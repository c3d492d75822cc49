package org.ridewright.study;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * Covariance matrix adaptation: asks for a generation of points of the unit cube, is told what they are worth, and moves and shapes its
 * distribution towards the better ones. A generation can be worked out in any order, several at a time.
 *
 * <p>Points beyond the cube's faces are folded back. Source: Hansen, The CMA Evolution Strategy: A Tutorial (arXiv:1604.00772), its default parameters,
 * without negative weights; from memory. Numbers of chance are looked up by seed, generation, point and coordinate.
 */
public final class CmaEs {
    private static final double FIRST_STEP = 0.25;

    private final int n;
    private final int lambda;
    private final int mu;
    private final long seed;
    private final double[] weights;
    private final double effective;
    private final double cSigma;
    private final double dSigma;
    private final double cc;
    private final double c1;
    private final double cMu;
    private final double expectedNorm;

    private final double[] mean;
    private final double[] pathSigma;
    private final double[] pathC;
    private RealMatrix covariance;
    private RealMatrix axes;
    private double[] lengths;
    private double sigma = FIRST_STEP;
    private int generation;
    private double[][] steps = new double[0][];

    /** @param start a point of the unit cube, n ≥ 1 coordinates; not modified */
    public CmaEs(double[] start, long seed) {
        n = start.length;
        this.seed = seed;
        mean = start.clone();
        lambda = 4 + (int) Math.floor(3 * Math.log(n));
        mu = lambda / 2;
        weights = new double[mu];
        for (int i = 0; i < mu; i++) {
            weights[i] = Math.log((lambda + 1) / 2.0) - Math.log(i + 1.0);
        }
        double sum = Arrays.stream(weights).sum();
        double squares = 0;
        for (int i = 0; i < mu; i++) {
            weights[i] /= sum;
            squares += weights[i] * weights[i];
        }
        effective = 1 / squares;
        cSigma = (effective + 2) / (n + effective + 5);
        dSigma = 1 + 2 * Math.max(0, Math.sqrt((effective - 1) / (n + 1)) - 1) + cSigma;
        cc = (4 + effective / n) / (n + 4 + 2 * effective / n);
        c1 = 2 / ((n + 1.3) * (n + 1.3) + effective);
        cMu = Math.min(1 - c1, 2 * (effective - 2 + 1 / effective) / ((n + 2.0) * (n + 2.0) + effective));
        expectedNorm = Math.sqrt(n) * (1 - 1 / (4.0 * n) + 1 / (21.0 * n * n));
        pathSigma = new double[n];
        pathC = new double[n];
        covariance = MatrixUtils.createRealIdentityMatrix(n);
        axes = covariance;
        lengths = new double[n];
        Arrays.fill(lengths, 1);
    }

    /** Points of a generation. */
    public int population() {
        return lambda;
    }

    /** The next generation, {@link #population} points of the unit cube. */
    public double[][] ask() {
        steps = new double[lambda][n];
        double[][] points = new double[lambda][n];
        for (int p = 0; p < lambda; p++) {
            double[] z = new double[n];
            for (int d = 0; d < n; d++) {
                z[d] = lengths[d] * Normal.quantile(Mix.uniform(seed, generation, p, d, 7));
            }
            steps[p] = axes.operate(z);
            for (int d = 0; d < n; d++) {
                points[p][d] = folded(mean[d] + sigma * steps[p][d]);
            }
        }
        generation++;
        return points;
    }

    /** Reflected at 0 and 1 as often as it takes. */
    private static double folded(double x) {
        double turn = Math.abs(x) % 2;
        return turn <= 1 ? turn : 2 - turn;
    }

    /** @param worth of the points last asked for, the least best; what is not finite is worst */
    public void tell(double[] worth) {
        int[] order = IntStream.range(0, lambda)
                .boxed()
                .sorted(Comparator.comparingDouble(
                        p -> Double.isFinite(worth[p]) ? worth[p] : Double.POSITIVE_INFINITY))
                .mapToInt(Integer::intValue)
                .toArray();
        double[] step = new double[n];
        for (int i = 0; i < mu; i++) {
            for (int d = 0; d < n; d++) {
                step[d] += weights[i] * steps[order[i]][d];
            }
        }
        for (int d = 0; d < n; d++) {
            // the mean stays in the cube, from where the next points are folded
            mean[d] = Math.max(0, Math.min(1, mean[d] + sigma * step[d]));
        }
        paths(step);
        shape(order);
        lengthen();
    }

    private void paths(double[] step) {
        double[] white = axes.transpose().operate(step);
        for (int d = 0; d < n; d++) {
            white[d] /= lengths[d];
        }
        white = axes.operate(white);
        double norm = 0;
        for (int d = 0; d < n; d++) {
            pathSigma[d] = (1 - cSigma) * pathSigma[d] + Math.sqrt(cSigma * (2 - cSigma) * effective) * white[d];
            norm += pathSigma[d] * pathSigma[d];
        }
        norm = Math.sqrt(norm);
        boolean straight =
                norm / Math.sqrt(1 - Math.pow(1 - cSigma, 2.0 * generation)) < (1.4 + 2 / (n + 1.0)) * expectedNorm;
        double rise = straight ? Math.sqrt(cc * (2 - cc) * effective) : 0;
        for (int d = 0; d < n; d++) {
            pathC[d] = (1 - cc) * pathC[d] + rise * step[d];
        }
        sigma *= Math.exp(cSigma / dSigma * (norm / expectedNorm - 1));
        sigma = Math.min(sigma, 1);
    }

    private void shape(int[] order) {
        RealMatrix next = covariance.scalarMultiply(1 - c1 - cMu);
        add(next, pathC, c1);
        for (int i = 0; i < mu; i++) {
            add(next, steps[order[i]], cMu * weights[i]);
        }
        covariance = next;
    }

    private void add(RealMatrix to, double[] v, double factor) {
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                to.addToEntry(i, j, factor * v[i] * v[j]);
            }
        }
    }

    private void lengthen() {
        RealMatrix symmetric = covariance.add(covariance.transpose()).scalarMultiply(0.5);
        EigenDecompositionSymmetric eigen = new EigenDecompositionSymmetric(symmetric);
        axes = eigen.getV();
        lengths = Arrays.stream(eigen.getEigenvalues())
                .map(value -> Math.sqrt(Math.max(1e-20, value)))
                .toArray();
    }

    /** Middle of the distribution. */
    public double[] mean() {
        return mean.clone();
    }

    /** Greatest standard deviation of the distribution, in shares of the range. */
    public double spread() {
        return sigma * Arrays.stream(lengths).max().orElse(0);
    }
}
