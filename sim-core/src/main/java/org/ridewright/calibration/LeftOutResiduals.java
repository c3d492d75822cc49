package org.ridewright.calibration;

import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * What each fitted datum is off from what all others and the tolerances make of it, over the standard deviation of that difference. With the covariance
 * {@code V = R + J Jᵀ} of the data before the fit and residuals r of the fit
 *
 * <pre>    t_i = (R⁻¹ r)_i / √(V⁻¹)_ii        V⁻¹ = R⁻¹ − R⁻¹ J C Jᵀ R⁻¹</pre>
 *
 * <p>exact for a straight model, with C as the curvature has it: widened it would take more from V⁻¹ than the data have put in. With independent errors
 * {@code r/√(1 − h)}, h the leverage.
 *
 * <p>Source: Cook and Weisberg, Residuals and Influence in Regression (1982), 2.2 (from memory); V⁻¹ by Woodbury's identity.
 */
final class LeftOutResiduals {
    /** The others leave at least this share of a datum's own variance. */
    private static final double LEAST_REST = 0.01;
    /** Of a search that is not quite at rest: what it still lacks would else be taken for a contradiction of a datum that alone decides some unknown. */
    private static final double LEAST_REST_OF_ROUGH_SEARCH = 0.25;

    private LeftOutResiduals() {}

    /** Of the fitted data, in their order. */
    static double[] of(FitProblem problem, MostProbable.Found found, Posterior posterior) {
        int[] fitted = problem.fitted();
        int m = fitted.length;
        double[] stacked = problem.stacked(found.z());
        RealMatrix rows = problem.stackedJacobian(found.jacobian());
        RealVector white = new ArrayRealVector(m);
        for (int i = 0; i < m; i++) {
            white.setEntry(i, -stacked[i]);
        }
        RealVector weighted = problem.whitenedBack(white);
        double[] residuals = new double[m];
        for (int i = 0; i < m; i++) {
            RealVector unit = new ArrayRealVector(m);
            unit.setEntry(i, 1);
            RealVector column = problem.whitened(unit);
            double[] slope = new double[problem.unknowns()];
            for (int j = 0; j < slope.length; j++) {
                for (int k = 0; k < m; k++) {
                    slope[j] += column.getEntry(k) * rows.getEntry(k, j);
                }
            }
            double rest = column.dotProduct(column) - posterior.plainVariance(slope);
            double least = (found.atRest() ? LEAST_REST : LEAST_REST_OF_ROUGH_SEARCH) * column.dotProduct(column);
            residuals[i] = weighted.getEntry(i) / Math.sqrt(Math.max(least, rest));
        }
        return residuals;
    }
}
