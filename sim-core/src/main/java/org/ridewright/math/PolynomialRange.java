package org.ridewright.math;

/**
 * Running extremes of polynomials on intervals from 0, by branch and bound on their Bernstein coefficients: an interval whose hull does
 * not pass the extreme found so far is left alone, others are halved, at most 30 times. Found extremes are exact to a relative 1e-12 of the hull.
 *
 * <p>Mutable; belongs to one thread.
 */
public final class PolynomialRange {
    private static final int DEEPEST = 30;
    private static final double FINENESS = 1e-12;

    private final double[][] hulls;
    private final BernsteinBasis basis;
    private double greatest = Double.NEGATIVE_INFINITY;
    private double least = Double.POSITIVE_INFINITY;
    private double greatestAt = Double.NaN;
    private double leastAt = Double.NaN;

    /** Room for polynomials up to the given degree. */
    public PolynomialRange(int greatestDegree) {
        hulls = new double[DEEPEST + 2][greatestDegree + 1];
        basis = new BernsteinBasis(greatestDegree);
    }

    /**
     * Takes in one polynomial.
     *
     * @param a coefficients in powers of τ, lowest first; not modified
     * @param degree highest power used
     * @param end right end of the interval from τ = 0
     * @param start time at τ = 0
     * @param h time per unit of τ
     */
    public void include(double[] a, int degree, double end, double start, double h) {
        double above = a[0];
        double below = a[0];
        double power = 1;
        for (int k = 1; k <= degree; k++) {
            power *= end;
            above += Math.max(0, a[k] * power);
            below += Math.min(0, a[k] * power);
        }
        if (above <= greatest && below >= least) {
            return;
        }
        basis.convert(a, degree, end, hulls[0]);
        search(degree, 0, start, start + end * h);
    }

    private void search(int n, int depth, double from, double to) {
        double[] b = hulls[depth];
        take(b[0], from);
        take(b[n], to);
        double high = b[0];
        double low = b[0];
        for (int i = 1; i <= n; i++) {
            high = Math.max(high, b[i]);
            low = Math.min(low, b[i]);
        }
        double slack = FINENESS * (high - low);
        if (depth == DEEPEST || (high <= greatest + slack && low >= least - slack)) {
            return;
        }
        double middle = 0.5 * (from + to);
        BernsteinBasis.leftHalf(b, n, hulls[depth + 1]);
        search(n, depth + 1, from, middle);
        BernsteinBasis.rightHalf(b, n, hulls[depth + 1]);
        search(n, depth + 1, middle, to);
    }

    private void take(double value, double at) {
        if (value > greatest) {
            greatest = value;
            greatestAt = at;
        }
        if (value < least) {
            least = value;
            leastAt = at;
        }
    }

    /** Greatest value so far. */
    public double greatest() {
        return greatest;
    }

    /** Least value so far. */
    public double least() {
        return least;
    }

    /** Time of the greatest value. */
    public double greatestAt() {
        return greatestAt;
    }

    /** Time of the least value. */
    public double leastAt() {
        return leastAt;
    }

    /** The greatest absolute value so far. */
    public double greatestSize() {
        return Math.max(greatest, -least);
    }
}
