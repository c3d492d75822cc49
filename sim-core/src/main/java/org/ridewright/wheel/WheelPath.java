package org.ridewright.wheel;

import java.util.OptionalDouble;
import org.ridewright.math.MovingMean;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.road.RoadProfile;
import org.ridewright.vehicle.PathKind;

/**
 * The wheel path: height of a wheel's centre above its height on the level road, as a function of its station.
 *
 * <pre>
 *   disc       u(X) = max over |a| ≤ R of r(X + a) − (R − √(R² − a²))
 *   footprint  u(X) = mean of r over [X − a, X + a]
 * </pre>
 *
 * <p>The wheel is a narrow disc on its own track, also over a skewed plank. The path has a joint at every kink and at every change of
 * curvature, to round-off of the station; between joints it is smooth (continuous slope): cubic, of degree 4 where it is a
 * disc's path averaged. Heights are within the tolerance, slopes at kinks exact, level lengths exactly level.
 */
public final class WheelPath {
    /** Error of the height that obstacles are followed to (m): a stiff tyre turns a micrometre into newtons. */
    public static final double TOLERANCE = 1e-8;

    private static final int CUBIC = 3;
    private static final double SMALLEST_JUMP = 1e-9;

    private WheelPath() {}

    /**
     * The path over a profile.
     *
     * @param radius of the wheel R (m), > 0; not used by a footprint alone or a point
     * @param halfFootprint half the length of the footprint a (m), > 0; not used by a disc alone or a point
     * @param tolerance greatest error of the height (m), > 0; see {@link #TOLERANCE}
     * @throws IllegalArgumentException if a number is out of range, or if a disc meets an upright face not lower than its radius
     */
    public static PiecewisePolynomial of(
            RoadProfile profile, PathKind kind, double radius, double halfFootprint, double tolerance) {
        return of(profile, kind, radius, halfFootprint, tolerance, CUBIC);
    }

    /**
     * The path over a profile in pieces of a chosen degree. Quintic pieces are about three times as long as cubic ones at
     * {@link #TOLERANCE}: a 50 mm plank under a 1 m wheel takes 9 in place of 27.
     *
     * @param degree 3 or 5
     * @throws IllegalArgumentException as {@link #of(RoadProfile, PathKind, double, double, double)}, or for another degree
     */
    public static PiecewisePolynomial of(
            RoadProfile profile, PathKind kind, double radius, double halfFootprint, double tolerance, int degree) {
        requirePositive("tolerance of a wheel path", tolerance);
        return switch (kind) {
            case POINT -> PointPath.path(profile, degree, tolerance);
            case DISC -> disc(profile, radius, degree, tolerance);
            case FOOTPRINT -> footprint(profile, halfFootprint, degree, tolerance);
            case DISC_AND_FOOTPRINT -> mean(disc(profile, radius, degree, tolerance), halfFootprint);
        };
    }

    private static PiecewisePolynomial disc(RoadProfile profile, double radius, int degree, double tolerance) {
        requirePositive("radius of a wheel", radius);
        return RollingDisc.path(profile, radius, degree, tolerance);
    }

    private static PiecewisePolynomial footprint(
            RoadProfile profile, double halfFootprint, int degree, double tolerance) {
        requirePositive("half length of a footprint", halfFootprint);
        return FootprintPath.path(profile, halfFootprint, degree, tolerance);
    }

    private static PiecewisePolynomial mean(PiecewisePolynomial path, double halfFootprint) {
        requirePositive("half length of a footprint", halfFootprint);
        return MovingMean.of(path, halfFootprint);
    }

    /** Whether the path jumps anywhere: no damped contact can follow that. */
    public static boolean hasJump(PiecewisePolynomial path) {
        double[] c = new double[path.degree() + 1];
        for (int i = 0; i < path.pieces(); i++) {
            path.expand(i, path.joint(i + 1), c);
            double next = i + 1 < path.pieces() ? path.coefficients(i + 1)[0] : path.valueAfter();
            if (Math.abs(next - c[0]) > SMALLEST_JUMP) {
                return true;
            }
        }
        return false;
    }

    /** Station of the wheel centre where the path first leaves its first level (m); none for a level road. */
    public static OptionalDouble firstDeparture(PiecewisePolynomial path) {
        for (int i = 0; i < path.pieces(); i++) {
            if (!isLevel(path, i, path.valueBefore())) {
                return OptionalDouble.of(path.joint(i));
            }
        }
        return path.valueAfter() == path.valueBefore()
                ? OptionalDouble.empty()
                : OptionalDouble.of(path.joint(path.pieces()));
    }

    /** Station of the wheel centre from which the path stays on its last level (m); none for a level road. */
    public static OptionalDouble lastReturn(PiecewisePolynomial path) {
        for (int i = path.pieces() - 1; i >= 0; i--) {
            if (!isLevel(path, i, path.valueAfter())) {
                return OptionalDouble.of(path.joint(i + 1));
            }
        }
        return OptionalDouble.empty();
    }

    private static boolean isLevel(PiecewisePolynomial path, int piece, double height) {
        double[] c = path.coefficients(piece);
        for (int k = 1; k < c.length; k++) {
            if (c[k] != 0) {
                return false;
            }
        }
        return c[0] == height;
    }

    private static void requirePositive(String name, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(name + " must be > 0 m, got " + value + " m");
        }
    }
}
