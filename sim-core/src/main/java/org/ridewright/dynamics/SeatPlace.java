package org.ridewright.dynamics;

import java.util.Optional;
import org.ridewright.vehicle.Seat;

/**
 * An occupied seat.
 *
 * @param person who sits there
 * @param rise row of the seat's rise: of the mass on the cushion, or of the body for a rigid seat; not to be modified
 * @param element index of the cushion, −1 for a rigid seat
 * @param head row of the rise of the head, of a person whose model has one; not to be modified
 */
public record SeatPlace(String person, Seat seat, double[] rise, int element, Optional<double[]> head) {
    /** Name for reports. */
    public String name() {
        return seat.name();
    }
}
