package org.ridewright.ride;

import java.util.List;

/**
 * What was measured of one ride test.
 *
 * @param ride in which all that was not wanted is empty or not a number; times off and shares locked are always there
 * @param swings of the body's heave, roll and pitch, as far as it has them; empty where not wanted
 */
public record Measured(RideResult ride, List<Swing> swings) {
    public Measured {
        swings = List.copyOf(swings);
    }

    /**
     * How the body swings in one of its coordinates.
     *
     * @param motion name, {@code heave}, {@code roll} or {@code pitch}
     * @param unit of the coordinate, m or rad
     * @param greatest displacement from rest, up or down (unit)
     * @param after the same once the last axle has left the rough road (unit); of the whole run on an endless or smooth road
     * @param cycles that the body swings from then on, in halves: swings of at least 2 mm or 2 mrad from one turning point to the next during
     *     which some spring slides, as far as the run goes; not a number where the rough road does not end before the run
     */
    public record Swing(String motion, String unit, double greatest, double after, double cycles) {}
}
