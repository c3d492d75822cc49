package org.ridewright.roughness;

import java.util.List;

/**
 * A short stretch of a track, with what wheels make of it.
 *
 * @param start station of the first height (m)
 * @param spacing (m)
 * @param road heights (m)
 * @param paths heights of each wheel's path (m), at the same stations
 */
public record Excerpt(double start, double spacing, double[] road, List<double[]> paths) {
    public Excerpt {
        paths = List.copyOf(paths);
    }
}
