package org.ridewright.math;

/**
 * Running extremes of polynomials on intervals from 0, by branch and bound on their Bernstein coefficients: an interval whose hull does
 * not pass the extreme found so far is left alone, others are halved. Found extremes are exact to a relative 1e-12 of the hull.
 *
 * <p>Mutable; belongs to one thread.
 */
public final class PolynomialRange {
    private static final int DEEPEST = 30;
    private static final double FINENESS = 1e-12;

    private final double[][] hulls;
    private final double[][] binomials;
    private double greatest = Double.NEGATIVE_INFINITY;
    private double least = Double.POSITIVE_INFINITY;
    private double greatestAt = Double.NaN;
    private double leastAt = Double.NaN;

    /** Room for polynomials up to the given degree. */
    public PolynomialRange(int greatestDegree) {
        hulls = new double[DEEPEST + 2][greatestDegree + 1];
        binomials = new double[greatestDegree + 1][greatestDegree + 1];
        for (int n = 0; n <= greatestDegree; n++) {
            binomials[n][0] = 1;
            for (int k = 1; k <= n; k++) {
                binomials[n][k] = binomials[n][k - 1] * (n - k + 1) / k;
            }
        }
    }

    /**
     * Takes in one polynomial.
     *
     * @param a coefficients in powers of τ, lowest first; not modified
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
        double[] b = hulls[0];
        power = 1;
        for (int k = 0; k <= degree; k++) {
            b[k] = a[k] * power / binomials[degree][k];
            power *= end;
        }
        for (int pass = 1; pass <= degree; pass++) {
            for (int j = degree; j >= pass; j--) {
                b[j] += b[j - 1];
            }
        }
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
        double[] half = hulls[depth + 1];
        System.arraycopy(b, 0, half, 0, n + 1);
        for (int pass = 1; pass <= n; pass++) {
            for (int j = n; j >= pass; j--) {
                half[j] = 0.5 * (half[j] + half[j - 1]);
            }
        }
        search(n, depth + 1, from, middle);
        System.arraycopy(b, 0, half, 0, n + 1);
        for (int pass = 1; pass <= n; pass++) {
            for (int j = 0; j <= n - pass; j++) {
                half[j] = 0.5 * (half[j] + half[j + 1]);
            }
        }
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
