package org.ridewright.math;

/** A differentiable function of one variable. */
public interface SmoothFunction {
    /** Value at x. */
    double value(double x);

    /** First derivative at x. */
    double slope(double x);
}
