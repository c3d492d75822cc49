package org.ridewright.road;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;

/**
 * A road: level ground with all its obstacles and surfaces added up.
 *
 * @param obstacles none for a road without
 * @param surfaces none for a road without
 * @param runUp length over which random surfaces grow from nothing, and at their end fade away (m), ≥ 0
 * @param groundRate rate of the ground itself under a wheel (N/m); absent: unyielding
 * @param groundDamping of the same (N·s/m); absent: the wheels' damping is that of wheel and ground together
 */
public record Road(
        String name,
        List<Obstacle> obstacles,
        List<Surface> surfaces,
        Measure runUp,
        Optional<Measure> groundRate,
        Optional<Measure> groundDamping) {
    /** Where surfaces begin that do not say (m): ahead of the front axle, so that every wheel starts on level ground. */
    public static final double START = 1;

    /** The run-up of a road that does not say. */
    public static final Measure RUN_UP =
            Measure.estimated(10, QuantityKind.LENGTH, "run-up: 10 m unless the file says otherwise");

    public Road {
        obstacles = List.copyOf(obstacles);
        surfaces = List.copyOf(surfaces);
    }

    /** A road whose ground states at most its rate. */
    public Road(
            String name,
            List<Obstacle> obstacles,
            List<Surface> surfaces,
            Measure runUp,
            Optional<Measure> groundRate) {
        this(name, obstacles, surfaces, runUp, groundRate, Optional.empty());
    }

    /** A road of obstacles alone. */
    public Road(String name, List<Obstacle> obstacles, Optional<Measure> groundRate) {
        this(name, obstacles, List.of(), RUN_UP, groundRate, Optional.empty());
    }

    /** What is to be said of its measured profiles. */
    public List<String> remarks() {
        return surfaces.stream()
                .filter(Surface.Measured.class::isInstance)
                .flatMap(surface -> ((Surface.Measured) surface).remarks().stream())
                .toList();
    }
}
