package org.ridewright.math;

/** A twice differentiable function of one variable. */
public interface SmoothFunction {
    /** Value at x. */
    double value(double x);

    /** First derivative at x. */
    double slope(double x);

    /** Second derivative at x; not finite where there is none. */
    double curvature(double x);
}
