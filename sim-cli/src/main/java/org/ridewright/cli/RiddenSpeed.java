package org.ridewright.cli;

import org.ridewright.quantity.Measures;
import org.ridewright.quantity.QuantityFormatException;
import org.ridewright.quantity.QuantityKind;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** A speed that an option states. Slower than a walk nothing is ridden: the roads would take minutes to pass. */
final class RiddenSpeed {
    private static final double KMH = 3.6;
    private static final double SLOWEST = 1 / KMH;
    private static final double FASTEST = 200 / KMH;
    /** 1 km/h in other words is not refused for its last figure. */
    private static final double ROUND_OFF = 1e-9;

    private RiddenSpeed() {}

    /** (m/s) */
    static double of(CommandSpec spec, String written) {
        double value;
        try {
            value = Measures.parse(written, QuantityKind.SPEED).value();
        } catch (QuantityFormatException refused) {
            throw new ParameterException(spec.commandLine(), "--speed: " + refused.getMessage(), refused);
        }
        if (value < SLOWEST * (1 - ROUND_OFF) || value > FASTEST * (1 + ROUND_OFF)) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--speed must be from 1 to 200 km/h, got '" + written
                            + "'; state it with its unit, such as '9 mph'");
        }
        return value;
    }
}
