package org.ridewright.validation;

import java.util.List;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.road.RoadProfile;
import org.ridewright.road.Roads;
import org.ridewright.vehicle.PathKind;
import org.ridewright.wheel.WheelPath;

/**
 * A rigid disc of radius R over a square-edged plank of height h: the rim meets the edge {@code √(2Rh − h²)} before it, where the
 * centre's path begins with the slope {@code √(2Rh − h²)/(R − h)}; at the distance d before the edge the centre stands at {@code h
 * − R + √(R² − d²)}.
 */
final class WheelOverPlank implements ReferenceProblem {
    private static final double RADIUS = 0.45;
    private static final double HEIGHT = 0.03;
    private static final double EDGE = 3;
    private static final Source CLOSED = Source.closedForm("circle about the edge");

    @Override
    public String title() {
        return "Rigid wheel over a plank";
    }

    @Override
    public String statement() {
        return "Path of the centre of a wheel of 0.9 m over a square plank of 30 mm.";
    }

    @Override
    public List<Check> checks() {
        RoadProfile road = Roads.profile(Roads.plank(EDGE, HEIGHT, 0.5));
        PiecewisePolynomial path = WheelPath.of(road, PathKind.DISC, RADIUS, 0, WheelPath.TOLERANCE);
        double reach = Math.sqrt(2 * RADIUS * HEIGHT - HEIGHT * HEIGHT);
        double meets = WheelPath.firstDeparture(path).orElseThrow();
        double worst = 0;
        for (int i = 1; i < 1000; i++) {
            double d = reach * i / 1000;
            double exact = HEIGHT - RADIUS + Math.sqrt(RADIUS * RADIUS - d * d);
            worst = Math.max(worst, Math.abs(path.value(EDGE - d) - exact));
        }
        return new Rows(this)
                .absolute(CLOSED, "first touch before the edge", "m", reach, EDGE - meets, 1e-12)
                .relative(CLOSED, "slope there", "1", reach / (RADIUS - HEIGHT), path.derivative(meets, 1), 1e-9)
                .absolute(CLOSED, "path on the edge, greatest difference", "m", 0, worst, WheelPath.TOLERANCE)
                .list();
    }
}
