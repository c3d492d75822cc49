package org.ridewright.fieldwork;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;

/**
 * Height of a spring's bow, free and under load.
 *
 * @param axle name of the axle
 * @param spring name of the spring
 * @param free without load (m)
 * @param loaded under the load (m)
 * @param load on the one spring (N), or the load with which the vehicle stood on it
 */
public record Camber(Heading heading, String axle, String spring, Measure free, Measure loaded, Under load)
        implements Fact {
    /** What bore upon the spring. */
    public sealed interface Under {
        /** A known load on the one spring (N), > 0. */
        record Known(Measure force) implements Under {}

        /** The vehicle as it stood. */
        record Standing(Loading loading) implements Under {}
    }

    @Override
    public String key() {
        return "camber";
    }

    @Override
    public String label() {
        return heading.label("camber, one spring (" + spring + ")");
    }

    @Override
    public Optional<Loading> loading() {
        return load instanceof Under.Standing standing ? Optional.of(standing.loading()) : Optional.empty();
    }

    @Override
    public List<Measure> readings() {
        return load instanceof Under.Known known ? List.of(free, loaded, known.force()) : List.of(free, loaded);
    }
}
