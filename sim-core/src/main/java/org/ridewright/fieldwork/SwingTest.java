package org.ridewright.fieldwork;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ridewright.quantity.Measure;
import org.ridewright.vehicle.Axle;

/**
 * A part that was hung up, swung and timed.
 *
 * @param of what was hung up
 * @param axis about which it swung, through its centre of mass
 * @param mass that swung (kg), > 0
 * @param hung how
 * @param swings there and back each, ≥ 1
 * @param time that they took (s), > 0
 */
public record SwingTest(Heading heading, Part of, Axis axis, Measure mass, Hung hung, int swings, Measure time)
        implements Fact {
    /** What was hung up. */
    public sealed interface Part {
        /** The sprung body without axles. */
        record Body() implements Part {}

        /** A whole axle with its wheels. */
        record WholeAxle(String axle) implements Part {}

        /** One wheel of an axle. */
        record OneWheel(String axle) implements Part {}
    }

    /** An axis of the part, named as in the vehicle. */
    public enum Axis {
        ROLL("roll"),
        PITCH("pitch"),
        YAW("yaw"),
        /** Of a wheel about its spindle. */
        SPIN("spin");

        private final String word;

        Axis(String word) {
            this.word = word;
        }

        /** The word as written in files. */
        public String word() {
            return word;
        }
    }

    /** How it hung; each with the moment of inertia about the centre of mass that follows. */
    public sealed interface Hung {
        /** Word in files. */
        String word();

        /** Its lengths, in the order of the file. */
        List<Measure> lengths();

        /**
         * On a knife edge or a bar, parallel to the axis.
         *
         * @param arm from there to the centre of mass (m), > 0
         */
        record OnPivot(Measure arm) implements Hung {
            @Override
            public String word() {
                return "pendulum";
            }

            @Override
            public List<Measure> lengths() {
                return List.of(arm);
            }
        }

        /**
         * On two equal wires, turning about the upright through the middle between them.
         *
         * @param wire length of each (m)
         * @param apart above (m), > 0
         * @param apartBelow where they hold the part (m), > 0; absent: as above
         */
        record OnTwoWires(Measure wire, Measure apart, Optional<Measure> apartBelow) implements Hung {
            @Override
            public String word() {
                return "two wires";
            }

            @Override
            public List<Measure> lengths() {
                return Stream.concat(Stream.of(wire, apart), apartBelow.stream())
                        .toList();
            }
        }

        /**
         * On three equal wires, evenly spread about the upright through the centre of mass.
         *
         * @param wire length of each (m)
         * @param radius from that upright to the wires above (m), > 0
         * @param radiusBelow where they hold the part (m), > 0; absent: as above
         */
        record OnThreeWires(Measure wire, Measure radius, Optional<Measure> radiusBelow) implements Hung {
            @Override
            public String word() {
                return "three wires";
            }

            @Override
            public List<Measure> lengths() {
                return Stream.concat(Stream.of(wire, radius), radiusBelow.stream())
                        .toList();
            }
        }
    }

    @Override
    public String key() {
        return "swing";
    }

    @Override
    public String label() {
        return heading.label("swing of the " + partInWords() + ", " + axis.word());
    }

    /** What was hung up, in words. */
    public String partInWords() {
        if (of instanceof Part.WholeAxle whole) {
            return Axle.title(whole.axle());
        } else if (of instanceof Part.OneWheel wheel) {
            return wheel.axle() + " wheel";
        }
        return "body";
    }

    @Override
    public Optional<Loading> loading() {
        return Optional.empty();
    }

    @Override
    public List<Measure> readings() {
        return Stream.concat(Stream.concat(Stream.of(mass), hung.lengths().stream()), Stream.of(time))
                .toList();
    }
}
