package org.ridewright.dynamics;

import org.ridewright.suspension.ForceLaw;

/**
 * A force element: compression {@code c = row·q + u_input}, force by its law.
 *
 * @param name as reports call it, unique in the vehicle
 * @param row B, length n; not to be modified
 * @param input index of the height that it follows, −1 for none
 */
public record Element(String name, Kind kind, double[] row, int input, ForceLaw law) {
    /** What an element is. */
    public enum Kind {
        SPRING,
        /** A spring on a sum of travels of which not all shorten as the vehicle sinks. */
        LINKAGE,
        DAMPER,
        ANTI_ROLL_BAR,
        TWIST,
        SEAT,
        HITCH,
        /** What holds the vehicle fore and aft. */
        HOLD,
        /** What holds the body sideways at an axle. */
        SWAY,
        CONTACT
    }

    /** What a spring or damper of an axle is called, before a word for its side. */
    public static String nameOf(String axle, String part) {
        return part.startsWith(axle) ? part : axle + " " + part;
    }

    /** The same with another law. */
    public Element withLaw(ForceLaw newLaw) {
        return new Element(name, kind, row, input, newLaw);
    }
}
