package org.ridewright.study;

import org.hipparchus.special.Erf;

/** The standard normal distribution. */
final class Normal {
    private Normal() {}

    /** Value below which a share of the distribution lies, 0 < share < 1. */
    static double quantile(double share) {
        return Math.sqrt(2) * Erf.erfInv(2 * share - 1);
    }
}
