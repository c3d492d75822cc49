package org.ridewright.narrowing;

import java.util.List;
import org.ridewright.vehicle.Vehicle;

/** What a person wants to know of a vehicle, in figures. */
public interface Answer {
    /**
     * One figure of the answer.
     *
     * @param name what it is
     * @param unit its unit
     */
    record Figure(String name, String unit) {}

    /** The figures, in the order in which they are worked out. */
    List<Figure> figures();

    /** What was asked, in a sentence. */
    String asked();

    /**
     * The figures of one vehicle, in the order of {@link #figures}; NaN where there is none. Safe for use from several threads.
     *
     * @throws org.ridewright.dynamics.RideException if the vehicle cannot stand or ride
     */
    List<Double> of(Vehicle vehicle);
}
