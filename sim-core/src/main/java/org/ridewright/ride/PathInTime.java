package org.ridewright.ride;

import java.util.TreeSet;
import org.ridewright.math.HermiteFit;
import org.ridewright.math.PieceCollector;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.math.SmoothFunction;

/**
 * A wheel's path against time. At a steady speed powers of the station become powers of time times powers of v, exactly; while
 * the speed changes, quintic pieces follow {@code u(X(t))} within the tolerance.
 */
final class PathInTime {
    private static final int DEGREE = 5;

    private final PiecewisePolynomial path;
    private final double x;
    private final Travel travel;
    private final double tolerance;

    /** @param x of the wheel: its station is that of the front axle plus x (m) */
    private PathInTime(PiecewisePolynomial path, double x, Travel travel, double tolerance) {
        this.path = path;
        this.x = x;
        this.travel = travel;
        this.tolerance = tolerance;
    }

    /**
     * Height against time.
     *
     * @param tolerance of the height while the speed changes (m)
     */
    static PiecewisePolynomial of(PiecewisePolynomial path, double x, Travel travel, double tolerance) {
        PathInTime built = new PathInTime(path, x, travel, tolerance);
        return travel.isSteady() ? built.atSteadySpeed() : built.atPlannedSpeed();
    }

    private PiecewisePolynomial atSteadySpeed() {
        int pieces = path.pieces();
        double speed = travel.speed(0);
        double[] joints = new double[pieces + 1];
        double[][] coefficients = new double[pieces][];
        for (int i = 0; i <= pieces; i++) {
            joints[i] = (path.joint(i) - x) / speed;
        }
        for (int i = 0; i < pieces; i++) {
            coefficients[i] = path.coefficients(i);
            scale(coefficients[i], speed);
        }
        return new PiecewisePolynomial(joints, coefficients, path.valueAfter());
    }

    private static void scale(double[] coefficients, double speed) {
        double power = 1;
        for (int k = 0; k < coefficients.length; k++) {
            coefficients[k] *= power;
            power *= speed;
        }
    }

    private PiecewisePolynomial atPlannedSpeed() {
        TreeSet<Double> ends = new TreeSet<>();
        for (int i = 0; i <= path.pieces(); i++) {
            ends.add(travel.time(path.joint(i) - x));
        }
        double first = ends.first();
        double last = ends.last();
        for (double seam : travel.seams()) {
            if (seam > first && seam < last) {
                ends.add(seam);
            }
        }
        PieceCollector out = new PieceCollector();
        double[] work = new double[path.degree() + 1];
        double from = first;
        for (double to : ends.tailSet(first, false)) {
            double middle = from + (to - from) / 2;
            int piece = path.pieceAt(travel.station(middle) + x);
            if (travel.isSteadyAt(middle)) {
                path.expand(piece, travel.station(from) + x, work);
                double[] row = work.clone();
                scale(row, travel.speed(middle));
                out.add(from, to, row);
            } else {
                OnPiece height = new OnPiece(piece);
                new HermiteFit(height, DEGREE, tolerance, out).fit(from, to, height.value(from), height.value(to));
            }
            from = to;
        }
        return out.build(path.valueBefore(), path.valueAfter());
    }

    /** {@code u(X(t))} on one piece of the path, smoothly continued beyond its ends. */
    private final class OnPiece implements SmoothFunction {
        private final int piece;
        private final double[] about = new double[path.degree() + 1];

        OnPiece(int piece) {
            this.piece = piece;
        }

        private void expandAt(double t) {
            path.expand(piece, travel.station(t) + x, about);
        }

        private double coefficient(int k) {
            return k < about.length ? about[k] : 0;
        }

        @Override
        public double value(double t) {
            expandAt(t);
            return about[0];
        }

        @Override
        public double slope(double t) {
            expandAt(t);
            return coefficient(1) * travel.speed(t);
        }

        @Override
        public double curvature(double t) {
            expandAt(t);
            double v = travel.speed(t);
            return 2 * coefficient(2) * v * v + coefficient(1) * travel.acceleration(t);
        }
    }
}
