package org.ridewright.ride;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.ride.Scenario.Entrant;
import org.ridewright.road.Obstacle;
import org.ridewright.road.Obstacle.Hump;
import org.ridewright.road.Obstacle.Lie;
import org.ridewright.road.Obstacle.Plank;
import org.ridewright.road.Obstacle.Pothole;
import org.ridewright.road.Obstacle.Rail;
import org.ridewright.road.Obstacle.Shape;
import org.ridewright.road.Obstacle.Side;
import org.ridewright.road.Obstacle.Step;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.AxleKind;
import org.ridewright.vehicle.PathKind;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.vehicle.check.Faults;

/** Judges one obstacle by itself and against the wheels that meet it. */
record ObstacleCheck(List<Entrant> entrants, Obstacle obstacle, String item, Faults faults) {
    private static final double GREATEST_SKEW = Math.toRadians(75);

    /** A bound may be met exactly, whatever the last bit of a unit's conversion. */
    private static final double ROUNDING = 1 + 1e-12;

    void run() {
        shape();
        lie(obstacle.lie());
        rise().filter(rise -> rise.value() > 0).ifPresent(this::tooHigh);
        start();
    }

    private static String plain(double millimetres) {
        return String.format(Locale.ROOT, "%.1f", millimetres).replaceAll("\\.0$", "");
    }

    private String path() {
        return item + "." + word();
    }

    private String word() {
        return obstacle.getClass().getSimpleName().toLowerCase(Locale.ROOT);
    }

    private void shape() {
        String path = path();
        if (obstacle instanceof Plank plank) {
            faults.positive(path + ".height", plank.height());
            faults.positive(path + ".length", plank.length());
            plankShape(plank, path);
        } else if (obstacle instanceof Step step) {
            step.ramp().ifPresent(ramp -> faults.positive(path + ".ramp", ramp));
            if (step.height().value() == 0) {
                faults.add(
                        path + ".height",
                        step.height().written(),
                        "is no step",
                        "a height above 0, or below 0 for a step down",
                        "remove it, or give its height");
            }
        } else if (obstacle instanceof Pothole hole) {
            faults.positive(path + ".depth", hole.depth());
            faults.positive(path + ".length", hole.length());
        } else if (obstacle instanceof Hump hump) {
            faults.positive(path + ".length", hump.length());
        } else if (obstacle instanceof Rail rail) {
            rail(rail, path);
        }
    }

    private void plankShape(Plank plank, String path) {
        if (plank.shape() instanceof Shape.Bevelled bevelled) {
            faults.positive(path + ".shape.bevelled", bevelled.slopeLength());
            if (2 * bevelled.slopeLength().value() > plank.length().value() * ROUNDING) {
                faults.add(
                        path + ".shape.bevelled",
                        bevelled.slopeLength().written(),
                        "at both ends is more than the plank's length of "
                                + plank.length().written(),
                        "at most half the length",
                        "give the slope of one end, measured along the road",
                        path + ".length");
            }
        } else if (plank.shape() instanceof Shape.HalfRound
                && 2 * plank.height().value() > plank.length().value() * ROUNDING) {
            faults.add(
                    path + ".length",
                    plank.length().written(),
                    "is less than twice the height of " + plank.height().written() + ", more than half a circle",
                    "at least twice the height of a half-round plank",
                    "write length: " + plain(2000 * plank.height().value()) + " mm, or a smaller height",
                    path + ".height",
                    path + ".shape");
        }
    }

    private void rail(Rail rail, String path) {
        faults.notNegative(path + ".height", rail.height());
        faults.positive(path + ".width", rail.width());
        faults.notNegative(path + ".edge radius", rail.edgeRadius());
        faults.notNegative(path + ".groove width", rail.grooveWidth());
        faults.notNegative(path + ".groove depth", rail.grooveDepth());
        if (2 * rail.edgeRadius().value() > rail.width().value() * ROUNDING) {
            faults.add(
                    path + ".edge radius",
                    rail.edgeRadius().written(),
                    "is more than half the width of " + rail.width().written(),
                    "at most half the width",
                    "write edge radius: " + plain(500 * rail.width().value()) + " mm, or a smaller one",
                    path + ".width");
        }
        if ((rail.grooveWidth().value() > 0) != (rail.grooveDepth().value() > 0)) {
            faults.add(
                    path,
                    "",
                    "has a groove without width or without depth",
                    "groove width and groove depth, or neither",
                    "add the other of the two");
        }
    }

    private void lie(Lie lie) {
        String path = path();
        if (Math.abs(lie.skew().value()) > GREATEST_SKEW) {
            faults.add(
                    path + ".skew",
                    lie.skew().written(),
                    "is more than 75 deg",
                    "an angle to the square across the road",
                    "write 0 deg for an obstacle square across the road");
        }
        lie.pitch().ifPresent(pitch -> faults.positive(path + ".every", pitch));
        if (lie.count() > 1 && lie.pitch().isEmpty()) {
            faults.add(
                    path + ".every",
                    "",
                    "is missing, with a count of " + lie.count(),
                    "the distance from one leading edge to the next, such as 2 m",
                    "add 'every: ...' to the " + word(),
                    path + ".count");
        }
        extent().filter(length -> lie.count() > 1 && lie.pitch().isPresent())
                .filter(length -> lie.pitch().get().value() < length.value())
                .ifPresent(length -> faults.add(
                        path + ".every",
                        lie.pitch().orElseThrow().written(),
                        "is less than the length of one, " + length.written(),
                        "the distance from one leading edge to the next",
                        "add the length of one to the gap between two",
                        path + ".length"));
    }

    private Optional<Measure> extent() {
        if (obstacle instanceof Plank plank) {
            return Optional.of(plank.length());
        }
        if (obstacle instanceof Pothole hole) {
            return Optional.of(hole.length());
        }
        return obstacle instanceof Hump hump ? Optional.of(hump.length()) : Optional.empty();
    }

    /** Height of an upright or steep edge that a wheel has to climb. */
    private Optional<Measure> rise() {
        if (obstacle instanceof Plank plank) {
            return Optional.of(plank.height());
        }
        if (obstacle instanceof Step step && step.ramp().isEmpty()) {
            return Optional.of(step.height());
        }
        return obstacle instanceof Rail rail ? Optional.of(rail.height()) : Optional.empty();
    }

    /** A wheel climbs no edge as high as its own centre. */
    private void tooHigh(Measure rise) {
        for (Entrant entrant : entrants) {
            for (Axle axle : entrant.vehicle().axles()) {
                if (met(axle, entrant.vehicle()) && rise.value() >= axle.wheel().radius()) {
                    faults.add(
                            path() + ".height",
                            rise.written(),
                            "is not lower than the centre of a wheel that meets it, " + axle.name() + " of "
                                    + entrant.vehicle().name() + " with a diameter of "
                                    + axle.wheel().diameter().written(),
                            "a height below half the diameter of every wheel",
                            "check the unit",
                            "vehicles");
                    return;
                }
            }
        }
    }

    private boolean met(Axle axle, Vehicle vehicle) {
        return obstacle.lie().side() == Side.BOTH
                || axle.kind() != AxleKind.SINGLE
                || !vehicle.layout().rolls();
    }

    /** Every wheel starts on level ground: the obstacle begins farther ahead of the front axle than a wheel reaches. */
    private void start() {
        Measure at = obstacle.lie().at();
        if (at.value() <= 0) {
            faults.add(
                    path() + ".at",
                    at.written(),
                    "is not ahead of the front axle, which starts at 0",
                    "a length > 0 m",
                    "move the obstacle farther ahead");
            return;
        }
        double farthest = 0;
        for (Entrant entrant : entrants) {
            for (Axle axle : entrant.vehicle().axles()) {
                if (met(axle, entrant.vehicle())) {
                    farthest = Math.max(
                            farthest, reach(axle) - axle.behindFrontAxle().value());
                }
            }
        }
        if (at.value() <= farthest) {
            faults.add(
                    path() + ".at",
                    at.written(),
                    "is so close that a wheel touches the obstacle at the start",
                    String.format(Locale.ROOT, "more than %.2f m, the reach of the wheels", farthest),
                    "move the obstacle farther ahead",
                    "vehicles",
                    path() + ".skew",
                    path() + ".height");
        }
    }

    /** How far ahead of its centre a wheel meets the obstacle: {@code √(2Rh − h²)} of a disc, half a footprint, and the skew. */
    private double reach(Axle axle) {
        double height = rise().map(Measure::value).orElse(0.0);
        double radius = axle.wheel().radius();
        PathKind path = axle.wheel().path();
        boolean disc = path == PathKind.DISC || path == PathKind.DISC_AND_FOOTPRINT;
        boolean footprint = path == PathKind.FOOTPRINT || path == PathKind.DISC_AND_FOOTPRINT;
        double ahead = disc && height > 0 && height < radius ? Math.sqrt(2 * radius * height - height * height) : 0;
        double print =
                footprint ? axle.wheel().footprintLength().map(Measure::value).orElse(0.0) / 2 : 0;
        double halfTrack = axle.track().map(Measure::value).orElse(0.0) / 2;
        return ahead
                + print
                + halfTrack * Math.abs(Math.tan(obstacle.lie().skew().value()));
    }
}
