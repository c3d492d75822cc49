package org.ridewright.road;

import java.util.ArrayList;
import java.util.List;

/** Draws the outline of one obstacle from its leading edge onwards, section by section. Lengths and heights in m. */
final class ObstacleOutline {
    private final List<Double> joints = new ArrayList<>();
    private final List<Section> sections = new ArrayList<>();
    private double at;
    private double after;

    /** @param at station of the leading edge (m) */
    ObstacleOutline(double at) {
        this.at = at;
        joints.add(at);
    }

    RoadProfile build() {
        if (sections.isEmpty()) {
            sections.add(Section.level(0));
            joints.set(0, at - 1);
            joints.add(at);
        }
        double[] stations = joints.stream().mapToDouble(Double::doubleValue).toArray();
        return new RoadProfile(stations, sections.toArray(new Section[0]), 0, after);
    }

    void plank(Obstacle.Plank plank) {
        double h = plank.height().value();
        double length = plank.length().value();
        if (plank.shape() instanceof Obstacle.Shape.Bevelled bevelled) {
            double slope = bevelled.slopeLength().value();
            refuseIf(
                    2 * slope > length * (1 + 1e-12),
                    "slope length of a bevelled plank",
                    slope,
                    "half its length",
                    length / 2);
            ramp(0, h, slope);
            level(h, length - 2 * slope);
            ramp(h, 0, slope);
        } else if (plank.shape() instanceof Obstacle.Shape.HalfRound) {
            refuseIf(2 * h > length * (1 + 1e-12), "height of a half-round plank", h, "half its length", length / 2);
            // circle through both ends and the crown: ρ = (L²/4 + h²) / 2h
            double radius = (length * length / 4 + h * h) / (2 * h);
            arc(at + length / 2, h - radius, radius, length);
        } else {
            level(h, length);
        }
    }

    void step(Obstacle.Step step) {
        double h = step.height().value();
        if (step.ramp().isPresent()) {
            ramp(0, h, step.ramp().get().value());
        }
        after = h;
    }

    void wave(double height, double length) {
        add(new Section.Wave(at, 0, height, length), length);
    }

    /**
     * A rounded edge of radius ρ begins upright at height h − ρ. Where that lies below the road, or behind the head below
     * the floor of the groove, the arc begins or ends where it meets them.
     */
    void rail(Obstacle.Rail rail) {
        double h = rail.height().value();
        double width = rail.width().value();
        double radius = rail.edgeRadius().value();
        double groove = rail.grooveWidth().value();
        double depth = groove > 0 ? rail.grooveDepth().value() : 0;
        refuseIf(2 * radius > width * (1 + 1e-12), "edge radius of a rail", radius, "half its width", width / 2);
        double front = at;
        if (radius > 0) {
            double hidden = radius - arcReach(radius, Math.min(h, radius));
            level(0, hidden);
            arc(front + radius, h - radius, radius, radius - hidden);
        }
        level(h, width - 2 * radius);
        if (radius > 0) {
            double reach = arcReach(radius, Math.min(h + depth, radius));
            arc(front + width - radius, h - radius, radius, reach);
            level(-depth, radius - reach);
        }
        level(-depth, groove);
    }

    /** How far an arc's crown stands from where the arc has fallen by {@code fall}, 0 to radius. */
    private static double arcReach(double radius, double fall) {
        return Math.sqrt(fall * (2 * radius - fall));
    }

    void level(double height, double length) {
        add(Section.level(height), length);
    }

    private void ramp(double from, double to, double length) {
        add(new Section.Straight(at, from, (to - from) / length), length);
    }

    private void arc(double xc, double zc, double radius, double length) {
        add(new Section.Arc(xc, zc, radius), length);
    }

    private void add(Section section, double length) {
        // a length left over by round-off is none
        if (length > 1e-12) {
            at += length;
            joints.add(at);
            sections.add(section);
        }
    }

    private static void refuseIf(boolean bad, String name, double value, String boundName, double bound) {
        if (bad) {
            throw new IllegalArgumentException(
                    name + " must be ≤ " + boundName + " (" + bound + " m), got " + value + " m");
        }
    }
}
