package org.ridewright.math;

/**
 * Polynomial pieces that take over a smooth function's value and slope, and at degree 5 its second derivative, at their ends.
 *
 * <p>On a piece of length d the error of a cubic is greatest in the middle, {@code f⁗ d⁴ / 384}; of a quintic,
 * {@code f⁽⁶⁾ d⁶ / 46080}. So with order p = 4 or 6 the middle error e of a trial piece of length l says how many pieces a
 * unit of length needs, {@code (e/ε)^(1/p) / l}. Joints are set where the running sum of that density reaches equal shares,
 * which leaves no slivers and every piece nearly as long as ε allows. Each piece is then checked at its quarters and
 * middle, and halved if it fails.
 */
public final class HermiteFit {
    private static final int TRIALS = 8;
    private static final int DEEPEST = 40;
    private static final double MARGIN = 0.9;

    private final SmoothFunction f;
    private final int degree;
    private final double tolerance;
    private final PieceCollector out;

    /** What a piece takes over at one end. */
    private record End(double x, double value, double slope, double curvature) {}

    /**
     * @param degree 3 or 5
     * @param tolerance greatest error of the value, > 0
     * @param out takes the pieces
     * @throws IllegalArgumentException if the degree is another
     */
    public HermiteFit(SmoothFunction f, int degree, double tolerance, PieceCollector out) {
        if (degree != 3 && degree != 5) {
            throw new IllegalArgumentException("degree of a Hermite fit must be 3 or 5, got " + degree);
        }
        this.f = f;
        this.degree = degree;
        this.tolerance = tolerance;
        this.out = out;
    }

    /**
     * Fits [a, b].
     *
     * @param atA value wanted at a, equal to the function's but for round-off
     * @param atB the same at b
     */
    public void fit(double a, double b, double atA, double atB) {
        double[] share = shares(a, b);
        double total = share[TRIALS];
        int pieces = Math.max(1, (int) Math.ceil(total));
        End left = end(a, atA);
        int trial = 0;
        for (int i = 1; i < pieces; i++) {
            double wanted = total * i / pieces;
            while (share[trial + 1] < wanted) {
                trial++;
            }
            double part = (wanted - share[trial]) / (share[trial + 1] - share[trial]);
            End right = end(a + (b - a) * (trial + part) / TRIALS);
            piece(left, right, 0);
            left = right;
        }
        piece(left, end(b, atB), 0);
    }

    /** Running sum of the number of pieces needed from a to each end of equal trial pieces. */
    private double[] shares(double a, double b) {
        double[] share = new double[TRIALS + 1];
        End left = end(a);
        for (int i = 0; i < TRIALS; i++) {
            End right = end(i == TRIALS - 1 ? b : a + (b - a) * (i + 1) / TRIALS);
            double half = (right.x - left.x) / 2;
            double error = Math.abs(f.value(left.x + half) - value(coefficients(left, right), half));
            share[i + 1] = share[i] + Math.pow(error / (MARGIN * tolerance), 1.0 / (degree + 1));
            left = right;
        }
        return share;
    }

    private void piece(End left, End right, int depth) {
        double[] c = coefficients(left, right);
        double d = right.x - left.x;
        double shortest = 4 * PieceCollector.SHORTEST * Math.max(1, Math.abs(left.x));
        if (depth < DEEPEST && d > shortest && !isClose(left.x, d, c)) {
            End middle = end(left.x + d / 2);
            piece(left, middle, depth + 1);
            piece(middle, right, depth + 1);
            return;
        }
        out.add(left.x, right.x, c);
    }

    private boolean isClose(double a, double d, double[] c) {
        for (int quarter = 1; quarter <= 3; quarter++) {
            double t = d * quarter / 4;
            if (!(Math.abs(f.value(a + t) - value(c, t)) <= tolerance)) {
                return false;
            }
        }
        return true;
    }

    private End end(double x) {
        return end(x, f.value(x));
    }

    private End end(double x, double value) {
        return new End(x, value, f.slope(x), degree == 5 ? f.curvature(x) : 0);
    }

    private double[] coefficients(End left, End right) {
        double d = right.x - left.x;
        if (degree == 5 && Double.isFinite(left.curvature) && Double.isFinite(right.curvature)) {
            return quintic(left, right, d);
        }
        double chord = (right.value - left.value) / d;
        return new double[] {
            left.value,
            left.slope,
            (3 * chord - 2 * left.slope - right.slope) / d,
            (left.slope + right.slope - 2 * chord) / (d * d)
        };
    }

    private static double[] quintic(End left, End right, double d) {
        // what the parabola at the left end misses at the right one, scaled to a unit length
        double p = right.value - left.value - d * (left.slope + d * left.curvature / 2);
        double q = d * (right.slope - left.slope - d * left.curvature);
        double r = d * d * (right.curvature - left.curvature);
        double cube = d * d * d;
        return new double[] {
            left.value,
            left.slope,
            left.curvature / 2,
            (10 * p - 4 * q + r / 2) / cube,
            (-15 * p + 7 * q - r) / (cube * d),
            (6 * p - 3 * q + r / 2) / (cube * d * d)
        };
    }

    private static double value(double[] c, double t) {
        double sum = 0;
        for (int k = c.length - 1; k >= 0; k--) {
            sum = sum * t + c[k];
        }
        return sum;
    }
}
