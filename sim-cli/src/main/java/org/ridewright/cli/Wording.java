package org.ridewright.cli;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.ridewright.ride.RideResult;

/** Ride tests and numbers as the terminal shows them. */
final class Wording {
    private static final MathContext SPEED_DIGITS = new MathContext(4);
    private static final double KMH = 3.6;

    private Wording() {}

    /** Vehicle and load. */
    static String subject(RideResult ride) {
        return ride.model().vehicle().name() + ", " + ride.model().loadCase().name();
    }

    /** The whole ride test. */
    static String test(RideResult ride) {
        return subject(ride) + ", " + ride.road().name() + ", "
                + (ride.plan().isSteady() ? speed(ride) + " km/h" : ride.plan().written());
    }

    /** Speed (km/h), four digits at most. */
    static String speed(RideResult ride) {
        return new BigDecimal(KMH * ride.speed())
                .round(SPEED_DIGITS)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** A number with that many decimals and no negative zero; a dash where there is none. */
    static String number(double value, int decimals) {
        return Double.isFinite(value)
                ? new BigDecimal(value)
                        .setScale(decimals, RoundingMode.HALF_EVEN)
                        .toPlainString()
                : "–";
    }
}
