package org.ridewright.io;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Seat;
import org.ridewright.vehicle.Seat.SeatStage;
import org.ridewright.vehicle.SeatedPerson;
import org.ridewright.vehicle.Vehicle;

/** Reads {@code cushions} and {@code occupants} of a scenario's vehicle: every seat with another cushion or another model of who sits there. */
final class OtherSeats {

    private OtherSeats() {}

    /** The vehicle so seated, its name saying how; the same where neither key is given. */
    static Vehicle of(Vehicle vehicle, Part entrant) {
        Vehicle seated = vehicle;
        if (entrant.has("cushions")) {
            SeatStage stage = entrant.word("cushions", Cushions.NAMED)
                    .apply(Measure.computed(1, QuantityKind.RATIO, "the whole of the seated person"));
            seated = named(
                    seated,
                    "cushions",
                    entrant,
                    seat -> new Seat(
                            seat.name(),
                            seat.place(),
                            seat.feet(),
                            seat.backrest(),
                            List.of(stage),
                            seat.stages().isEmpty() ? SeatReader.usualShare(false) : seat.shareOnSeat(),
                            seat.occupant()));
        }
        if (entrant.has("occupants")) {
            Optional<SeatedPerson> person = entrant.word("occupants", OccupantReader.MODELS);
            seated = named(
                    seated,
                    "occupants",
                    entrant,
                    seat -> new Seat(
                            seat.name(),
                            seat.place(),
                            seat.feet(),
                            seat.backrest(),
                            seat.stages(),
                            person.isPresent() && seat.stages().isEmpty()
                                    ? SeatReader.usualShare(false)
                                    : seat.shareOnSeat(),
                            person));
        }
        return seated;
    }

    private interface Change {
        Seat of(Seat seat);
    }

    private static Vehicle named(Vehicle vehicle, String key, Part entrant, Change change) {
        String written = entrant.text(key, "a word");
        return vehicle.seated(
                vehicle.name() + ", " + key + " " + written,
                vehicle.seats().stream().map(change::of).toList());
    }
}
