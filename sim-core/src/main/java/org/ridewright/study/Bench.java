package org.ridewright.study;

/** Rides runs. Belongs to one thread. */
@FunctionalInterface
public interface Bench {
    /** Rides one run; what cannot be ridden is an outcome too. */
    Outcome ride(Trial trial);
}
