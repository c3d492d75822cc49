package org.ridewright.ringdown;

/**
 * What the turning points of a smoothed record say before anything is fitted.
 *
 * @param start of the first turn (s)
 * @param halfPeriod mean time from turn to turn (s)
 * @param first acceleration at the first turn (m/s²), signed
 * @param ratio magnitude of the last of the turns over that of the first, between 0 and 1
 * @param halfCycles how many half cycles lie between those two
 */
record Guess(double start, double halfPeriod, double first, double ratio, int halfCycles) {
    double omega() {
        return Math.PI / halfPeriod;
    }

    /** ζ if a share of the decay is viscous: {@code e^(−πζ n) = ratio^share}. */
    double zeta(double share) {
        return Math.min(0.5, -share * Math.log(Math.max(0.02, ratio)) / (Math.PI * halfCycles));
    }

    /** f if the rest of the decay is friction's: {@code 2 f n = A (1 − ratio)}. */
    double friction(double share) {
        return (1 - share) * Math.abs(first) * (1 - ratio) / (2 * halfCycles);
    }
}
