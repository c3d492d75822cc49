package org.ridewright.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.ridewright.ride.RideResult;

/** Ride tests and numbers as the terminal shows them. */
final class Wording {
    private Wording() {}

    /** Vehicle and load. */
    static String subject(RideResult ride) {
        return ride.model().vehicle().name() + ", " + ride.model().loadCase().name();
    }

    /** The whole ride test. */
    static String test(RideResult ride) {
        return subject(ride) + ", " + ride.road().name() + ", " + speed(ride);
    }

    /** Speed in the words of the scenario. */
    static String speed(RideResult ride) {
        return ride.plan().title();
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
