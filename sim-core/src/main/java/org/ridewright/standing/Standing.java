package org.ridewright.standing;

import java.util.List;
import org.ridewright.vehicle.LoadCase;

/**
 * A vehicle standing still under one load.
 *
 * @param mass of vehicle and load (kg)
 * @param wheels front to rear, left before right
 * @param hitches in the order of the file
 * @param springs suspension springs, axle by axle
 * @param levels of the body, axle by axle
 * @param pitch of the body from the vehicle with nobody and nothing aboard (rad), nose down
 * @param roll the same (rad), left side up
 * @param pitchFromFree pitch from the state in which every spring is free (rad)
 * @param rollFromFree the same in roll (rad)
 */
public record Standing(
        LoadCase loadCase,
        double mass,
        List<WheelLoad> wheels,
        List<SupportLoad> hitches,
        List<SpringLoad> springs,
        List<BodyLevel> levels,
        double pitch,
        double roll,
        double pitchFromFree,
        double rollFromFree) {
    public Standing {
        wheels = List.copyOf(wheels);
        hitches = List.copyOf(hitches);
        springs = List.copyOf(springs);
        levels = List.copyOf(levels);
    }

    /** What the wheels of one axle carry (N). */
    public double axleLoad(int axle) {
        return wheels.stream()
                .filter(w -> w.axle() == axle)
                .mapToDouble(WheelLoad::load)
                .sum();
    }

    /** What all wheels carry (N). */
    public double wheelLoad() {
        return wheels.stream().mapToDouble(WheelLoad::load).sum();
    }
}
