package org.ridewright.wheel;

import org.ridewright.math.HermiteFit;
import org.ridewright.math.MovingMean;
import org.ridewright.math.PieceCollector;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.math.ShiftedJoints;
import org.ridewright.math.SmoothFunction;
import org.ridewright.road.RoadProfile;
import org.ridewright.road.Section;

/**
 * The mean of the road's height over the footprint, {@code u(X) = 1/(2a) ∫ r over [X − a, X + a]}.
 *
 * <p>Sections are integrated in closed form. While both ends of the footprint are on straight sections u is a parabola, taken
 * exactly; otherwise it is fitted. Its slope {@code (r(X + a) − r(X − a))/(2a)} is finite even where an end stands on an
 * upright side. A profile that is a piecewise polynomial is averaged exactly.
 */
final class FootprintPath implements SmoothFunction {
    private final RoadProfile road;
    private final double a;
    private final double[] areaBefore;
    private int ahead;
    private int behind;

    private FootprintPath(RoadProfile road, double a) {
        this.road = road;
        this.a = a;
        this.areaBefore = new double[road.sections() + 1];
        for (int i = 0; i < road.sections(); i++) {
            areaBefore[i + 1] = areaBefore[i] + road.section(i).area(road.joint(i), road.joint(i + 1));
        }
    }

    static PiecewisePolynomial path(RoadProfile road, double a, int degree, double tolerance) {
        if (road.polynomial().isPresent()) {
            return MovingMean.of(road.polynomial().get(), a);
        }
        return new FootprintPath(road, a).build(degree, tolerance);
    }

    private PiecewisePolynomial build(int degree, double tolerance) {
        double[] joints = new double[road.joints()];
        for (int i = 0; i < joints.length; i++) {
            joints[i] = road.joint(i);
        }
        double[] ends = ShiftedJoints.of(joints, a);
        PieceCollector out = new PieceCollector();
        double atStart = road.heightBefore();
        for (int i = 0; i + 1 < ends.length; i++) {
            double from = ends[i];
            double to = ends[i + 1];
            ahead = road.sectionNumberAt(from + (to - from) / 2 + a);
            behind = road.sectionNumberAt(from + (to - from) / 2 - a);
            double atEnd = i + 2 < ends.length ? value(to) : road.heightAfter();
            if (ahead == behind && road.sectionOrLevel(ahead) instanceof Section.Straight s && s.slope() == 0) {
                atStart = s.z();
                atEnd = s.z();
                out.add(from, to, atStart);
            } else if (road.sectionOrLevel(ahead) instanceof Section.Straight
                    && road.sectionOrLevel(behind) instanceof Section.Straight) {
                out.add(from, to, atStart, slope(from), curvature(from) / 2);
            } else {
                new HermiteFit(this, degree, tolerance, out).fit(from, to, atStart, atEnd);
            }
            atStart = atEnd;
        }
        return out.build(road.heightBefore(), road.heightAfter());
    }

    @Override
    public double value(double X) {
        return (area(ahead, X + a) - area(behind, X - a)) / (2 * a);
    }

    @Override
    public double slope(double X) {
        return (road.sectionOrLevel(ahead).height(X + a)
                        - road.sectionOrLevel(behind).height(X - a))
                / (2 * a);
    }

    @Override
    public double curvature(double X) {
        return (road.sectionOrLevel(ahead).slope(X + a)
                        - road.sectionOrLevel(behind).slope(X - a))
                / (2 * a);
    }

    /** Integral of the height from the first joint to x, which lies on section i. */
    private double area(int i, double x) {
        double start = i < 0 ? road.joint(0) : road.joint(i);
        return areaBefore[Math.max(0, i)] + road.sectionOrLevel(i).area(start, x);
    }
}
