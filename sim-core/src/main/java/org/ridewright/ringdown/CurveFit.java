package org.ridewright.ringdown;

import java.util.Arrays;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.SingularValueDecomposition;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/**
 * A curve of few parameters fitted to many samples by least squares, with standard errors that allow for residuals which are not white. With the
 * slopes J (n × p) of the curve,
 *
 * <pre>
 *   C = (JᵀJ)⁻¹ M (JᵀJ)⁻¹        M = Σ_i Σ_j σ_i σ_j ρ_{|i−j|} J_i J_jᵀ
 * </pre>
 *
 * <p>with the size σ and the memory ρ of {@link ResidualNoise}; no variance is less than that of white noise of one size, {@code s² (JᵀJ)⁻¹}, and no
 * noise less than the steps in which the samples are written and the arithmetic make. Intervals use Student's t with the degrees of freedom of as many independent samples as
 * the residuals are worth, {@code n/(1 + 2 Σ ρ_l) − p}.
 */
final class CurveFit {
    private static final int MOST_EVALUATIONS = 200;

    /** Gain of a step, as a share of the sum of squares, below which the minimum is reached. */
    static final double CLOSE = 1e-8;

    /** The same where only the best of several starts is wanted. */
    static final double ROUGH = 1e-3;

    private static final double SLOPE_STEP = 1e-6;

    /** Of the greatest sample: what the search leaves where the curve is the motion itself; our choice, far below any sensor's noise. */
    private static final double ROUND_OFF = 1e-9;

    /** A family of curves. */
    interface Curve {
        /** Values at the samples. */
        double[] values(double[] parameters);

        /** A change of parameter k that is small, and far above round-off. */
        double unit(int k);

        /** Parameters within what the curve is defined for. */
        double[] allowed(double[] parameters);
    }

    private final double[] parameters;
    private final double[] residuals;
    private final double[][] covariance;
    private final double sumOfSquares;
    private final double effective;

    private CurveFit(
            double[] parameters, double[] residuals, double[][] covariance, double sumOfSquares, double effective) {
        this.parameters = parameters;
        this.residuals = residuals;
        this.covariance = covariance;
        this.sumOfSquares = sumOfSquares;
        this.effective = effective;
    }

    /**
     * Fits from one start, with weights of 0 or 1.
     *
     * @param samples what was measured; as many as the curve gives
     * @param counted which of them count
     * @param tolerance {@link #CLOSE} or {@link #ROUGH}
     * @return the parameters at the minimum; the start itself if there is no way down
     */
    static double[] minimum(Curve curve, double[] samples, boolean[] counted, double[] start, double tolerance) {
        double[] target = picked(samples, counted);
        try {
            LeastSquaresOptimizer.Optimum optimum = new LevenbergMarquardtOptimizer()
                    .withCostRelativeTolerance(tolerance)
                    .withParameterRelativeTolerance(0.1 * tolerance)
                    .optimize(new LeastSquaresBuilder()
                            .start(start)
                            .target(target)
                            .model(point -> {
                                double[] p = point.toArray();
                                double[] values = curve.values(p);
                                return new Pair<>(
                                        new ArrayRealVector(picked(values, counted), false),
                                        new Array2DRowRealMatrix(slopes(curve, p, values, counted), false));
                            })
                            .parameterValidator(point -> new ArrayRealVector(curve.allowed(point.toArray()), false))
                            .lazyEvaluation(false)
                            .maxEvaluations(MOST_EVALUATIONS)
                            .maxIterations(MOST_EVALUATIONS)
                            .build());
            return optimum.getPoint().toArray();
        } catch (MathIllegalStateException noWayDown) {
            return start;
        }
    }

    /** Sum of the squared residuals that count. */
    static double sumOfSquares(Curve curve, double[] samples, boolean[] counted, double[] parameters) {
        double[] values = curve.values(parameters);
        double sum = 0;
        for (int i = 0; i < samples.length; i++) {
            sum += counted[i] ? (samples[i] - values[i]) * (samples[i] - values[i]) : 0;
        }
        return sum;
    }

    /**
     * What the residuals at a minimum say of the parameters.
     *
     * @param reach over how many samples the size of the noise is taken together
     */
    static CurveFit at(Curve curve, double[] samples, boolean[] counted, double[] parameters, int reach) {
        double[] values = curve.values(parameters);
        double[] residuals = new double[samples.length];
        for (int i = 0; i < samples.length; i++) {
            residuals[i] = samples[i] - values[i];
        }
        double[] used = picked(residuals, counted);
        double[][] slopes = slopes(curve, parameters, values, counted);
        RealMatrix j = new Array2DRowRealMatrix(slopes, false);
        RealMatrix inverse = inverse(j.transposeMultiply(j));
        double floor = floor(picked(samples, counted));
        ResidualNoise noise = ResidualNoise.of(used, places(counted), leverage(slopes, inverse), reach, floor);
        double[][] middle = middle(slopes, places(counted), noise);
        RealMatrix covariance =
                inverse.multiply(new Array2DRowRealMatrix(middle, false)).multiply(inverse);
        double sum = 0;
        for (double residual : used) {
            sum += residual * residual;
        }
        sum = Math.max(sum, used.length * floor * floor);
        RealMatrix white = inverse.scalarMultiply(sum / Math.max(1, used.length - parameters.length));
        return new CurveFit(
                parameters.clone(), residuals, greater(white.getData(), covariance.getData()), sum, noise.effective());
    }

    /** Least noise that samples can have: that of the steps in which they are written, {@code Δ/√12}, and of arithmetic. */
    private static double floor(double[] samples) {
        double[] sorted = samples.clone();
        Arrays.sort(sorted);
        double step = Double.POSITIVE_INFINITY;
        for (int i = 1; i < sorted.length; i++) {
            if (sorted[i] > sorted[i - 1]) {
                step = Math.min(step, sorted[i] - sorted[i - 1]);
            }
        }
        double greatest = sorted.length == 0 ? 0 : Math.max(Math.abs(sorted[0]), Math.abs(sorted[sorted.length - 1]));
        return Math.max(Double.isInfinite(step) ? 0 : step / Math.sqrt(12), ROUND_OFF * greatest);
    }

    /** Correlations of the second, variances the greater of the two: what the residuals show of themselves is no reason to claim more. */
    private static double[][] greater(double[][] white, double[][] own) {
        int p = own.length;
        for (int a = 0; a < p; a++) {
            if (!(own[a][a] > 0)) {
                // a memory cut short need not make a covariance
                return white;
            }
        }
        double[][] joined = new double[p][p];
        for (int a = 0; a < p; a++) {
            for (int b = 0; b < p; b++) {
                double scale = Math.max(1, white[a][a] / own[a][a]) * Math.max(1, white[b][b] / own[b][b]);
                joined[a][b] = own[a][b] * Math.sqrt(scale);
            }
        }
        return joined;
    }

    private static int[] places(boolean[] counted) {
        int[] places = new int[counted.length];
        int n = 0;
        for (int i = 0; i < counted.length; i++) {
            if (counted[i]) {
                places[n++] = i;
            }
        }
        return Arrays.copyOf(places, n);
    }

    private static double[] leverage(double[][] slopes, RealMatrix inverse) {
        double[] leverage = new double[slopes.length];
        for (int i = 0; i < slopes.length; i++) {
            double[] turned = inverse.operate(slopes[i]);
            for (int k = 0; k < turned.length; k++) {
                leverage[i] += turned[k] * slopes[i][k];
            }
        }
        return leverage;
    }

    private static double[][] middle(double[][] slopes, int[] places, ResidualNoise noise) {
        int n = slopes.length;
        int p = n == 0 ? 0 : slopes[0].length;
        double[][] m = new double[p][p];
        double[] memory = noise.memory();
        double[][] sized = new double[n][p];
        for (int i = 0; i < n; i++) {
            for (int a = 0; a < p; a++) {
                sized[i][a] = noise.size()[i] * slopes[i][a];
            }
        }
        for (int i = 0; i < n; i++) {
            for (int j = i; j < n && places[j] - places[i] < memory.length; j++) {
                double rho = memory[places[j] - places[i]] * (i == j ? 0.5 : 1);
                for (int a = 0; a < p; a++) {
                    for (int b = 0; b < p; b++) {
                        m[a][b] += rho * (sized[i][a] * sized[j][b] + sized[j][a] * sized[i][b]);
                    }
                }
            }
        }
        return m;
    }

    private static RealMatrix inverse(RealMatrix normal) {
        // scaled to ones on the diagonal, so that units do not decide what is singular
        int p = normal.getRowDimension();
        double[] scale = new double[p];
        RealMatrix scaled = normal.copy();
        for (int a = 0; a < p; a++) {
            double d = normal.getEntry(a, a);
            scale[a] = d > 0 ? 1 / Math.sqrt(d) : 1;
        }
        for (int a = 0; a < p; a++) {
            for (int b = 0; b < p; b++) {
                scaled.multiplyEntry(a, b, scale[a] * scale[b]);
            }
        }
        DecompositionSolver solver = new SingularValueDecomposition(scaled).getSolver();
        RealMatrix inverse = solver.getInverse();
        for (int a = 0; a < p; a++) {
            for (int b = 0; b < p; b++) {
                inverse.multiplyEntry(a, b, scale[a] * scale[b]);
            }
        }
        return inverse;
    }

    private static double[][] slopes(Curve curve, double[] parameters, double[] values, boolean[] counted) {
        int p = parameters.length;
        double[] here = picked(values, counted);
        double[][] slopes = new double[here.length][p];
        for (int k = 0; k < p; k++) {
            double step = SLOPE_STEP * curve.unit(k);
            double[] moved = parameters.clone();
            moved[k] += step;
            double[] there = picked(curve.values(moved), counted);
            for (int i = 0; i < here.length; i++) {
                slopes[i][k] = (there[i] - here[i]) / step;
            }
        }
        return slopes;
    }

    private static double[] picked(double[] values, boolean[] counted) {
        int n = 0;
        for (boolean one : counted) {
            n += one ? 1 : 0;
        }
        double[] picked = new double[n];
        int k = 0;
        for (int i = 0; i < values.length; i++) {
            if (counted[i]) {
                picked[k++] = values[i];
            }
        }
        return picked;
    }

    double[] parameters() {
        return parameters.clone();
    }

    double parameter(int k) {
        return parameters[k];
    }

    /** Of all samples, whether they count or not. */
    double[] residuals() {
        return residuals.clone();
    }

    double standardError(int k) {
        return Math.sqrt(covariance[k][k]);
    }

    double covariance(int a, int b) {
        return covariance[a][b];
    }

    /** Of the residuals that count, no less than the least noise would make. */
    double sumOfSquares() {
        return sumOfSquares;
    }

    /** n_e, how many independent samples they are worth. */
    double effective() {
        return effective;
    }

    /** Student's t that leaves 5 % on either side. */
    double quantile() {
        double degrees = Math.max(2, effective - parameters.length);
        return new TDistribution(degrees).inverseCumulativeProbability(0.5 + Estimate.CONFIDENCE / 2);
    }
}
