package org.ridewright.solver;

/**
 * State at the end of a run, and its statistics.
 *
 * @param q coordinates from the free state
 * @param v their speeds
 * @param friction force of each friction state (N)
 */
public record Solution(double[] q, double[] v, double[] friction, EnergyBalance energy, Statistics statistics) {
    /**
     * What the run took.
     *
     * @param steps advanced
     * @param switches of regime
     * @param frictionSwitches of these, by friction
     * @param contactSwitches of these, by contacts
     * @param meanOrder highest power of the acceleration, averaged over steps
     * @param smallestStep between two switches or joints (s)
     */
    public record Statistics(
            long steps,
            long switches,
            long frictionSwitches,
            long contactSwitches,
            double meanOrder,
            double smallestStep) {}
}
