package org.ridewright.narrowing;

import java.util.function.DoubleFunction;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Spread;
import org.ridewright.vehicle.Vehicle;

/**
 * A value that is not known exactly, and the vehicle with others in its place.
 *
 * @param path key of the vehicle file that holds it, or would hold it
 * @param measure the value with its standard uncertainty, > 0
 * @param knowledge how it was come by
 * @param usualTolerance whether the uncertainty is not stated but one that is usual for such values
 * @param at the vehicle with the value {@code z} standard uncertainties from where it is
 */
public record UncertainValue(
        String path, Measure measure, Knowledge knowledge, boolean usualTolerance, DoubleFunction<Vehicle> at) {
    public UncertainValue {
        if (!(measure.tolerance() > 0)) {
            throw new IllegalArgumentException(path + " must have a tolerance > 0, got " + measure.tolerance());
        }
    }

    /** How a value was come by. */
    public enum Knowledge {
        /** The file does not give it; the program takes what is usual. */
        LEFT_OUT,
        /** The file gives it as estimated. */
        ESTIMATED,
        /** The file gives it with a tolerance, as measured or from elsewhere. */
        STATED
    }

    /** Whether nobody has measured it yet. */
    public boolean isGuess() {
        return knowledge != Knowledge.STATED;
    }

    /** Its distribution. */
    public Spread spread() {
        return Spread.of(measure);
    }
}
