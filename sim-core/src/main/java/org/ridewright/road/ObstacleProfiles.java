package org.ridewright.road;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.road.Obstacle.Lie;
import org.ridewright.road.Obstacle.Side;

/** Lays out a road's obstacles along a track. */
final class ObstacleProfiles {
    private final Road road;

    ObstacleProfiles(Road road) {
        this.road = road;
    }

    RoadProfile along(double y) {
        List<RoadProfile> profiles = new ArrayList<>();
        for (Obstacle obstacle : road.obstacles()) {
            if (liesBefore(obstacle.lie().side(), y)) {
                lay(obstacle, y, profiles);
            }
        }
        return RoadProfile.sum(profiles);
    }

    RoadProfile alongEverySide() {
        List<RoadProfile> profiles = new ArrayList<>();
        for (Obstacle obstacle : road.obstacles()) {
            lay(obstacle, 0, profiles);
        }
        return RoadProfile.sum(profiles);
    }

    private static boolean liesBefore(Side side, double y) {
        return switch (side) {
            case BOTH -> true;
            case LEFT -> y > 0;
            case RIGHT -> y < 0;
        };
    }

    private static void lay(Obstacle obstacle, double y, List<RoadProfile> out) {
        Lie lie = obstacle.lie();
        double first = lie.at().value() + y * Math.tan(lie.skew().value());
        double pitch = 0;
        if (lie.count() > 1) {
            pitch = lie.pitch()
                    .orElseThrow(() -> new IllegalArgumentException(
                            "pitch is needed where count is > 1, got count " + lie.count() + " and no pitch"))
                    .value();
        }
        for (int i = 0; i < lie.count(); i++) {
            out.add(profile(obstacle, first + i * pitch));
        }
    }

    private static RoadProfile profile(Obstacle obstacle, double at) {
        ObstacleOutline outline = new ObstacleOutline(at);
        if (obstacle instanceof Obstacle.Plank plank) {
            outline.plank(plank);
        } else if (obstacle instanceof Obstacle.Step step) {
            outline.step(step);
        } else if (obstacle instanceof Obstacle.Pothole hole) {
            outline.level(-hole.depth().value(), hole.length().value());
        } else if (obstacle instanceof Obstacle.Hump hump) {
            outline.wave(hump.height().value(), hump.length().value());
        } else if (obstacle instanceof Obstacle.Rail rail) {
            outline.rail(rail);
        } else {
            throw new IllegalStateException("no outline for " + obstacle.getClass());
        }
        return outline.build();
    }
}
