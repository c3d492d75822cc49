package org.ridewright.math;

/**
 * Bernstein form of polynomials: on its interval a polynomial lies within the hull of its coefficients, and its end values are the first
 * and the last of them. Source: Farouki and Rajan, Computer Aided Geometric Design 4 (1987) 191 (from memory).
 */
final class BernsteinBasis {
    private final double[][] binomials;

    BernsteinBasis(int greatestDegree) {
        binomials = new double[greatestDegree + 1][greatestDegree + 1];
        for (int n = 0; n <= greatestDegree; n++) {
            binomials[n][0] = 1;
            for (int k = 1; k <= n; k++) {
                binomials[n][k] = binomials[n][k - 1] * (n - k + 1) / k;
            }
        }
    }

    /**
     * Bernstein coefficients on [0, end] of a polynomial given by its powers, {@code b_j = Σ_{k≤j} C(j,k)/C(n,k) a_k end^k}.
     *
     * @param a coefficients, lowest power first; not modified
     * @param n degree
     * @param b overwritten up to n
     */
    void convert(double[] a, int n, double end, double[] b) {
        double power = 1;
        for (int k = 0; k <= n; k++) {
            b[k] = a[k] * power / binomials[n][k];
            power *= end;
        }
        for (int pass = 1; pass <= n; pass++) {
            for (int j = n; j >= pass; j--) {
                b[j] += b[j - 1];
            }
        }
    }

    /** De Casteljau at the middle: from b the coefficients on its left half, into half. */
    static void leftHalf(double[] b, int n, double[] half) {
        System.arraycopy(b, 0, half, 0, n + 1);
        for (int pass = 1; pass <= n; pass++) {
            for (int j = n; j >= pass; j--) {
                half[j] = 0.5 * (half[j] + half[j - 1]);
            }
        }
    }

    /** De Casteljau at the middle: from b the coefficients on its right half, into half. */
    static void rightHalf(double[] b, int n, double[] half) {
        System.arraycopy(b, 0, half, 0, n + 1);
        for (int pass = 1; pass <= n; pass++) {
            for (int j = 0; j <= n - pass; j++) {
                half[j] = 0.5 * (half[j] + half[j + 1]);
            }
        }
    }
}
