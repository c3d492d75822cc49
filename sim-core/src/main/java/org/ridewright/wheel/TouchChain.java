package org.ridewright.wheel;

import java.util.List;
import org.ridewright.math.SmoothFunction;

/** Touches that follow one another without a kink: a path with continuous slope from {@link #from()} to {@link #to()}. */
final class TouchChain implements SmoothFunction {
    private final Touch[] touches;
    private final Double face;

    /**
     * @param face station of the upright face on whose upper edge the chain begins, or null
     */
    TouchChain(List<Touch> touches, Double face) {
        this.touches = touches.toArray(new Touch[0]);
        this.face = face;
    }

    double from() {
        return touches[0].from();
    }

    double to() {
        return touches[touches.length - 1].to();
    }

    /** Whether it begins on the upper edge of an upright face. */
    boolean beginsOnFace() {
        return face != null;
    }

    /** Station of that face (m). */
    double face() {
        return face;
    }

    int size() {
        return touches.length;
    }

    Touch touch(int i) {
        return touches[i];
    }

    /** Number of the touch that holds X; at the seam of two the later one, outside all the nearest. */
    int touchAt(double X) {
        int lo = 0;
        int hi = touches.length - 1;
        while (lo < hi) {
            int middle = (lo + hi) >>> 1;
            if (touches[middle].to() > X) {
                hi = middle;
            } else {
                lo = middle + 1;
            }
        }
        return lo;
    }

    @Override
    public double value(double X) {
        return touches[touchAt(X)].value(X);
    }

    @Override
    public double slope(double X) {
        return touches[touchAt(X)].slope(X);
    }

    @Override
    public double curvature(double X) {
        return touches[touchAt(X)].curvature(X);
    }
}
