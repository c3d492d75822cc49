package org.ridewright.ringdown;

import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.SingularValueDecomposition;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/**
 * A curve of few parameters fitted to many samples by least squares, with standard errors that allow for residuals which are not white.
 *
 * <p>With the slopes J (n × p) of the curve and the residuals e,
 *
 * <pre>
 *   C_w = s² (JᵀJ)⁻¹                       s² = eᵀe/(n − p), were the residuals white
 *   C_h = (JᵀJ)⁻¹ M (JᵀJ)⁻¹ n/(n − p)      M = Σ_l (1 − |l|/(L + 1)) Σ_i e_i e_{i+l} J_i J_{i+l}ᵀ,  |l| ≤ L
 * </pre>
 *
 * <p>M lets the residuals be correlated up to L samples apart and of unlike size, as those of a misfit, of a logger's low pass, of unsteady
 * instants are. The standard error of a parameter is the greater of the two; correlations are those of C_h where it is.
 * Intervals use Student's t with the degrees of freedom of as many independent samples as the residuals are worth,
 * {@code n_e = n/(1 + 2 Σ (1 − l/(L+1)) ρ_l)}.
 *
 * <p>Source: Newey and West, "A simple, positive semi-definite, heteroskedasticity and autocorrelation consistent covariance matrix",
 * Econometrica 55 (1987), 703–708 (from memory); n/(n − p) is common practice.
 */
final class CurveFit {
    private static final int MOST_EVALUATIONS = 400;
    private static final double SLOPE_STEP = 1e-6;

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
     * @return the parameters at the minimum; the start itself if there is no way down
     */
    static double[] minimum(Curve curve, double[] samples, boolean[] counted, double[] start) {
        double[] target = picked(samples, counted);
        try {
            LeastSquaresOptimizer.Optimum optimum = new LevenbergMarquardtOptimizer()
                    .withCostRelativeTolerance(1e-9)
                    .withParameterRelativeTolerance(1e-9)
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
     * @param reach L, samples
     */
    static CurveFit at(Curve curve, double[] samples, boolean[] counted, double[] parameters, int reach) {
        double[] values = curve.values(parameters);
        double[][] slopes = slopes(curve, parameters, values, counted);
        double[] residuals = new double[samples.length];
        int n = 0;
        int[] place = new int[samples.length];
        double sum = 0;
        for (int i = 0; i < samples.length; i++) {
            residuals[i] = samples[i] - values[i];
            place[i] = counted[i] ? n : -1;
            if (counted[i]) {
                n++;
                sum += residuals[i] * residuals[i];
            }
        }
        int p = parameters.length;
        RealMatrix j = new Array2DRowRealMatrix(slopes, false);
        RealMatrix inverse = inverse(j.transposeMultiply(j));
        RealMatrix white = inverse.scalarMultiply(sum / Math.max(1, n - p));
        RealMatrix middle = MatrixUtils.createRealMatrix(p, p);
        double[] lagged = new double[reach + 1];
        double[][] m = new double[p][p];
        for (int i = 0; i < samples.length; i++) {
            if (place[i] < 0) {
                continue;
            }
            for (int l = 0; l <= reach && i + l < samples.length; l++) {
                int other = place[i + l];
                if (other < 0) {
                    continue;
                }
                double product = residuals[i] * residuals[i + l];
                lagged[l] += product;
                double weight = (1 - l / (reach + 1.0)) * product * (l == 0 ? 0.5 : 1);
                for (int a = 0; a < p; a++) {
                    for (int b = 0; b < p; b++) {
                        m[a][b] += weight
                                * (slopes[place[i]][a] * slopes[other][b] + slopes[other][a] * slopes[place[i]][b]);
                    }
                }
            }
        }
        middle.setSubMatrix(m, 0, 0);
        RealMatrix robust =
                inverse.multiply(middle).multiply(inverse).scalarMultiply(n / Math.max(1.0, n - p));
        double inflation = 1;
        for (int l = 1; l <= reach && lagged[0] > 0; l++) {
            inflation += 2 * (1 - l / (reach + 1.0)) * lagged[l] / lagged[0];
        }
        double effective = Math.min(n, n / Math.max(inflation, 1e-3));
        return new CurveFit(
                parameters.clone(), residuals, greater(white.getData(), robust.getData()), sum, effective);
    }

    /** Variances the greater of the two, correlations of the second as far as its variance is the greater. */
    private static double[][] greater(double[][] white, double[][] robust) {
        int p = white.length;
        double[][] joined = new double[p][p];
        for (int a = 0; a < p; a++) {
            for (int b = 0; b < p; b++) {
                double[][] from = robust[a][a] > white[a][a] && robust[b][b] > white[b][b] ? robust : white;
                double correlation = from[a][b] / Math.sqrt(from[a][a] * from[b][b]);
                joined[a][b] = correlation
                        * Math.sqrt(Math.max(white[a][a], robust[a][a]) * Math.max(white[b][b], robust[b][b]));
            }
        }
        return joined;
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
