package org.ridewright.comfort;

import java.util.Optional;

/**
 * Where vibration enters a seated person, with the weighting and multiplying factor k of each axis for comfort.
 *
 * <table>
 * <caption>Weighting and k; rotations in m/rad</caption>
 * <tr><th></th><th>x</th><th>y</th><th>z</th><th>roll</th><th>pitch</th><th>yaw</th></tr>
 * <tr><td>seat</td><td>Wd 1</td><td>Wd 1</td><td>Wk 1</td><td>We 0.63</td><td>We 0.4</td><td>We 0.2</td></tr>
 * <tr><td>backrest</td><td>Wc 0.8</td><td>Wd 0.5</td><td>Wd 0.4</td><td>–</td><td>–</td><td>–</td></tr>
 * <tr><td>feet</td><td>Wk 0.25</td><td>Wk 0.25</td><td>Wk 0.4</td><td>–</td><td>–</td><td>–</td></tr>
 * </table>
 *
 * <p>Source: ISO 2631-1:1997, 8.2.2 (from memory). Not the factors for health, which are 1.4, 1.4, 1 at the seat.
 */
public enum Position {
    SEAT,
    BACKREST,
    FEET;

    /** A weighting and the factor k of the weighted acceleration (1, in rotation m/rad). */
    public record Rule(Weighting weighting, double factor) {}

    /** What holds for an axis here; empty for rotations other than the seat's. */
    public Optional<Rule> rule(Axis axis) {
        return Optional.ofNullable(
                switch (this) {
                    case SEAT -> seat(axis);
                    case BACKREST -> backrest(axis);
                    case FEET -> feet(axis);
                });
    }

    /**
     * Weighting of an axis here.
     *
     * @throws IllegalArgumentException if the standard has none
     */
    public Weighting weighting(Axis axis) {
        return required(axis).weighting();
    }

    /**
     * Multiplying factor k of an axis here (1, in rotation m/rad).
     *
     * @throws IllegalArgumentException if the standard has none
     */
    public double factor(Axis axis) {
        return required(axis).factor();
    }

    private Rule required(Axis axis) {
        return rule(axis)
                .orElseThrow(() -> new IllegalArgumentException("no weighting for axis " + axis + " at position " + this
                        + "; rotations are weighted at the SEAT only"));
    }

    private static Rule seat(Axis axis) {
        return switch (axis) {
            case X, Y -> new Rule(Weighting.WD, 1);
            case Z -> new Rule(Weighting.WK, 1);
            case ROLL -> new Rule(Weighting.WE, 0.63);
            case PITCH -> new Rule(Weighting.WE, 0.4);
            case YAW -> new Rule(Weighting.WE, 0.2);
        };
    }

    private static Rule backrest(Axis axis) {
        return switch (axis) {
            case X -> new Rule(Weighting.WC, 0.8);
            case Y -> new Rule(Weighting.WD, 0.5);
            case Z -> new Rule(Weighting.WD, 0.4);
            case ROLL, PITCH, YAW -> null;
        };
    }

    private static Rule feet(Axis axis) {
        return switch (axis) {
            case X, Y -> new Rule(Weighting.WK, 0.25);
            case Z -> new Rule(Weighting.WK, 0.4);
            case ROLL, PITCH, YAW -> null;
        };
    }
}
