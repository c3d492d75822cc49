package org.ridewright.wheel;

import org.ridewright.math.HermiteFit;
import org.ridewright.math.PieceCollector;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.math.SmoothFunction;
import org.ridewright.road.RoadProfile;
import org.ridewright.road.Section;

/**
 * The road's own height as a piecewise polynomial. Where a rounded side stands nearly upright no polynomial follows it: the length
 * on which it is steeper than {@link #UPRIGHT}, ρ/(2·UPRIGHT²) of an arc of radius ρ, is made level and leaves a jump of ρ/UPRIGHT.
 */
final class PointPath {
    private static final double UPRIGHT = 1000;
    private static final int MOST_STEPS = 200;

    private PointPath() {}

    static PiecewisePolynomial path(RoadProfile road, int degree, double tolerance) {
        if (road.polynomial().isPresent()) {
            return road.polynomial().get();
        }
        PieceCollector out = new PieceCollector();
        for (int i = 0; i < road.sections(); i++) {
            double a = road.joint(i);
            double b = road.joint(i + 1);
            if (road.section(i) instanceof Section.Straight straight) {
                out.add(a, b, straight.height(a), straight.slope());
            } else {
                fit(new Height(road.section(i)), a, b, degree, tolerance, out);
            }
        }
        return out.build(road.heightBefore(), road.heightAfter());
    }

    private static void fit(Height height, double a, double b, int degree, double tolerance, PieceCollector out) {
        double middle = a + (b - a) / 2;
        double from = climbable(height, a, middle);
        double to = climbable(height, b, middle);
        if (from != a) {
            out.add(a, from, height.value(from));
        }
        new HermiteFit(height, degree, tolerance, out).fit(from, to, height.value(from), height.value(to));
        if (to != b) {
            out.add(to, b, height.value(to));
        }
    }

    /** Station nearest to an end at which the road is no steeper than {@link #UPRIGHT}. */
    private static double climbable(Height height, double end, double inside) {
        if (Math.abs(height.slope(end)) <= UPRIGHT) {
            return end;
        }
        double steep = end;
        double flat = inside;
        for (int i = 0; i < MOST_STEPS && Math.abs(flat - steep) > 1e-10; i++) {
            double middle = steep + (flat - steep) / 2;
            if (Math.abs(height.slope(middle)) <= UPRIGHT) {
                flat = middle;
            } else {
                steep = middle;
            }
        }
        return flat;
    }

    private record Height(Section section) implements SmoothFunction {
        @Override
        public double value(double x) {
            return section.height(x);
        }

        @Override
        public double slope(double x) {
            return section.slope(x);
        }

        @Override
        public double curvature(double x) {
            return section.secondDerivative(x);
        }
    }
}
