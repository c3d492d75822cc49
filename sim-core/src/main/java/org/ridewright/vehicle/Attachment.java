package org.ridewright.vehicle;

import java.util.Optional;
import org.ridewright.quantity.Measure;

/**
 * Where across the axle a spring or damper stands.
 *
 * @param position on which side, or one on each
 * @param apart distance between the left and the right one's places (m), > 0; absent on the centre line and for
 *     independent wheels, where each acts at its wheel
 */
public record Attachment(Position position, Optional<Measure> apart) {
    /** Sides of the axle. */
    public enum Position {
        PAIR("pair"),
        LEFT("left"),
        RIGHT("right"),
        CENTRE("centre");

        private final String word;

        Position(String word) {
            this.word = word;
        }

        /** The word as written in files. */
        public String word() {
            return word;
        }
    }
}
