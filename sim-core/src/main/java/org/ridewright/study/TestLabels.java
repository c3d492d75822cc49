package org.ridewright.study;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ridewright.ride.RideBench;
import org.ridewright.ride.Scenario;

/** What tells ride tests apart: labels for vehicle, load case, road and speed, in this order. */
final class TestLabels {
    static final int VEHICLE = 0;
    static final int LOAD_CASE = 1;
    static final int ROAD = 2;
    static final int SPEED = 3;
    static final int COUNT = 4;

    /** Which labels follow from what stands at a path. */
    private static final Map<String, List<Integer>> BY_PATH = Map.of(
            "vehicles(\\[[^\\]]*])?", List.of(VEHICLE, LOAD_CASE, SPEED),
            "vehicles\\[[^\\]]*]\\.file", List.of(VEHICLE, LOAD_CASE),
            "vehicles\\[[^\\]]*]\\.vehicle\\.vehicle", List.of(VEHICLE),
            "vehicles\\[[^\\]]*](\\.vehicle)?\\.load cases.*", List.of(LOAD_CASE),
            "vehicles\\[[^\\]]*]\\.speeds.*", List.of(SPEED),
            "roads?(\\[[^\\]]*])?(\\.name)?", List.of(ROAD));

    private TestLabels() {}

    /** Of each ride test of a variant as written. */
    static List<List<String>> of(Variant variant) {
        Scenario scenario = variant.texts().isEmpty()
                ? variant.scenario().asWritten()
                : variant.scenario().with(variant.texts());
        return RideBench.tests(scenario).stream().map(StudyBench::labels).toList();
    }

    /** Numbers of the labels that may change with values at some paths. */
    static Set<Integer> following(Iterable<String> paths) {
        Set<Integer> labels = new LinkedHashSet<>();
        for (String path : paths) {
            BY_PATH.forEach((pattern, which) -> {
                if (path.strip().matches(pattern)) {
                    labels.addAll(which);
                }
            });
        }
        return labels;
    }

    /** Paths of all that a method varies in the runs of a variant. */
    static List<String> varied(Method method, int variant) {
        List<String> paths = new ArrayList<>();
        if (method instanceof Method.Sweep sweep) {
            sweep.swept().forEach(s -> paths.addAll(s.factor().paths()));
        } else if (method instanceof Method.Compare compare) {
            if (variant < compare.uncertain().size()) {
                paths.addAll(compare.uncertain().get(variant).paths());
            }
            compare.ranges().forEach(f -> paths.addAll(f.paths()));
        } else if (method instanceof Method.Uncertainty uncertainty) {
            paths.addAll(uncertainty.uncertain().paths());
            uncertainty.ranges().forEach(f -> paths.addAll(f.paths()));
            uncertainty.along().ifPresent(a -> paths.addAll(a.factor().paths()));
        } else if (method instanceof Method.Screening screening) {
            screening.factors().forEach(f -> paths.addAll(f.paths()));
        } else if (method instanceof Method.Indices indices) {
            indices.factors().forEach(f -> paths.addAll(f.paths()));
        }
        return paths;
    }
}
