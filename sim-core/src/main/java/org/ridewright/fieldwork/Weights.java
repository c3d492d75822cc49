package org.ridewright.fieldwork;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ridewright.quantity.Measure;
import org.ridewright.vehicle.Axle;

/**
 * What scales showed under a vehicle that stood level.
 *
 * @param load who and what was aboard
 * @param scales at least one
 */
public record Weights(Heading heading, Loading load, List<Scale> scales) implements Fact {
    public Weights {
        scales = List.copyOf(scales);
    }

    /**
     * One scale.
     *
     * @param under what stood on it
     * @param shown (kg), > 0; of a hitch also below
     */
    public record Scale(Under under, Measure shown) {}

    /** What stands on a scale. */
    public sealed interface Under {
        /** In words. */
        String label();

        /** Both wheels of an axle, or its only one. */
        record WholeAxle(String axle) implements Under {
            @Override
            public String label() {
                return Axle.title(axle);
            }
        }

        /** One wheel. */
        record OneWheel(String axle, Side side) implements Under {
            @Override
            public String label() {
                return axle + " " + side.word() + " wheel";
            }
        }

        /** A hitch, pole or shafts. */
        record AtHitch(String hitch) implements Under {
            @Override
            public String label() {
                return hitch;
            }
        }
    }

    @Override
    public String key() {
        return "weights";
    }

    @Override
    public String label() {
        return heading.label("weights, " + load.label());
    }

    @Override
    public Optional<Loading> loading() {
        return Optional.of(load);
    }

    @Override
    public List<Measure> readings() {
        return scales.stream().map(Scale::shown).toList();
    }

    /** Mass that an axle bears: under it as a whole, or under its wheels; empty where it was not weighed (kg). */
    public Optional<Measure> axleLoad(Axle axle) {
        Optional<Measure> whole = shown(new Under.WholeAxle(axle.name()));
        if (whole.isPresent()) {
            return whole;
        }
        Optional<Measure> left = shown(new Under.OneWheel(axle.name(), Side.LEFT));
        Optional<Measure> right = shown(new Under.OneWheel(axle.name(), Side.RIGHT));
        return left.flatMap(l -> right.map(r -> Propagation.sum("sum of its wheels", List.of(l, r))));
    }

    /** What stood on the scales, in a row. */
    public String scalesInWords() {
        return scales.stream().map(scale -> scale.under().label()).collect(Collectors.joining(", "));
    }

    private Optional<Measure> shown(Under under) {
        return scales.stream()
                .filter(scale -> scale.under().equals(under))
                .map(Scale::shown)
                .findFirst();
    }
}
