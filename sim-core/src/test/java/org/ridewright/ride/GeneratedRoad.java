package org.ridewright.ride;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Arbitrary;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.road.Obstacle;
import org.ridewright.road.Obstacle.Lie;
import org.ridewright.road.Obstacle.Side;
import org.ridewright.road.Road;

/** One obstacle of any kind, made by chance, and a speed (m/s) over it. */
record GeneratedRoad(Obstacle obstacle, double speed) {
    private static final int KNOBS = 12;

    static Arbitrary<GeneratedRoad> any() {
        return Knobs.settings(KNOBS).map(GeneratedRoad::of);
    }

    /** One of them. */
    static GeneratedRoad any(Random random) {
        return of(random.doubles(KNOBS).boxed().toList());
    }

    private static GeneratedRoad of(List<Double> settings) {
        Knobs knobs = Knobs.of(settings);
        int kind = knobs.choice(8);
        Side side = knobs.oneOf(List.of(Side.BOTH, Side.LEFT, Side.RIGHT));
        double skew = knobs.chance(0.3) ? knobs.between(-0.5, 0.5) : 0;
        double height = knobs.between(0.01, 0.04);
        double speed = knobs.spread(2, 15) * (knobs.chance(0.2) ? 0.3 : 1);
        Lie lie = lie(2, side, skew);
        Obstacle obstacle =
                switch (kind) {
                    case 0 -> new Obstacle.Hump(lie, length(height), length(knobs.between(2, 4)));
                    case 1 ->
                        new Obstacle.Plank(
                                lie, length(height), length(knobs.between(0.1, 0.4)), new Obstacle.Shape.Rectangular());
                    case 2 ->
                        new Obstacle.Plank(
                                lie,
                                length(height),
                                length(0.4),
                                new Obstacle.Shape.Bevelled(length(knobs.between(0.1, 0.15))));
                    case 3 ->
                        new Obstacle.Plank(lie, length(height), length(3 * height), new Obstacle.Shape.HalfRound());
                    case 4 -> new Obstacle.Step(lie, length(height), Optional.empty());
                    case 5 -> new Obstacle.Step(lie, length(-height), Optional.of(length(knobs.between(0.3, 1))));
                    case 6 -> new Obstacle.Pothole(lie, length(height), length(knobs.between(0.2, 0.6)));
                    default ->
                        new Obstacle.Rail(lie, length(0.01), length(0.07), length(0.01), length(0.04), length(0.03));
                };
        return new GeneratedRoad(obstacle, speed);
    }

    static Lie lie(double at, Side side, double skew) {
        return new Lie(length(at), side, Measure.of(skew, QuantityKind.ANGLE), 1, Optional.empty());
    }

    static Measure length(double metres) {
        return Measure.of(metres, QuantityKind.LENGTH);
    }

    Road road() {
        return Trial.road(obstacle);
    }

    /** Left and right exchanged. */
    GeneratedRoad mirrored() {
        Lie lie = obstacle.lie();
        Side side =
                switch (lie.side()) {
                    case LEFT -> Side.RIGHT;
                    case RIGHT -> Side.LEFT;
                    case BOTH -> Side.BOTH;
                };
        Lie other = lie(lie.at().value(), side, -lie.skew().value());
        return new GeneratedRoad(moved(other), speed);
    }

    private Obstacle moved(Lie to) {
        if (obstacle instanceof Obstacle.Hump o) {
            return new Obstacle.Hump(to, o.height(), o.length());
        } else if (obstacle instanceof Obstacle.Plank o) {
            return new Obstacle.Plank(to, o.height(), o.length(), o.shape());
        } else if (obstacle instanceof Obstacle.Step o) {
            return new Obstacle.Step(to, o.height(), o.ramp());
        } else if (obstacle instanceof Obstacle.Pothole o) {
            return new Obstacle.Pothole(to, o.depth(), o.length());
        }
        Obstacle.Rail o = (Obstacle.Rail) obstacle;
        return new Obstacle.Rail(to, o.height(), o.width(), o.edgeRadius(), o.grooveWidth(), o.grooveDepth());
    }
}
