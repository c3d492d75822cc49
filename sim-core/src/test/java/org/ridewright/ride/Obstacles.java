package org.ridewright.ride;

import java.util.List;
import java.util.Optional;
import org.ridewright.road.Obstacle;
import org.ridewright.road.Obstacle.Lie;
import org.ridewright.road.Obstacle.Side;

/** One obstacle of each kind, some under one side or askew. */
final class Obstacles {
    private static final double AT = 2;

    private Obstacles() {}

    /**
     * @param size 1 for heights of 10 to 50 mm
     */
    static List<Obstacle> everyKind(double size) {
        Lie across = GeneratedRoad.lie(AT, Side.BOTH, 0);
        return List.of(
                plank(across, 0.03 * size, 0.15),
                plank(GeneratedRoad.lie(AT, Side.LEFT, 0), 0.03 * size, 0.15),
                plank(GeneratedRoad.lie(AT, Side.BOTH, 0.35), 0.03 * size, 0.2),
                new Obstacle.Plank(
                        across,
                        GeneratedRoad.length(0.03 * size),
                        GeneratedRoad.length(0.2),
                        new Obstacle.Shape.Bevelled(GeneratedRoad.length(0.04))),
                new Obstacle.Plank(
                        across,
                        GeneratedRoad.length(0.02 * size),
                        GeneratedRoad.length(0.06 * size),
                        new Obstacle.Shape.HalfRound()),
                new Obstacle.Step(across, GeneratedRoad.length(0.03 * size), Optional.empty()),
                new Obstacle.Step(across, GeneratedRoad.length(-0.03 * size), Optional.of(GeneratedRoad.length(0.5))),
                new Obstacle.Pothole(
                        GeneratedRoad.lie(AT, Side.RIGHT, 0),
                        GeneratedRoad.length(0.04 * size),
                        GeneratedRoad.length(0.4)),
                new Obstacle.Hump(across, GeneratedRoad.length(0.05 * size), GeneratedRoad.length(3)),
                new Obstacle.Rail(
                        across,
                        GeneratedRoad.length(0.01 * size),
                        GeneratedRoad.length(0.07),
                        GeneratedRoad.length(0.01 * size),
                        GeneratedRoad.length(0.05),
                        GeneratedRoad.length(0.03)));
    }

    static Obstacle plank(Lie lie, double height, double length) {
        return new Obstacle.Plank(
                lie, GeneratedRoad.length(height), GeneratedRoad.length(length), new Obstacle.Shape.Rectangular());
    }

    /** Kind and side in a few words. */
    static String name(Obstacle obstacle) {
        String kind = obstacle instanceof Obstacle.Plank plank
                ? plank.shape().getClass().getSimpleName() + " plank"
                : obstacle.getClass().getSimpleName();
        Lie lie = obstacle.lie();
        String askew = lie.skew().value() == 0 ? "" : " askew";
        return kind + (lie.side() == Side.BOTH ? "" : " " + lie.side().word()) + askew;
    }
}
