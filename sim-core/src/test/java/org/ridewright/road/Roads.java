package org.ridewright.road;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.road.Obstacle.Lie;
import org.ridewright.road.Obstacle.Side;

/** Roads for tests, in metres and radians. */
public final class Roads {
    private Roads() {}

    public static Road of(Obstacle... obstacles) {
        return new Road("test", List.of(obstacles), Optional.empty());
    }

    public static RoadProfile profile(Obstacle... obstacles) {
        return RoadProfile.alongEverySide(of(obstacles));
    }

    public static Measure m(double value) {
        return Measure.of(value, QuantityKind.LENGTH);
    }

    public static Lie at(double station) {
        return lie(station, Side.BOTH, 0);
    }

    public static Lie lie(double station, Side side, double skew) {
        return new Lie(m(station), side, Measure.of(skew, QuantityKind.ANGLE), 1, Optional.empty());
    }

    public static Lie row(double station, int count, double pitch) {
        return new Lie(m(station), Side.BOTH, Measure.of(0, QuantityKind.ANGLE), count, Optional.of(m(pitch)));
    }

    public static Obstacle plank(Lie lie, double height, double length) {
        return new Obstacle.Plank(lie, m(height), m(length), new Obstacle.Shape.Rectangular());
    }

    public static Obstacle plank(double at, double height, double length) {
        return plank(at(at), height, length);
    }

    public static Obstacle bevelled(double at, double height, double length, double slope) {
        return new Obstacle.Plank(at(at), m(height), m(length), new Obstacle.Shape.Bevelled(m(slope)));
    }

    public static Obstacle halfRound(double at, double height, double length) {
        return new Obstacle.Plank(at(at), m(height), m(length), new Obstacle.Shape.HalfRound());
    }

    public static Obstacle step(double at, double height) {
        return new Obstacle.Step(at(at), m(height), Optional.empty());
    }

    public static Obstacle ramp(double at, double height, double length) {
        return new Obstacle.Step(at(at), m(height), Optional.of(m(length)));
    }

    public static Obstacle pothole(double at, double depth, double length) {
        return new Obstacle.Pothole(at(at), m(depth), m(length));
    }

    public static Obstacle hump(double at, double height, double length) {
        return new Obstacle.Hump(at(at), m(height), m(length));
    }

    public static Obstacle rail(double at, double height, double width, double edge, double groove, double depth) {
        return new Obstacle.Rail(at(at), m(height), m(width), m(edge), m(groove), m(depth));
    }
}
