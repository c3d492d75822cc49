package org.ridewright.dynamics;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;

/** Static compressions of springs at the load cases in which clearances were measured. */
final class StagePlaces {
    private final Map<String, Double> compression = new HashMap<>();

    /** Compression of that element standing still with that load, once known (m). */
    OptionalDouble at(String loadCase, String element) {
        Double c = compression.get(loadCase + "\n" + element);
        return c == null ? OptionalDouble.empty() : OptionalDouble.of(c);
    }

    /** Records a compression and tells by how much it moved (m). */
    double put(String loadCase, String element, double c) {
        Double before = compression.put(loadCase + "\n" + element, c);
        return before == null ? Double.POSITIVE_INFINITY : Math.abs(c - before);
    }
}
