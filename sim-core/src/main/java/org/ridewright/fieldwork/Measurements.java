package org.ridewright.fieldwork;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.ridewright.vehicle.Vehicle;

/**
 * What was measured on one vehicle.
 *
 * @param about in the author's words; may be empty
 * @param subject the vehicle; absent where the file names none
 * @param facts at least one, in the order of the file
 */
public record Measurements(String name, String about, Optional<Subject> subject, Unknowns unknowns, List<Fact> facts) {
    public Measurements {
        facts = List.copyOf(facts);
    }

    /**
     * The vehicle that was measured.
     *
     * @param file that describes it
     * @param vehicle as the file has it
     */
    public record Subject(Path file, Vehicle vehicle) {}

    /** The vehicle, if one is named. */
    public Optional<Vehicle> vehicle() {
        return subject.map(Subject::vehicle);
    }

    /** All facts of one kind. */
    public <F extends Fact> List<F> all(Class<F> kind) {
        return facts.stream().filter(kind::isInstance).map(kind::cast).toList();
    }
}
