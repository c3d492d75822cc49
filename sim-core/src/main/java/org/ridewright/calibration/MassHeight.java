package org.ridewright.calibration;

import org.ridewright.dynamics.SeatPlace;
import org.ridewright.dynamics.VehicleModel;

/** Height of the centre of mass of all that the springs carry: the body, what rides rigidly on it, and who sits on cushions. */
final class MassHeight {
    private MassHeight() {}

    /** Above the ground (m). */
    static double of(VehicleModel model) {
        double mass = model.sprungMass();
        double moment = mass * model.centreOfMass().z();
        for (SeatPlace seat : model.seats()) {
            String occupant = seat.person() + " on " + seat.name();
            for (int i = 0; i < model.coordinates().size(); i++) {
                String name = model.coordinates().names().get(i);
                if (name.equals(occupant) || name.startsWith(occupant + " ")) {
                    double part = model.equations().mass(i, i);
                    mass += part;
                    moment += part * seat.seat().place().z();
                }
            }
        }
        return moment / mass;
    }
}
