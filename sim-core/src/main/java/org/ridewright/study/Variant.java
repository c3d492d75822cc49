package org.ridewright.study;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.ridewright.quantity.Adjustable;
import org.ridewright.ride.Scenario;

/**
 * A scenario as it stands, or with some values changed: what a study rides before anything varies.
 *
 * @param name in the author's words
 * @param scenario whose values have paths
 * @param texts changes by path; may be empty
 * @param within changes that the scenario holds already, such as other vehicle files, and values with tolerances of their own; may be empty
 */
public record Variant(
        String name, Adjustable<Scenario> scenario, Map<String, String> texts, Map<String, String> within) {
    public Variant {
        texts = Collections.unmodifiableMap(new LinkedHashMap<>(texts));
        within = Collections.unmodifiableMap(new LinkedHashMap<>(within));
    }

    /** With all changes still to be made. */
    public Variant(String name, Adjustable<Scenario> scenario, Map<String, String> texts) {
        this(name, scenario, texts, Map.of());
    }

    /** Paths of everything that is changed. */
    public Set<String> changed() {
        Set<String> paths = new LinkedHashSet<>(within.keySet());
        paths.addAll(texts.keySet());
        return paths;
    }
}
