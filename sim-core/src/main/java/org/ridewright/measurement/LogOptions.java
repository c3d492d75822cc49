package org.ridewright.measurement;

import org.ridewright.comfort.Position;

/**
 * How a recording is to be taken.
 *
 * @param position where on the person it was recorded
 * @param forward which way the logger's axes lay
 * @param gravity whether gravity is in the values
 * @param from beginning of what counts (s from the first row); NaN for all
 * @param to end of what counts (s); NaN for all
 * @param gapBound longest interval that is not a dropout (s); NaN for 2.5 median intervals
 * @param startUp time left out at the beginning of each stretch, while the filters settle (s); NaN for what they need
 */
public record LogOptions(
        Position position, Forward forward, Gravity gravity, double from, double to, double gapBound, double startUp) {
    /** Nothing stated. */
    public static final LogOptions USUAL = new LogOptions(
            Position.SEAT, Forward.UNKNOWN, Gravity.FOUND, Double.NaN, Double.NaN, Double.NaN, Double.NaN);

    /** Whether gravity is in the values. */
    public enum Gravity {
        /** To be told from the mean. */
        FOUND("found"),
        /** It is: the mean gives the direction of up. */
        INCLUDED("in"),
        /** It was taken off before: the columns are as they are marked. */
        REMOVED("removed");

        private final String word;

        Gravity(String word) {
            this.word = word;
        }

        /** As a person writes it. */
        public String word() {
            return word;
        }
    }

    /** Which axis of the logger pointed forward. */
    public enum Forward {
        /** Nobody knows: horizontal motion is one value. */
        UNKNOWN("unknown", null, 0),
        /** The horizontal direction in which it shook most. */
        PRINCIPAL("principal", null, 0),
        PLUS_X("x", LogAxis.X, 1),
        MINUS_X("-x", LogAxis.X, -1),
        PLUS_Y("y", LogAxis.Y, 1),
        MINUS_Y("-y", LogAxis.Y, -1),
        PLUS_Z("z", LogAxis.Z, 1),
        MINUS_Z("-z", LogAxis.Z, -1);

        private final String word;
        private final LogAxis axis;
        private final int sign;

        Forward(String word, LogAxis axis, int sign) {
            this.word = word;
            this.axis = axis;
            this.sign = sign;
        }

        /** As a person writes it. */
        public String word() {
            return word;
        }

        /** Whether it names an axis. */
        public boolean isAxis() {
            return axis != null;
        }

        /** The named axis as a unit vector in the logger's axes. */
        double[] direction() {
            double[] direction = new double[3];
            direction[axis.place()] = sign;
            return direction;
        }
    }
}
