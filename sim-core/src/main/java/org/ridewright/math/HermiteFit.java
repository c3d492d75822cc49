package org.ridewright.math;

/**
 * Cubic pieces that take over value and slope of a smooth function at their ends.
 *
 * <p>On a piece of length d the error is {@code f⁗ (t(1−t))² d⁴ / 24}, greatest in the middle, {@code f⁗ d⁴ / 384}. So the
 * middle error e of a trial piece of length l says how many pieces a unit of length needs, {@code (e/ε)^(1/4) / l}. The
 * joints are set where the running sum of that density reaches equal shares, which leaves no slivers and every piece nearly
 * as long as ε allows. Each piece is then checked at its quarters and middle, and halved if it fails.
 */
public final class HermiteFit {
    private static final int TRIALS = 8;
    private static final int DEEPEST = 40;
    private static final double MARGIN = 0.9;

    private final SmoothFunction f;
    private final double tolerance;
    private final PieceCollector out;

    /**
     * @param tolerance greatest error of the value, > 0
     * @param out takes the pieces
     */
    public HermiteFit(SmoothFunction f, double tolerance, PieceCollector out) {
        this.f = f;
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
        double x = a;
        double y = atA;
        double s = f.slope(a);
        int trial = 0;
        for (int i = 1; i <= pieces; i++) {
            double next = b;
            if (i < pieces) {
                double wanted = total * i / pieces;
                while (share[trial + 1] < wanted) {
                    trial++;
                }
                double part = (wanted - share[trial]) / (share[trial + 1] - share[trial]);
                next = a + (b - a) * (trial + part) / TRIALS;
            }
            double yNext = i < pieces ? f.value(next) : atB;
            double sNext = f.slope(next);
            piece(x, y, s, next, yNext, sNext, 0);
            x = next;
            y = yNext;
            s = sNext;
        }
    }

    /** Running sum of the number of pieces needed from a to each end of equal trial pieces. */
    private double[] shares(double a, double b) {
        double[] share = new double[TRIALS + 1];
        double x = a;
        double y = f.value(a);
        double s = f.slope(a);
        for (int i = 0; i < TRIALS; i++) {
            double next = i == TRIALS - 1 ? b : a + (b - a) * (i + 1) / TRIALS;
            double yNext = f.value(next);
            double sNext = f.slope(next);
            double middle = (y + yNext) / 2 + (next - x) * (s - sNext) / 8;
            double error = Math.abs(f.value((x + next) / 2) - middle);
            share[i + 1] = share[i] + Math.sqrt(Math.sqrt(error / (MARGIN * tolerance)));
            x = next;
            y = yNext;
            s = sNext;
        }
        return share;
    }

    private void piece(double a, double ya, double sa, double b, double yb, double sb, int depth) {
        double d = b - a;
        double chord = (yb - ya) / d;
        double[] c = {ya, sa, (3 * chord - 2 * sa - sb) / d, (sa + sb - 2 * chord) / (d * d)};
        if (depth < DEEPEST && d > 4 * PieceCollector.SHORTEST * Math.max(1, Math.abs(a)) && !isClose(a, d, c)) {
            double middle = a + d / 2;
            double y = f.value(middle);
            double s = f.slope(middle);
            piece(a, ya, sa, middle, y, s, depth + 1);
            piece(middle, y, s, b, yb, sb, depth + 1);
            return;
        }
        out.add(a, b, c);
    }

    private boolean isClose(double a, double d, double[] c) {
        for (int quarter = 1; quarter <= 3; quarter++) {
            double t = d * quarter / 4;
            double fitted = c[0] + t * (c[1] + t * (c[2] + t * c[3]));
            if (Math.abs(f.value(a + t) - fitted) > tolerance) {
                return false;
            }
        }
        return true;
    }
}
