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
     * @param cycles that the body swings from then on before it stays within 1 mm or 1 mrad of where it comes to rest, in halves; as far
     *     as the run goes
     */
    public record Swing(String motion, String unit, double greatest, double after, double cycles) {}
}
