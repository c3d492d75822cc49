package org.ridewright.math;

/**
 * The mean of a piecewise polynomial over a window that moves along it, itself a piecewise polynomial one degree higher.
 *
 * <pre>
 *   m(x) = 1/(2a) ∫ p over [x − a, x + a]        m′(x) = (p(x + a) − p(x − a)) / (2a)
 * </pre>
 *
 * <p>The joints of m are those of p, shifted by a both ways. Between them m′ is the difference of two polynomials, so all
 * coefficients but the lowest come from p itself without cancellation; the lowest is the difference of p's integral at the
 * two ends. A jump of p becomes a kink of m, a kink a step in curvature.
 */
public final class MovingMean {
    private final PiecewisePolynomial p;
    private final double a;
    private final double[] integral;

    private MovingMean(PiecewisePolynomial p, double a) {
        this.p = p;
        this.a = a;
        this.integral = new double[p.pieces() + 1];
        for (int i = 0; i < p.pieces(); i++) {
            integral[i + 1] = integral[i] + integralOver(p.coefficients(i), p.joint(i + 1) - p.joint(i));
        }
    }

    /**
     * The mean of p over [x − a, x + a].
     *
     * @param a half the window's length, > 0
     * @throws IllegalArgumentException if a is not > 0
     */
    public static PiecewisePolynomial of(PiecewisePolynomial p, double a) {
        if (!(a > 0)) {
            throw new IllegalArgumentException("half length of a moving mean must be > 0, got " + a);
        }
        return new MovingMean(p, a).build();
    }

    private PiecewisePolynomial build() {
        double[] ends = ends();
        PieceCollector out = new PieceCollector();
        int size = p.degree() + 1;
        double[] ahead = new double[size];
        double[] behind = new double[size];
        for (int i = 0; i + 1 < ends.length; i++) {
            double middle = (ends[i] + ends[i + 1]) / 2;
            int pieceAhead = p.pieceAt(middle + a);
            int pieceBehind = p.pieceAt(middle - a);
            double[] c = new double[size + 1];
            p.expand(pieceAhead, ends[i] + a, ahead);
            p.expand(pieceBehind, ends[i] - a, behind);
            for (int k = 0; k < size; k++) {
                c[k + 1] = (ahead[k] - behind[k]) / (2 * a * (k + 1));
            }
            c[0] = i == 0 ? p.valueBefore() : start(pieceAhead, pieceBehind, ends[i]);
            out.add(ends[i], ends[i + 1], c);
        }
        return out.build(p.valueBefore(), p.valueAfter());
    }

    private double start(int pieceAhead, int pieceBehind, double x) {
        if (pieceAhead == pieceBehind && p.coefficients(pieceAhead).length == 1) {
            return p.coefficients(pieceAhead)[0];
        }
        return (integralTo(pieceAhead, x + a) - integralTo(pieceBehind, x - a)) / (2 * a);
    }

    private double[] ends() {
        double[] joints = new double[p.pieces() + 1];
        for (int i = 0; i < joints.length; i++) {
            joints[i] = p.joint(i);
        }
        return ShiftedJoints.of(joints, a);
    }

    /** Integral from the first joint to x, which lies on the given piece or at its end. */
    private double integralTo(int piece, double x) {
        if (piece < 0) {
            return p.valueBefore() * (x - p.joint(0));
        }
        if (piece == p.pieces()) {
            return integral[piece] + p.valueAfter() * (x - p.joint(piece));
        }
        return integral[piece] + integralOver(p.coefficients(piece), x - p.joint(piece));
    }

    private static double integralOver(double[] c, double d) {
        double sum = 0;
        for (int k = c.length - 1; k >= 0; k--) {
            sum = sum * d + c[k] / (k + 1);
        }
        return sum * d;
    }
}
