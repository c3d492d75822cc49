package org.ridewright.fieldwork;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.Hitch;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.LoadCase.Aboard;
import org.ridewright.vehicle.Seat;
import org.ridewright.vehicle.Spring;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.vehicle.check.Faults;

/**
 * Judges names by those that the vehicle has; without a vehicle all are good.
 *
 * @param vehicle that was measured
 */
record Names(Optional<Vehicle> vehicle, Faults faults) {
    void axle(String path, String name) {
        vehicle.ifPresent(
                v -> faults.known(path, name, v.axles().stream().map(Axle::name).toList(), "axle"));
    }

    /** A side of an axle, which must have two. */
    void side(String path, String axle) {
        vehicle.flatMap(v -> v.axle(axle))
                .filter(a -> a.track().isEmpty())
                .ifPresent(a -> faults.add(
                        path,
                        "",
                        "is a side of the " + a.title() + ", which has a single wheel",
                        "an axle with two wheels",
                        "remove it",
                        "vehicle"));
    }

    void spring(String path, String axle, String name) {
        vehicle.flatMap(v -> v.axle(axle))
                .ifPresent(a -> faults.known(
                        path, name, a.springs().stream().map(Spring::name).toList(), "spring of the " + a.title()));
    }

    void hitch(String path, String name) {
        vehicle.ifPresent(v ->
                faults.known(path, name, v.hitches().stream().map(Hitch::name).toList(), "hitch"));
    }

    void seat(String path, String name) {
        vehicle.ifPresent(
                v -> faults.known(path, name, v.seats().stream().map(Seat::name).toList(), "seat"));
    }

    /** Who and what was aboard. */
    void loading(String path, Loading loading) {
        vehicle.ifPresent(v -> faults.known(
                path + ".with",
                loading.loadCase(),
                v.loadCases().stream().map(LoadCase::name).toList(),
                "load case"));
        Set<String> taken = new HashSet<>();
        vehicle.flatMap(v -> v.loadCase(loading.loadCase()))
                .ifPresent(
                        known -> known.aboard().forEach(aboard -> seat(aboard).ifPresent(taken::add)));
        for (int i = 0; i < loading.added().size(); i++) {
            String at = path + ".added[" + i + "]";
            Aboard aboard = loading.added().get(i);
            new Bounds(faults).mass(at + ".mass", aboard.mass());
            seat(aboard).ifPresent(seat -> {
                seat(at + ".seat", seat);
                if (!taken.add(seat)) {
                    faults.add(
                            at + ".seat",
                            seat,
                            "is taken already",
                            "a seat for each person",
                            "name another seat, or put the person on as cargo");
                }
            });
        }
    }

    /** Seats on which somebody sits; empty without a vehicle. */
    List<String> occupied(Loading loading) {
        List<String> seats = new ArrayList<>();
        vehicle.flatMap(v -> v.loadCase(loading.loadCase()))
                .ifPresent(
                        known -> known.aboard().forEach(aboard -> seat(aboard).ifPresent(seats::add)));
        loading.added().forEach(aboard -> seat(aboard).ifPresent(seats::add));
        return seats;
    }

    private static Optional<String> seat(Aboard aboard) {
        return aboard instanceof Aboard.Person person ? Optional.of(person.seat()) : Optional.empty();
    }
}
