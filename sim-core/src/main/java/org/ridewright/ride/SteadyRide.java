package org.ridewright.ride;

import java.util.List;
import java.util.Map;

/**
 * What a stretch of a ride is like, without what went before it.
 *
 * @param weighted vertical acceleration weighted by W_k, r.m.s., at each seat, or at each point where nobody is aboard (m/s²)
 * @param locked share of the time during which friction holds each element that has any, by name
 */
public record SteadyRide(List<Felt> weighted, Map<String, Double> locked) {
    public SteadyRide {
        weighted = List.copyOf(weighted);
        locked = Map.copyOf(locked);
    }

    /**
     * At one place.
     *
     * @param place name
     * @param rms (m/s²)
     */
    public record Felt(String place, double rms) {}
}
