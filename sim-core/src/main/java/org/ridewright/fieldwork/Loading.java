package org.ridewright.fieldwork;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.ridewright.quantity.Measures;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.LoadCase.Aboard;
import org.ridewright.vehicle.Vehicle;

/**
 * Who and what was aboard when something was measured.
 *
 * @param loadCase name of a load case of the vehicle
 * @param added persons and things besides
 */
public record Loading(String loadCase, List<Aboard> added) {
    public Loading {
        added = List.copyOf(added);
    }

    /** A load case of the vehicle and nothing else. */
    public static Loading of(String loadCase) {
        return new Loading(loadCase, List.of());
    }

    /**
     * Everything that was aboard, as a load case.
     *
     * @throws IllegalArgumentException if the vehicle has no load case of that name
     */
    public LoadCase on(Vehicle vehicle) {
        LoadCase known = vehicle.loadCase(loadCase)
                .orElseThrow(() -> new IllegalArgumentException("no load case '" + loadCase + "'"));
        if (added.isEmpty()) {
            return known;
        }
        List<Aboard> aboard = new ArrayList<>(known.aboard());
        aboard.addAll(added);
        return new LoadCase(label(), aboard);
    }

    /** In words. */
    public String label() {
        return added.isEmpty()
                ? loadCase
                : loadCase + ", and " + added.stream().map(Loading::word).collect(Collectors.joining(", "));
    }

    private static String word(Aboard aboard) {
        String name = aboard instanceof Aboard.Person person ? person.name() : ((Aboard.Cargo) aboard).name();
        return name + " of " + Measures.format(aboard.mass());
    }
}
