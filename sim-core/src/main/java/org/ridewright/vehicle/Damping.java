package org.ridewright.vehicle;

import org.ridewright.quantity.Measure;

/** Viscous damping as people give it. */
public sealed interface Damping {
    /** None is given: none there is, or for a contact the default of its kind. */
    record NotGiven() implements Damping {}

    /** Force per speed (N·s/m), ≥ 0. */
    record Coefficient(Measure value) implements Damping {}

    /** Share of critical damping, 0 to below 1. */
    record Ratio(Measure value) implements Damping {}

    /** Speed after a bounce over speed before it, above 0 to 1; contacts only. */
    record Restitution(Measure value) implements Damping {}
}
