package org.ridewright.uncertainty;

import java.util.List;
import java.util.Map;
import org.ridewright.ride.RideResult;

/**
 * A ride test with the uncertainty that its inputs' tolerances give it.
 *
 * @param ride with every value as written
 * @param numbers interval of each number, by the name that the caller gave it
 * @param bands of each trace; empty where a run keeps only a part of its traces, which differs from draw to draw
 * @param draws rides that were drawn and ridden to their end
 */
public record UncertainRide(RideResult ride, Map<String, Interval> numbers, List<TraceBand> bands, int draws) {
    public UncertainRide {
        numbers = Map.copyOf(numbers);
        bands = List.copyOf(bands);
    }
}
