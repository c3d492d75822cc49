package org.ridewright.solver;

/** Counts what a run takes; mutable, one per run. */
final class Tally {
    private final GuardTable table;
    /** Switches closer together than this count as of one instant (s). */
    private final double sameInstant;

    private long steps;
    private long switches;
    private long frictionSwitches;
    private long contactSwitches;
    private long orders;
    private double smallest = Double.POSITIVE_INFINITY;
    private int switchesAtInstant;
    private double instant = Double.NEGATIVE_INFINITY;

    /**
     * @param sameInstant time within which switches count as of one instant (s)
     */
    Tally(GuardTable table, double sameInstant) {
        this.table = table;
        this.sameInstant = sameInstant;
    }

    void step(int order, double duration) {
        steps++;
        orders += order;
        smallest = Math.min(smallest, duration);
    }

    /** Counts a switch at time t; returns how many there were at this instant, be it moved on by round-off between them. */
    int cross(int guard, double t) {
        switches++;
        switch (table.kind[guard]) {
            case SLIDER, SENSE -> frictionSwitches++;
            case CONTACT_FORCE, CONTACT_GAP -> contactSwitches++;
            default -> {}
        }
        if (t - instant > sameInstant) {
            instant = t;
            switchesAtInstant = 0;
        }
        return ++switchesAtInstant;
    }

    long steps() {
        return steps;
    }

    long switches() {
        return switches;
    }

    int switchesAtInstant() {
        return switchesAtInstant;
    }

    double smallestStep() {
        return smallest;
    }

    Solution.Statistics statistics() {
        return new Solution.Statistics(
                steps, switches, frictionSwitches, contactSwitches, steps == 0 ? 0 : (double) orders / steps, smallest);
    }
}
