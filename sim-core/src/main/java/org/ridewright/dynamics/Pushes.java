package org.ridewright.dynamics;

import java.util.List;

/**
 * Forces that are no element's: of wheels along their contact normals, and stated ones.
 *
 * @param wheels none where the vehicle does not surge
 * @param speed index, among what the elements follow, of the travelling speed v(t) (m/s), which is to be > 0; −1 where no wheel pushes
 */
public record Pushes(List<WheelPush> wheels, int speed, List<StatedForce> stated) {
    /** No such forces. */
    public static final Pushes NONE = new Pushes(List.of(), -1, List.of());

    public Pushes {
        wheels = List.copyOf(wheels);
        stated = List.copyOf(stated);
        if (!wheels.isEmpty() && speed < 0) {
            throw new IllegalArgumentException("wheels that push need the travelling speed");
        }
    }

    /** Whether there are none. */
    public boolean isEmpty() {
        return wheels.isEmpty() && stated.isEmpty();
    }
}
