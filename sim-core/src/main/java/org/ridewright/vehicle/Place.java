package org.ridewright.vehicle;

import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;

/**
 * A point of the vehicle as a person measures it, with the vehicle standing level.
 *
 * @param behindFrontAxle distance rearward from the front axle (m), negative ahead of it
 * @param leftOfCentre distance left of the centre line (m), negative to the right
 * @param aboveGround height above the ground (m)
 */
public record Place(Measure behindFrontAxle, Measure leftOfCentre, Measure aboveGround) {
    /** Heads the words of a length that the file gives the other way, ahead of the axle or right of the centre. */
    public static final String OPPOSITE = "minus ";

    /** A place from plain numbers in metres. */
    public static Place of(double behindFrontAxle, double leftOfCentre, double aboveGround) {
        return new Place(length(behindFrontAxle), length(leftOfCentre), length(aboveGround));
    }

    private static Measure length(double value) {
        return Measure.of(value, QuantityKind.LENGTH);
    }

    /** ISO 8855 longitudinal coordinate, forward of the front axle (m). */
    public double x() {
        return -behindFrontAxle.value();
    }

    /** ISO 8855 lateral coordinate, to the left (m). */
    public double y() {
        return leftOfCentre.value();
    }

    /** ISO 8855 vertical coordinate, above the ground (m). */
    public double z() {
        return aboveGround.value();
    }
}
