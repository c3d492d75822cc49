package org.ridewright.narrowing;

import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Provenance;
import org.ridewright.quantity.QuantityKind;

/**
 * Standard uncertainties of guesses that state none; choices of this project. They only set an order, and a sheet says which are such.
 */
final class UsualTolerance {
    /** Of a length guessed in a yard (m). */
    private static final double LENGTH = 0.05;

    private static final double ANYTHING_ELSE = 0.25;

    private UsualTolerance() {}

    /** The same guess with the uncertainty usual for its kind. */
    static Measure of(Measure guess) {
        return guess.kind() == QuantityKind.LENGTH ? absolute(guess, LENGTH) : relative(guess, ANYTHING_ELSE);
    }

    /** The same guess with an uncertainty in its SI unit. */
    static Measure absolute(Measure guess, double tolerance) {
        return new Measure(guess.kind(), guess.value(), tolerance, Provenance.ESTIMATED, guess.written());
    }

    /** The same guess with an uncertainty as a share of it. */
    static Measure relative(Measure guess, double share) {
        return absolute(guess, Math.abs(guess.value()) * share);
    }
}
