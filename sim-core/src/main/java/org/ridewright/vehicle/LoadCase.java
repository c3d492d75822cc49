package org.ridewright.vehicle;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;

/** Who and what is aboard. */
public record LoadCase(String name, List<Aboard> aboard) {
    public LoadCase {
        aboard = List.copyOf(aboard);
    }

    /** A person or a thing aboard. */
    public sealed interface Aboard {
        /** (kg), > 0. */
        Measure mass();

        /** A person on a named seat. */
        record Person(String name, Measure mass, String seat) implements Aboard {}

        /** Cargo whose centre is at a place; a point mass unless it has an outline. */
        record Cargo(String name, Measure mass, Place place, Optional<Outline> outline) implements Aboard {}
    }
}
