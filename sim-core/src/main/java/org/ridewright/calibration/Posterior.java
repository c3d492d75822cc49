package org.ridewright.calibration;

import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * What is known of the unknowns after the fit.
 *
 * <p>{@code C = (JᵀJ + (P Pᵀ)⁻¹)⁻¹}, P Pᵀ the correlation before, I without an earlier calibration; then widened twice where it would promise too much. Where the least Q is beyond the 99 % point of its
 * χ² distribution the data scatter more than their uncertainties say, and C grows by Q over the number of data (Birge's ratio). Where Q, followed
 * from the best z to either end of an unknown's 90 % interval, rises by less than a straight model's 2.71, that unknown's deviation grows to match,
 * twofold at most.
 *
 * <p>Values that are held keep what was known of them, and their errors are correlated with those of the unknowns.
 *
 * <p>Source: Schmidt, Advances in Control Systems 3 (1966) 293 (from memory) for the held values; Birge, Physical Review 40 (1932) 207 (from memory) for the ratio; the second is our choice.
 */
public final class Posterior {
    /** Half-width of a normal 90 % interval, in standard deviations. */
    public static final double NINETY_PERCENT = 1.6448536269514722;
    /** A sum as great or greater comes by chance once in a hundred times. */
    static final double MISFIT = 0.01;

    private static final double MOST_WIDENING = 2;

    private final double[] z;
    private final RealMatrix curvature;
    private final RealMatrix covariance;
    private final RealMatrix withHeld;
    private final double birge;
    private final double chanceOfMisfit;

    private Posterior(
            double[] z,
            RealMatrix curvature,
            RealMatrix covariance,
            RealMatrix withHeld,
            double birge,
            double chanceOfMisfit) {
        this.z = z;
        this.curvature = curvature;
        this.covariance = covariance;
        this.withHeld = withHeld;
        this.birge = birge;
        this.chanceOfMisfit = chanceOfMisfit;
    }

    static Posterior of(FitProblem problem, MostProbable.Found found) {
        RealMatrix stacked = problem.stackedJacobian(found.jacobian());
        RealMatrix c = inverse(stacked.transposeMultiply(stacked));
        int data = problem.fitted().length;
        double chance = 1 - new ChiSquaredDistribution(data).cumulativeProbability(found.objective());
        double birge = chance < MISFIT ? Math.max(1, found.objective() / data) : 1;
        double[] widening = widening(problem, found, c);
        RealMatrix wide = new Array2DRowRealMatrix(c.getRowDimension(), c.getColumnDimension());
        for (int i = 0; i < widening.length; i++) {
            for (int j = 0; j < widening.length; j++) {
                wide.setEntry(i, j, birge * widening[i] * widening[j] * c.getEntry(i, j));
            }
        }
        RealMatrix own = stacked.getSubMatrix(0, data - 1, 0, c.getColumnDimension() - 1);
        RealMatrix withHeld =
                c.multiply(own.transposeMultiply(problem.whitenedHeld())).scalarMultiply(-1);
        return new Posterior(found.z(), c, wide, withHeld, birge, chance);
    }

    private static RealMatrix inverse(RealMatrix information) {
        return new CholeskyDecomposition(information, 1e-10, 1e-14).getSolver().getInverse();
    }

    /** By how much each deviation is greater than C has it, from Q itself at the ends of the unknown's interval. */
    private static double[] widening(FitProblem problem, MostProbable.Found found, RealMatrix c) {
        int n = found.z().length;
        double[] widening = new double[n];
        for (int j = 0; j < n; j++) {
            double deviation = Math.sqrt(c.getEntry(j, j));
            double rise = 0;
            for (int side = -1; side <= 1; side += 2) {
                double[] end = found.z().clone();
                for (int i = 0; i < n; i++) {
                    end[i] += side * NINETY_PERCENT * c.getEntry(i, j) / deviation;
                }
                rise += Math.min(problem.objective(end) - found.objective(), 100) / 2;
            }
            double straight = NINETY_PERCENT * NINETY_PERCENT;
            double least = straight / (MOST_WIDENING * MOST_WIDENING);
            widening[j] = Math.max(1, Math.sqrt(straight / Math.max(rise, least)));
        }
        return widening;
    }

    /** Most probable unknowns, in standard deviations of what was known before. */
    public double z(int j) {
        return z[j];
    }

    RealMatrix matrix() {
        return covariance;
    }

    /** Number of unknowns. */
    public int size() {
        return z.length;
    }

    /** Standard deviation of an unknown over the one before; 1 where the data say nothing of it. */
    public double deviation(int j) {
        return Math.sqrt(covariance.getEntry(j, j));
    }

    /** Covariance of two unknowns, each in standard deviations before. */
    public double covariance(int i, int j) {
        return covariance.getEntry(i, j);
    }

    /** Correlation of two unknowns, −1 to 1. */
    public double correlation(int i, int j) {
        return i == j ? 1 : covariance.getEntry(i, j) / (deviation(i) * deviation(j));
    }

    /** Factor on all variances for data that scatter more than their uncertainties say; 1 where they do not. */
    public double birge() {
        return birge;
    }

    /** Chance of a misfit as great or greater if all uncertainties are true, 0 to 1. */
    public double chanceOfMisfit() {
        return chanceOfMisfit;
    }

    /**
     * Correlation of an unknown's error with what is held: {@code −C Jᵀ R⁻¹ H}, since an error of a held value moves the estimate.
     *
     * @param k column of H, of standard deviation 1
     */
    double correlationWithHeld(int j, int k) {
        return withHeld.getEntry(j, k) / Math.sqrt(curvature.getEntry(j, j));
    }

    /** C itself, not widened: what follows from the curvature alone, for sums in which C must cancel against the data. */
    RealMatrix curvature() {
        return curvature;
    }

    /**
     * Variance that the unknowns leave in what depends on them.
     *
     * @param slope its derivative by each unknown; not modified
     */
    double variance(double[] slope) {
        return variance(covariance, slope);
    }

    /** The same by C itself, not widened. */
    double plainVariance(double[] slope) {
        return variance(curvature, slope);
    }

    private static double variance(RealMatrix matrix, double[] slope) {
        double sum = 0;
        for (int i = 0; i < slope.length; i++) {
            for (int j = 0; j < slope.length; j++) {
                sum += slope[i] * matrix.getEntry(i, j) * slope[j];
            }
        }
        return sum;
    }
}
