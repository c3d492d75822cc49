package org.ridewright.dynamics;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.vehicle.Damping;
import org.ridewright.vehicle.Seat;
import org.ridewright.vehicle.SeatedPerson;
import org.ridewright.vehicle.SeatedPerson.BodyPart;

/**
 * A person on a seat, as the equations see them.
 *
 * @param name of the person and seat, for coordinates and reports
 * @param person name of the person
 * @param moving masses with a motion of their own: the stages of the seat from the floor up, then parts of the person
 * @param cushion which of the moving masses the person sits on; −1 for a seat fixed to the body
 * @param rigidMass part of the person carried rigidly at the seat (kg)
 * @param seatedMass part of the person carried at the seat in any way (kg)
 * @param feetMass part of the person carried at the feet (kg)
 */
record Occupant(
        String name,
        String person,
        Seat seat,
        List<Moving> moving,
        int cushion,
        double rigidMass,
        double seatedMass,
        double feetMass) {
    /**
     * A mass on a spring and damper.
     *
     * @param coordinate what its coordinate is called, after the name of the occupant; may be empty
     * @param element what its spring is called, after the name of the seat
     * @param on which of the moving masses it stands on; −1 for the body
     * @param mass (kg)
     * @param rate (N/m)
     * @param damping (N·s/m)
     */
    record Moving(String coordinate, String element, int on, double mass, double rate, double damping) {}

    boolean sprung() {
        return !moving.isEmpty();
    }

    /** Everything that moves by itself (kg). */
    double sprungMass() {
        return moving.stream().mapToDouble(Moving::mass).sum();
    }

    static Occupant of(String person, double mass, Seat seat) {
        double seated = mass * seat.shareOnSeat().value();
        double[] shares = shares(seat);
        // the model of the person takes the place of what rides on the uppermost stage, or on the body
        double fixed = seat.occupant().map(o -> o.fixedShare().value()).orElse(1.0);
        int count = seat.stages().size();
        double modelled = count == 0 ? seated : seated * shares[count - 1];
        double[] masses = new double[count];
        for (int i = 0; i < count; i++) {
            double part = i == count - 1 ? modelled * fixed : seated * shares[i];
            masses[i] = seat.stages().get(i).mass().value() + part;
        }
        List<Moving> moving = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            // a ratio of damping is one with all that the stage carries, the person as one mass
            double above = modelled * (1 - fixed);
            for (int j = i; j < count; j++) {
                above += masses[j];
            }
            Seat.SeatStage stage = seat.stages().get(i);
            double k = stage.rate().value();
            moving.add(new Moving(
                    count == 1 ? "" : "stage " + (i + 1),
                    count == 1 ? "cushion" : "stage " + (i + 1),
                    i - 1,
                    masses[i],
                    k,
                    damping(stage.damping(), k, above)));
        }
        seat.occupant().ifPresent(model -> addParts(model, modelled, count - 1, moving));
        return new Occupant(
                person + " on " + seat.name(),
                person,
                seat,
                List.copyOf(moving),
                cushion(shares),
                count == 0 ? modelled * fixed : 0,
                seated,
                mass - seated);
    }

    /** Shares of the seated mass by stage; the last takes the rest. */
    private static double[] shares(Seat seat) {
        int count = seat.stages().size();
        double[] shares = new double[count];
        double left = 1;
        for (int i = 0; i < count; i++) {
            shares[i] =
                    i == count - 1 ? left : seat.stages().get(i).shareOfPerson().value();
            left -= shares[i];
        }
        return shares;
    }

    /** First stage that carries part of the person: what they sit on. */
    private static int cushion(double[] shares) {
        for (int i = 0; i < shares.length; i++) {
            if (shares[i] > 0) {
                return i;
            }
        }
        return shares.length - 1;
    }

    private static void addParts(SeatedPerson model, double modelled, int seat, List<Moving> moving) {
        int first = moving.size();
        for (BodyPart part : model.parts()) {
            double m = modelled * part.share().value();
            double w = 2 * Math.PI * part.frequency().value();
            int on = part.on().map(below -> first + indexOf(model, below)).orElse(seat);
            double c = 2 * part.dampingRatio().value() * m * w;
            moving.add(new Moving(part.name(), part.name(), on, m, m * w * w, c));
        }
    }

    private static int indexOf(SeatedPerson model, String name) {
        for (int i = 0; i < model.parts().size(); i++) {
            if (model.parts().get(i).name().equals(name)) {
                return i;
            }
        }
        throw new IllegalArgumentException("no part named '" + name + "' in the occupant model " + model.model());
    }

    private static double damping(Damping damping, double rate, double m) {
        if (damping instanceof Damping.Coefficient d) {
            return d.value().value();
        } else if (damping instanceof Damping.Ratio ratio) {
            return 2 * ratio.value().value() * Math.sqrt(rate * m);
        }
        return 0;
    }
}
