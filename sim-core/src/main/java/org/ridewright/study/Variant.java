package org.ridewright.study;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.ridewright.quantity.Adjustable;
import org.ridewright.ride.Scenario;

/**
 * A scenario as it stands, or with some values changed: what a study rides before anything varies.
 *
 * @param name in the author's words
 * @param scenario whose values have paths
 * @param texts changes by path; may be empty
 */
public record Variant(String name, Adjustable<Scenario> scenario, Map<String, String> texts) {
    public Variant {
        texts = Collections.unmodifiableMap(new LinkedHashMap<>(texts));
    }
}
