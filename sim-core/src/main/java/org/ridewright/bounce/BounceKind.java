package org.ridewright.bounce;

import java.util.Arrays;
import java.util.List;
import org.ridewright.vehicle.Layout;
import org.ridewright.vehicle.Vehicle;

/** Where the body is pressed, and which motion is counted. */
public enum BounceKind {
    /** Pressed over the first axle; its height is counted. */
    FRONT("front", Motion.FRONT),
    /** Pressed over the last axle; its height is counted. */
    REAR("rear", Motion.REAR),
    /** Rocked: pressed over the first axle and lifted as hard over the last; pitch is counted. */
    PITCH("pitch", Motion.PITCH),
    /** Pressed at the left side, midway between first and last axle; roll is counted. */
    ROLL("roll", Motion.ROLL),
    /** The same at the right side. */
    ROLL_RIGHT("roll, from the right", Motion.ROLL),
    /** Pressed at the centre of mass; its height is counted. */
    HEAVE("heave", Motion.CENTRE);

    private final String word;
    private final Motion counted;

    BounceKind(String word, Motion counted) {
        this.word = word;
        this.counted = counted;
    }

    /** The word for it in tables and files. */
    public String word() {
        return word;
    }

    /** The motion that is counted. */
    public Motion counted() {
        return counted;
    }

    /** Whether a vehicle can be tested so: a front and a rear need two axles, roll needs two sides. */
    public boolean suits(Vehicle vehicle) {
        Layout layout = vehicle.layout();
        boolean twoEnds = layout.pitches() && vehicle.axles().size() > 1;
        return switch (this) {
            case FRONT, HEAVE -> true;
            case REAR, PITCH -> twoEnds;
            case ROLL, ROLL_RIGHT -> layout.rolls();
        };
    }

    /** The four that a yard does, as far as they suit the vehicle: front, rear, pitch, roll. */
    public static List<BounceKind> usual(Vehicle vehicle) {
        return Arrays.asList(FRONT, REAR, PITCH, ROLL).stream()
                .filter(kind -> kind.suits(vehicle))
                .toList();
    }
}
