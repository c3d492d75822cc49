package org.ridewright.why;

import java.util.List;
import org.ridewright.ride.Scenario;

/** A vehicle on its ride, with some of its swaps made and its uncertain values drawn. */
public interface SwappedRides {
    /** The swaps, k of them. */
    List<Swap> swaps();

    /** Number d of uncertain values: those of the vehicle, and those that alternatives state with a tolerance. */
    int uncertainValues();

    /**
     * The ride of one choice. Equal {@code w} give equal values wherever the choice has them.
     *
     * @param draw number of the draw, −1 for all values as written; a road of chance may go by it
     * @param w independent standard normal numbers, d of them; not modified
     * @param choice of swaps, k bits
     * @throws org.ridewright.quantity.UnfitValueException if no such vehicle can be
     */
    Scenario ride(int draw, double[] w, int choice);
}
