package org.ridewright.ride;

import org.ridewright.solver.Step;

/** A quantity recorded at a named place: a polynomial on each step. */
interface ReadOff {
    /** Name for traces and reports. */
    String name();

    /** Unit of its values. */
    String unit();

    /**
     * Its polynomial on a step, in powers of τ.
     *
     * @param out zeroed by the caller; length at least degree + 1
     * @return its degree
     */
    int polynomial(Step step, double[] out);
}
