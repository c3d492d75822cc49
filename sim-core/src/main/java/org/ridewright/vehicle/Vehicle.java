package org.ridewright.vehicle;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;

/**
 * A vehicle as its file describes it.
 *
 * @param about in the author's words; may be empty
 * @param topSpeed beyond which a ride is flagged (m/s)
 * @param axles one or more, from front to rear
 * @param loadCases at least one
 * @param further horizontal motions
 */
public record Vehicle(
        String name,
        String about,
        Layout layout,
        Optional<Measure> topSpeed,
        SprungBody body,
        List<Axle> axles,
        List<Connection> connections,
        List<Hitch> hitches,
        List<Seat> seats,
        List<LoadCase> loadCases,
        FurtherMotions further) {
    public Vehicle {
        axles = List.copyOf(axles);
        connections = List.copyOf(connections);
        hitches = List.copyOf(hitches);
        seats = List.copyOf(seats);
        loadCases = List.copyOf(loadCases);
    }

    /** The same with other horizontal motions. */
    public Vehicle with(FurtherMotions others) {
        return new Vehicle(name, about, layout, topSpeed, body, axles, connections, hitches, seats, loadCases, others);
    }

    /** The same under another name with other seats. */
    public Vehicle seated(String newName, List<Seat> others) {
        return new Vehicle(
                newName, about, layout, topSpeed, body, axles, connections, hitches, others, loadCases, further);
    }

    /** The axle of that name, if there is one. */
    public Optional<Axle> axle(String name) {
        return axles.stream().filter(a -> a.name().equals(name)).findFirst();
    }

    /** The seat of that name, if there is one. */
    public Optional<Seat> seat(String name) {
        return seats.stream().filter(s -> s.name().equals(name)).findFirst();
    }

    /** The load case of that name, if there is one. */
    public Optional<LoadCase> loadCase(String name) {
        return loadCases.stream().filter(l -> l.name().equals(name)).findFirst();
    }
}
