package org.ridewright.solver;

/** Counts what a run takes; mutable, one per run. */
final class Tally {
    private final GuardTable table;
    private long steps;
    private long switches;
    private long frictionSwitches;
    private long contactSwitches;
    private long orders;
    private double smallest = Double.POSITIVE_INFINITY;
    private int switchesAtInstant;
    private double instant = -1;

    Tally(GuardTable table) {
        this.table = table;
    }

    void step(int order, double duration) {
        steps++;
        orders += order;
        smallest = Math.min(smallest, duration);
    }

    /** Counts a switch at time t; returns how many there were at this instant. */
    int cross(int guard, double t) {
        switches++;
        switch (table.kind[guard]) {
            case SLIDER, SENSE -> frictionSwitches++;
            case CONTACT_FORCE, CONTACT_GAP -> contactSwitches++;
            default -> {}
        }
        if (t > instant) {
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
