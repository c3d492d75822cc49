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
 * @param file name of the scenario's file, without folders; empty if it is of none
 * @param changes all of them as the author wrote them, by path; may be empty
 */
public record Variant(
        String name,
        Adjustable<Scenario> scenario,
        Map<String, String> texts,
        Map<String, String> within,
        String file,
        Map<String, String> changes) {
    public Variant {
        texts = Collections.unmodifiableMap(new LinkedHashMap<>(texts));
        within = Collections.unmodifiableMap(new LinkedHashMap<>(within));
        changes = Collections.unmodifiableMap(new LinkedHashMap<>(changes));
    }

    /** Of no file, with all changes still to be made. */
    public Variant(String name, Adjustable<Scenario> scenario, Map<String, String> texts) {
        this(name, scenario, texts, Map.of(), "", texts);
    }

    /** Paths of everything that is changed. */
    public Set<String> changed() {
        Set<String> paths = new LinkedHashSet<>(within.keySet());
        paths.addAll(texts.keySet());
        return paths;
    }
}
