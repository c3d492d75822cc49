package org.ridewright.fieldwork;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ridewright.quantity.Measure;
import org.ridewright.vehicle.Axle;

/**
 * Load and deflection of a spring, in the order in which they were read, loading and unloading.
 *
 * @param of what was loaded
 * @param rows at least three of loading and three of unloading
 */
public record LoadDeflection(Heading heading, Loaded of, List<Row> rows) implements Fact {
    public LoadDeflection {
        rows = List.copyOf(rows);
    }

    /**
     * One pair of readings.
     *
     * @param load on what was loaded, all of it or from where it began (N)
     * @param deflection in the direction of the load, from wherever the scale had its zero (m)
     */
    public record Row(Measure load, Measure deflection) {}

    /** What was loaded. */
    public sealed interface Loaded {
        /** Name of the axle. */
        String axle();

        /** In words. */
        String label();

        /** One spring by itself, taken out or between its seats. */
        record OneSpring(String axle, String spring) implements Loaded {
            @Override
            public String label() {
                return "one spring (" + spring + ")";
            }
        }

        /** The body above one wheel, wheels on the ground; deflection of the body against the axle. */
        record OneCorner(String axle, Side side) implements Loaded {
            @Override
            public String label() {
                return axle + " " + side.word() + " corner";
            }
        }

        /** The body above an axle, both sides alike; deflection of the body against the axle. */
        record WholeAxle(String axle) implements Loaded {
            @Override
            public String label() {
                return Axle.title(axle);
            }
        }
    }

    @Override
    public String key() {
        return "load deflection";
    }

    @Override
    public String label() {
        return heading.label("load and deflection, " + of.label());
    }

    @Override
    public Optional<Loading> loading() {
        return Optional.empty();
    }

    @Override
    public List<Measure> readings() {
        return rows.stream()
                .flatMap(row -> Stream.of(row.load(), row.deflection()))
                .toList();
    }
}
