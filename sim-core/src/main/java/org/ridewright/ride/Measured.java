package org.ridewright.ride;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ridewright.comfort.Position;
import org.ridewright.signal.ThirdOctave;

/**
 * What was measured of one ride test.
 *
 * @param ride in which all that was not wanted is empty or not a number; times off and shares locked are always there
 * @param swings of the body's heave, roll and pitch, as far as it has them; empty where not wanted
 * @param levels unweighted r.m.s. of the vertical acceleration over the ride's window, by seat and named point (m/s²); empty where not wanted
 * @param inBands vertical motion at seats and feet in third octaves; empty where not wanted
 */
public record Measured(RideResult ride, List<Swing> swings, Map<String, Double> levels, List<InBands> inBands) {
    public Measured {
        swings = List.copyOf(swings);
        levels = Collections.unmodifiableMap(new LinkedHashMap<>(levels));
        inBands = List.copyOf(inBands);
    }

    /**
     * Vertical motion at a place in third octaves. What comes after the window, as the vehicle comes to rest behind an obstacle, is counted in, as if
     * it had fallen into the window: an event tells its low frequencies only as a whole.
     *
     * @param seat whose
     * @param position at the seat or at the feet
     * @param levels r.m.s. acceleration of each band that the window resolves, lowest first (m/s²)
     */
    public record InBands(String seat, Position position, Map<ThirdOctave, Double> levels) {
        public InBands {
            levels = Collections.unmodifiableMap(new LinkedHashMap<>(levels));
        }
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
     * @param leftHeld how far it goes to either side in the last second of the run, if friction then holds every spring; 0 where a spring slides
     *     (unit)
     */
    public record Swing(String motion, String unit, double greatest, double after, double cycles, double leftHeld) {}
}
