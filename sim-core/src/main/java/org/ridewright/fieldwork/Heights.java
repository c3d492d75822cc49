package org.ridewright.fieldwork;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ridewright.quantity.Measure;
import org.ridewright.vehicle.Place;

/**
 * Heights of places of the body above the ground, before and after persons or sacks come aboard. Dry springs let the body hang within their
 * friction: each set of heights says how it had settled.
 *
 * @param marks where the heights were taken, at least one
 * @param steps at least one, in the order in which they were read
 */
public record Heights(Heading heading, List<Mark> marks, List<Step> steps) implements Fact {
    /** So many places are named in a label. */
    private static final int FEW = 2;

    public Heights {
        marks = List.copyOf(marks);
        steps = List.copyOf(steps);
    }

    /** Where a height is taken. */
    public sealed interface Mark {
        /** In words. */
        String label();

        /** The body above an axle's spring on one side. */
        record Corner(String axle, Side side) implements Mark {
            @Override
            public String label() {
                return axle + " " + side.word();
            }
        }

        /** A point of the body; its height in the vehicle file is not used. */
        record At(String name, Place place) implements Mark {
            @Override
            public String label() {
                return name;
            }
        }
    }

    /**
     * The readings with one load.
     *
     * @param load who and what was aboard
     * @param readings at least one
     */
    public record Step(Loading load, List<Reading> readings) {
        public Step {
            readings = List.copyOf(readings);
        }

        /** The heights read after the body had settled in a certain way. */
        public Optional<List<Measure>> settled(Settled how) {
            return readings.stream()
                    .filter(reading -> reading.settled() == how)
                    .map(Reading::heights)
                    .findFirst();
        }
    }

    /**
     * A height at each mark.
     *
     * @param settled how the body came to rest
     * @param heights above ground (m), one of each mark
     */
    public record Reading(Settled settled, List<Measure> heights) {
        public Reading {
            heights = List.copyOf(heights);
        }
    }

    /** How the body came to rest. */
    public enum Settled {
        /** Nobody knows: friction may hold it anywhere within its band. */
        NOT_KNOWN("heights", 0),
        /** Lifted and let down: friction holds it up. */
        FROM_ABOVE("settled from above", 1),
        /** Pushed down and let rise: friction holds it down. */
        FROM_BELOW("settled from below", -1);

        private final String key;
        private final int sign;

        Settled(String key, int sign) {
            this.key = key;
            this.sign = sign;
        }

        /** The key of the file. */
        public String key() {
            return key;
        }

        /** +1 if friction holds the body up, −1 down, 0 not known. */
        public int sign() {
            return sign;
        }
    }

    @Override
    public String key() {
        return "heights";
    }

    @Override
    public String label() {
        return heading.label(
                marks.size() > FEW
                        ? "heights at " + marks.size() + " places"
                        : "heights, " + marks.stream().map(Mark::label).collect(Collectors.joining(", ")));
    }

    @Override
    public Optional<Loading> loading() {
        return Optional.empty();
    }

    @Override
    public List<Measure> readings() {
        return steps.stream()
                .flatMap(step -> step.readings().stream())
                .flatMap(reading -> reading.heights().stream())
                .toList();
    }
}
