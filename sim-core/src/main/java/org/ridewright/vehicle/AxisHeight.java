package org.ridewright.vehicle;

import org.ridewright.quantity.Measure;

/** Where the axis lies about which a body rolls or, braked, pitches. */
public sealed interface AxisHeight {
    /** Through the centre of mass: none of the terms of a raised centre of mass arise. */
    record AtCentreOfMass() implements AxisHeight {}

    /** At one height above the ground (m) along the whole vehicle. */
    record AtHeight(Measure aboveGround) implements AxisHeight {}

    /** On the line through the heights given, or else the spring mounts, of the first and the last axle. */
    record AtAxles() implements AxisHeight {}
}
