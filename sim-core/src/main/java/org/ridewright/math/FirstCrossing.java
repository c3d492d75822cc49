package org.ridewright.math;

/**
 * Finds where a polynomial that starts positive first becomes negative, without missing any crossing.
 *
 * <p>On the unit interval a polynomial lies within the hull of its Bernstein coefficients, and has no more roots than they have changes
 * of sign (Descartes' rule in Bernstein form). Intervals are halved until the leftmost one with a change has exactly one; there
 * Newton's method, kept inside a bracket, refines the root to round-off. Crossings closer together than 2⁻⁴⁰ of the interval count as
 * none: between them the polynomial is negative by less than round-off.
 *
 * <p>Holds work arrays and belongs to one thread. Source: Farouki and Rajan, Computer Aided Geometric Design 4 (1987) 191 (from
 * memory).
 */
public final class FirstCrossing {
    private static final int DEEPEST = 40;

    private final double[][] hulls;
    private final BernsteinBasis basis;

    /**
     * @param greatestDegree of the polynomials to come
     */
    public FirstCrossing(int greatestDegree) {
        hulls = new double[DEEPEST + 2][greatestDegree + 1];
        basis = new BernsteinBasis(greatestDegree);
    }

    /**
     * First crossing from positive to negative in (0, end].
     *
     * @param a coefficients, lowest power first, {@code a[0] > 0}; not modified
     * @param degree highest power used
     * @param end right end of the interval, > 0
     * @return the place of the crossing, or NaN if there is none
     */
    public double find(double[] a, int degree, double end) {
        double fallen = 0;
        double power = end;
        for (int k = 2; k <= degree; k++) {
            power *= end;
            fallen += Math.min(0, a[k] * power);
        }
        double slope = degree > 0 ? a[1] * end : 0;
        if (slope + fallen >= 0 || a[0] + slope + fallen > 0) {
            return Double.NaN;
        }
        int n = degree;
        while (n > 0 && a[n] == 0) {
            n--;
        }
        basis.convert(a, n, end, hulls[0]);
        return search(a, n, 0, 0, end);
    }

    private double search(double[] a, int n, int depth, double from, double to) {
        double[] b = hulls[depth];
        int changes = changes(b, n);
        if (changes == 0) {
            return b[0] < 0 ? from : Double.NaN;
        }
        if (changes == 1) {
            return b[0] > 0 || b[n] < 0 ? refine(a, n, from, to) : Double.NaN;
        }
        if (depth == DEEPEST) {
            return b[n] < 0 ? to : Double.NaN;
        }
        double middle = 0.5 * (from + to);
        BernsteinBasis.leftHalf(b, n, hulls[depth + 1]);
        double found = search(a, n, depth + 1, from, middle);
        if (!Double.isNaN(found)) {
            return found;
        }
        BernsteinBasis.rightHalf(b, n, hulls[depth + 1]);
        return search(a, n, depth + 1, middle, to);
    }

    private static int changes(double[] b, int n) {
        int count = 0;
        boolean positive = b[0] >= 0;
        for (int i = 1; i <= n; i++) {
            boolean sign = b[i] == 0 ? positive : b[i] > 0;
            if (sign != positive) {
                count++;
                positive = sign;
            }
        }
        return count;
    }

    private static double refine(double[] a, int n, double from, double to) {
        double low = from;
        double high = to;
        double x = 0.5 * (low + high);
        for (int i = 0; i < 80; i++) {
            double value = a[n];
            double slope = 0;
            for (int k = n - 1; k >= 0; k--) {
                slope = slope * x + value;
                value = value * x + a[k];
            }
            if (value > 0) {
                low = x;
            } else if (value < 0) {
                high = x;
            } else {
                return x;
            }
            double next = x - value / slope;
            if (!(next > low && next < high)) {
                next = 0.5 * (low + high);
            }
            if (Math.abs(next - x) <= 1e-16 * Math.abs(x) || next == low || next == high) {
                return next;
            }
            x = next;
        }
        return x;
    }
}
