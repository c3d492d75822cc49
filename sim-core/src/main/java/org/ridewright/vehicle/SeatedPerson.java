package org.ridewright.vehicle;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;

/**
 * How the part of a person that a seat carries moves up and down: some of it with the seat, the rest in parts on springs and dampers.
 *
 * @param model name of the model
 * @param fixedShare of the seated mass, moves with the seat, 0 to 1
 * @param parts from the seat up; their shares and the fixed one add up to 1
 */
public record SeatedPerson(String model, Measure fixedShare, List<BodyPart> parts) {
    public SeatedPerson {
        parts = List.copyOf(parts);
    }

    /**
     * A part on a spring and damper, {@code k = m (2πf)²}, {@code c = 2ζ√(k m)} with m its own mass, so that it suits persons of any mass.
     *
     * @param name of the part
     * @param share of the seated mass
     * @param frequency f of its own mass on a base held still (Hz)
     * @param dampingRatio ζ
     * @param on name of an earlier part that it stands on; absent: the seat
     */
    public record BodyPart(String name, Measure share, Measure frequency, Measure dampingRatio, Optional<String> on) {}
}
