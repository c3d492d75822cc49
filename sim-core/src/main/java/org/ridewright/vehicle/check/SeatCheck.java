package org.ridewright.vehicle.check;

import org.ridewright.quantity.Measure;
import org.ridewright.vehicle.Seat;
import org.ridewright.vehicle.Seat.SeatStage;
import org.ridewright.vehicle.Vehicle;

/** Judges the seats. */
record SeatCheck(Vehicle vehicle, Faults faults) {
    private static final double ROUNDING = 1e-9;

    void run() {
        for (int i = 0; i < vehicle.seats().size(); i++) {
            seat(vehicle.seats().get(i), "seats[" + i + "]");
        }
    }

    private void seat(Seat seat, String path) {
        Measure share = seat.shareOnSeat();
        if (!(share.value() > 0) || share.value() > 1) {
            faults.add(
                    path + ".share on seat",
                    share.written(),
                    "is not a share of a person",
                    "above 0 to 1, such as 75 %",
                    share.value() > 1 && share.written().matches("[\\d.]+") ? "write " + share.written() + " %" : "");
        }
        seat.feet()
                .filter(feet -> feet.z() > seat.place().z())
                .ifPresent(feet -> faults.add(
                        path + ".feet.above ground",
                        feet.aboveGround().written(),
                        "is above the seat at " + seat.place().aboveGround().written(),
                        "the height of the floor under the feet",
                        "measure both from the ground",
                        path + ".at.above ground"));
        double below = 0;
        for (int i = 0; i < seat.stages().size(); i++) {
            SeatStage stage = seat.stages().get(i);
            String at = path + ".stages[" + i + "]";
            stage(stage, at);
            below += stage.shareOfPerson().value();
        }
        if (below > 1 + ROUNDING) {
            faults.add(
                    path + ".stages",
                    "",
                    "has shares of the person that add up to " + Faults.plain(100 * below) + " %",
                    "at most 100 %",
                    "leave the share of the last stage out; it takes the rest");
        }
    }

    private void stage(SeatStage stage, String at) {
        faults.positive(at + ".rate", stage.rate());
        DampingCheck.run(at, "damping", "damping ratio", stage.damping(), faults);
        faults.notNegative(at + ".mass", stage.mass());
        if (stage.shareOfPerson().value() < 0 || stage.shareOfPerson().value() > 1) {
            faults.add(
                    at + ".share of person",
                    stage.shareOfPerson().written(),
                    "is not a share of a person",
                    "from 0 to 1, such as 20 %",
                    "write a percentage");
        } else if (stage.mass().value() == 0 && stage.shareOfPerson().value() == 0) {
            faults.add(
                    at,
                    "",
                    "carries nothing",
                    "a mass, or a share of the person",
                    "",
                    at + ".mass",
                    at + ".share of person");
        }
    }
}
