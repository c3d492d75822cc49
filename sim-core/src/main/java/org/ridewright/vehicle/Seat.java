package org.ridewright.vehicle;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;

/**
 * A place for one person.
 *
 * @param name unique in the vehicle
 * @param place of the person's seat, where seat acceleration is read
 * @param feet where the feet rest; absent: straight below the seat
 * @param backrest where the back leans, at the height at which it is felt; absent: not read off
 * @param stages sprung stages from the floor up; none: the person is carried rigidly
 * @param shareOnSeat of the person's mass; the rest is carried rigidly at the feet
 * @param occupant how what the seat carries of the person moves; absent: as one mass
 */
public record Seat(
        String name,
        Place place,
        Optional<Place> feet,
        Optional<Place> backrest,
        List<SeatStage> stages,
        Measure shareOnSeat,
        Optional<SeatedPerson> occupant) {
    public Seat {
        stages = List.copyOf(stages);
    }

    /**
     * A spring and what rides on it.
     *
     * @param rate (N/m), > 0
     * @param damping a coefficient, or a ratio with the whole mass above this stage
     * @param mass of seat parts carried by this stage (kg), ≥ 0
     * @param shareOfPerson share of the seated mass that moves with this stage; the last stage takes the rest
     */
    public record SeatStage(Measure rate, Damping damping, Measure mass, Measure shareOfPerson) {}
}
