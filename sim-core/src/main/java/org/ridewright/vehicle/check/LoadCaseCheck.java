package org.ridewright.vehicle.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ridewright.quantity.Measure;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.LoadCase.Aboard;
import org.ridewright.vehicle.Place;
import org.ridewright.vehicle.Seat;
import org.ridewright.vehicle.Vehicle;

/** Judges who and what is aboard. */
record LoadCaseCheck(Vehicle vehicle, Faults faults) {
    private static final double LIGHTEST_PERSON = 5;
    private static final double HEAVIEST_PERSON = 300;
    private static final double FARTHEST_OUT = 12;

    static List<String> names(Vehicle vehicle) {
        return vehicle.loadCases().stream().map(LoadCase::name).toList();
    }

    void run() {
        if (vehicle.loadCases().isEmpty()) {
            faults.add(
                    "load cases", "", "has none", "at least one", "write '- name: empty' under it, or remove the key");
        }
        for (int i = 0; i < vehicle.loadCases().size(); i++) {
            loadCase(vehicle.loadCases().get(i), "load cases[" + i + "]");
        }
    }

    private void loadCase(LoadCase loadCase, String path) {
        Map<String, String> taken = new HashMap<>();
        List<String> seats = vehicle.seats().stream().map(Seat::name).toList();
        for (int i = 0; i < loadCase.aboard().size(); i++) {
            String at = path + ".aboard[" + i + "]";
            Aboard aboard = loadCase.aboard().get(i);
            if (aboard instanceof Aboard.Person person) {
                faults.within(
                        at + ".mass",
                        person.mass(),
                        LIGHTEST_PERSON,
                        HEAVIEST_PERSON,
                        "check the unit, or make it cargo");
                faults.known(at + ".seat", person.seat(), seats, "seat");
                String first = taken.putIfAbsent(person.seat(), person.name());
                if (first != null && seats.contains(person.seat())) {
                    faults.add(
                            at + ".seat",
                            person.seat(),
                            "is taken already by " + first,
                            "a seat for each person",
                            "describe another seat");
                }
            } else if (aboard instanceof Aboard.Cargo cargo) {
                mass(at + ".mass", cargo.mass());
                near(at + ".at.behind front axle", cargo.place().behindFrontAxle());
                cargo.outline().ifPresent(outline -> BodyCheck.outline(at + ".outline", outline, faults));
            }
        }
    }

    /** Nothing is carried that far beyond the outermost axle: a slip of the decimal point. */
    private void near(String at, Measure behind) {
        if (!vehicle.layout().pitches() || vehicle.axles().isEmpty()) {
            return;
        }
        double last = vehicle.axles()
                .get(vehicle.axles().size() - 1)
                .behindFrontAxle()
                .value();
        double out = Math.max(behind.value() - last, -behind.value());
        if (out > FARTHEST_OUT) {
            faults.add(
                    at,
                    behind.written().replaceFirst("^" + Place.OPPOSITE, ""),
                    "is " + Faults.plain(out) + " m beyond the outermost axle",
                    "a place within " + Faults.plain(FARTHEST_OUT) + " m of it",
                    "check the decimal point and the unit",
                    "axles");
        }
    }

    private void mass(String at, Measure mass) {
        faults.positive(at, mass);
        if (mass.value() > BodyCheck.HEAVIEST) {
            faults.within(at, mass, 0, BodyCheck.HEAVIEST, "check the unit");
        }
    }
}
