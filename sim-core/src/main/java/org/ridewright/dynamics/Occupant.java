package org.ridewright.dynamics;

import java.util.List;
import org.ridewright.vehicle.Seat;

/**
 * A person on a seat, as the equations see them.
 *
 * @param name of the person and seat, for coordinates and reports
 * @param person name of the person
 * @param stageMasses mass that moves with each sprung stage, from the floor up (kg); empty if carried rigidly
 * @param seatedMass part of the person carried at the seat (kg)
 * @param feetMass part of the person carried at the feet (kg)
 */
record Occupant(String name, String person, Seat seat, double[] stageMasses, double seatedMass, double feetMass) {
    boolean sprung() {
        return stageMasses.length > 0;
    }

    /** First stage that carries part of the person: what they sit on. */
    int cushionStage() {
        List<Seat.SeatStage> stages = seat.stages();
        for (int i = 0; i < stages.size(); i++) {
            if (stages.get(i).shareOfPerson().value() > 0) {
                return i;
            }
        }
        return stages.size() - 1;
    }

    /** Mass carried by a stage and all above it (kg). */
    double massAbove(int stage) {
        double sum = 0;
        for (int i = stage; i < stageMasses.length; i++) {
            sum += stageMasses[i];
        }
        return sum;
    }

    static Occupant of(String person, double mass, Seat seat) {
        double seated = mass * seat.shareOnSeat().value();
        int count = seat.stages().size();
        double[] masses = new double[count];
        double left = seated;
        for (int i = 0; i < count; i++) {
            Seat.SeatStage stage = seat.stages().get(i);
            double part = i == count - 1 ? left : seated * stage.shareOfPerson().value();
            masses[i] = stage.mass().value() + part;
            left -= part;
        }
        return new Occupant(person + " on " + seat.name(), person, seat, masses, seated, mass - seated);
    }
}
