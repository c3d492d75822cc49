package org.ridewright.dynamics;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;

/** What is found by standing the vehicle: compressions of springs where clearances were measured, and how high level hitches are held. */
final class StagePlaces {
    private final Map<String, Double> compression = new HashMap<>();
    private double hitchHeight;

    /** Compression of that element standing still with that load, once known (m). */
    OptionalDouble at(String loadCase, String element) {
        Double c = compression.get(loadCase + "\n" + element);
        return c == null ? OptionalDouble.empty() : OptionalDouble.of(c);
    }

    /** How far above the free state a hitch is held that is to stand level (m). */
    double hitchHeight() {
        return hitchHeight;
    }

    void holdHitches(double height) {
        hitchHeight = height;
    }

    /** Records a compression and tells by how much it moved (m). */
    double put(String loadCase, String element, double c) {
        Double before = compression.put(loadCase + "\n" + element, c);
        return before == null ? Double.POSITIVE_INFINITY : Math.abs(c - before);
    }
}
