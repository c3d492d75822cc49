package org.ridewright.wheel;

import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.road.Track;
import org.ridewright.vehicle.PathKind;

/**
 * The wheel path along a track, window by window. Each window's road reaches as far beyond it as the wheel does, so that windows
 * that adjoin meet within the tolerance of the path.
 */
public final class PathWindows {
    /** Room beyond the wheel's reach, so that both of two windows work out the pieces at their seam alike (m). */
    private static final double MARGIN = 0.5;

    private final Track track;
    private final PathKind kind;
    private final double radius;
    private final double halfFootprint;
    private final double tolerance;

    /** @see WheelPath#of */
    public PathWindows(Track track, PathKind kind, double radius, double halfFootprint, double tolerance) {
        this.track = track;
        this.kind = kind;
        this.radius = radius;
        this.halfFootprint = halfFootprint;
        this.tolerance = tolerance;
    }

    /** How far ahead of its centre and behind it a wheel can touch (m). */
    public double reach() {
        boolean disc = kind == PathKind.DISC || kind == PathKind.DISC_AND_FOOTPRINT;
        boolean footprint = kind == PathKind.FOOTPRINT || kind == PathKind.DISC_AND_FOOTPRINT;
        return (disc ? radius : 0) + (footprint ? halfFootprint : 0);
    }

    /** Station of the wheel centre up to which the path is level at 0 (m); +∞ where it is so throughout. */
    public double begin() {
        return track.begin() - reach();
    }

    /** Station of the wheel centre from which on the path is level (m); −∞ where it is so throughout, +∞ where it never is. */
    public double end() {
        return track.end() + reach();
    }

    /**
     * The whole path.
     *
     * @throws IllegalArgumentException as {@link WheelPath#of} does
     * @throws IllegalStateException if the road never ends
     */
    public PiecewisePolynomial whole() {
        if (track.begin() > track.end()) {
            return PiecewisePolynomial.constant(0);
        }
        if (track.end() == Double.POSITIVE_INFINITY) {
            throw new IllegalStateException("the road has no end");
        }
        return WheelPath.of(track.window(track.begin(), track.end()), kind, radius, halfFootprint, tolerance);
    }

    /**
     * The path while the wheel's centre goes from one station to another; its first and last joint are these.
     *
     * @throws IllegalArgumentException as {@link WheelPath#of} does
     */
    public PiecewisePolynomial between(double from, double to) {
        double beyond = reach() + MARGIN;
        PiecewisePolynomial path =
                WheelPath.of(track.window(from - beyond, to + beyond), kind, radius, halfFootprint, tolerance);
        return path.part(from, to);
    }
}
