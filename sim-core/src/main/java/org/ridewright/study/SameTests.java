package org.ridewright.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Which ride tests of things that are compared belong side by side: those with the same labels, but for the labels that say which thing it is. Where
 * what makes a variant changes a label too, variants with equally many tests are told by the other labels and their order. A test that one thing
 * alone goes through has nothing beside it, and is left out.
 */
final class SameTests {
    private final Method.By by;
    private final List<Variant> variants;
    private final List<Test> tests = new ArrayList<>();
    private final List<String> things;
    private final List<List<String>> rows = new ArrayList<>();
    private final Map<List<Integer>, int[]> places = new HashMap<>();
    private final List<List<String>> leftOut = new ArrayList<>();

    /** One ride test of a thing. */
    private record Test(int variant, int number, String thing, List<String> labels) {}

    /** @param labels by variant, then by ride test */
    SameTests(Method.By by, List<Variant> variants, List<List<List<String>>> labels) {
        this.by = by;
        this.variants = variants;
        for (int v = 0; v < labels.size(); v++) {
            for (int t = 0; t < labels.get(v).size(); t++) {
                List<String> own = labels.get(v).get(t);
                tests.add(new Test(v, t, thing(v, own), own));
            }
        }
        things = tests.stream().map(Test::thing).distinct().toList();
        arrange();
    }

    private String thing(int variant, List<String> labels) {
        return switch (by) {
            case VEHICLES -> labels.get(TestLabels.VEHICLE);
            case LOAD_CASES -> labels.get(TestLabels.LOAD_CASE);
            case VARIANTS -> variants.get(variant).name();
        };
    }

    private void arrange() {
        Set<Integer> telling = telling();
        Map<List<String>, List<Test>> found = keyed(telling);
        if (found.values().stream().anyMatch(row -> row.size() < things.size()) && areEquallyMany()) {
            Set<Integer> others = new LinkedHashSet<>(telling);
            variants.forEach(v -> others.removeAll(TestLabels.following(v.changed())));
            found = keyed(others);
        }
        for (List<Test> row : found.values()) {
            if (row.size() < 2) {
                leftOut.add(row.get(0).labels());
                continue;
            }
            row.forEach(test -> places.put(
                    List.of(test.variant(), test.number()), new int[] {things.indexOf(test.thing()), rows.size()}));
            rows.add(label(row));
        }
    }

    /** Labels by which tests are told: not the one that is compared, nor one of which each thing has one word of its own. */
    private Set<Integer> telling() {
        Set<Integer> own =
                switch (by) {
                    case VEHICLES -> Set.of(TestLabels.LOAD_CASE);
                    case LOAD_CASES -> Set.of();
                    case VARIANTS ->
                        IntStream.range(0, TestLabels.COUNT).boxed().collect(Collectors.toSet());
                };
        Set<Integer> telling = new LinkedHashSet<>();
        for (int i = 0; i < TestLabels.COUNT; i++) {
            int label = i;
            Map<String, Set<String>> words = new HashMap<>();
            tests.forEach(test -> words.computeIfAbsent(test.thing(), thing -> new HashSet<>())
                    .add(test.labels().get(label)));
            boolean oneEach = words.values().stream().allMatch(each -> each.size() == 1);
            if (!isCompared(i) && !(own.contains(i) && oneEach)) {
                telling.add(i);
            }
        }
        return telling;
    }

    private boolean isCompared(int label) {
        return (by == Method.By.VEHICLES && label == TestLabels.VEHICLE)
                || (by == Method.By.LOAD_CASES && label == TestLabels.LOAD_CASE);
    }

    private boolean areEquallyMany() {
        return by == Method.By.VARIANTS
                && tests.stream().collect(Collectors.groupingBy(Test::thing, Collectors.counting())).values().stream()
                                .distinct()
                                .count()
                        == 1;
    }

    /** Tests by their labels, and the how-manieth they are of those that a thing has with the same. */
    private Map<List<String>, List<Test>> keyed(Set<Integer> telling) {
        Map<List<String>, List<Test>> found = new LinkedHashMap<>();
        Map<List<String>, Integer> before = new HashMap<>();
        for (Test test : tests) {
            List<String> key = new ArrayList<>();
            telling.forEach(i -> key.add(test.labels().get(i)));
            List<String> own = new ArrayList<>(key);
            own.add(test.thing());
            key.add(Integer.toString(before.merge(own, 1, Integer::sum)));
            found.computeIfAbsent(key, k -> new ArrayList<>()).add(test);
        }
        return found;
    }

    /** Labels that all tests of a row share; the others are empty. */
    private List<String> label(List<Test> row) {
        return IntStream.range(0, TestLabels.COUNT)
                .mapToObj(i -> {
                    Set<String> words =
                            row.stream().map(test -> test.labels().get(i)).collect(Collectors.toSet());
                    return isCompared(i) || words.size() > 1
                            ? ""
                            : words.iterator().next();
                })
                .toList();
    }

    /** Names of what is compared. */
    List<String> things() {
        return things;
    }

    /** Labels of each row. */
    List<List<String>> rows() {
        return rows;
    }

    /** Number of the thing and of the row of a test; null if it is left out. */
    int[] place(int variant, int test) {
        return places.get(List.of(variant, test));
    }

    /** Labels of the tests that have nothing beside them. */
    List<List<String>> leftOut() {
        return leftOut;
    }
}
