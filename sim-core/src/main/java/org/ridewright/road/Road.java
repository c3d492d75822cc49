package org.ridewright.road;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;

/**
 * A road: level ground with all its obstacles added up.
 *
 * @param obstacles none for a flat road
 * @param groundRate rate of the ground itself under a wheel (N/m); absent: unyielding
 */
public record Road(String name, List<Obstacle> obstacles, Optional<Measure> groundRate) {
    public Road {
        obstacles = List.copyOf(obstacles);
    }
}
