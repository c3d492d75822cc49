package org.ridewright.study;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Names of ride tests that say no more than what tells them apart. */
public final class TestNames {
    private TestNames() {}

    /**
     * @param labels of each test, equally many parts
     * @return the parts that are not the same in all, joined; of a single test its first part; unlike. Empty parts are left out
     */
    public static List<String> of(List<List<String>> labels) {
        List<String> names = new ArrayList<>();
        Set<String> taken = new LinkedHashSet<>();
        for (List<String> each : labels) {
            List<String> parts = new ArrayList<>();
            for (int i = 0; i < each.size(); i++) {
                int part = i;
                boolean blank = each.get(i).isEmpty();
                if (!blank && labels.stream().anyMatch(other -> !other.get(part).equals(each.get(part)))) {
                    parts.add(each.get(i));
                }
            }
            String name = parts.isEmpty() ? first(each) : String.join(", ", parts);
            String unlike = name;
            for (int n = 2; !taken.add(unlike); n++) {
                unlike = name + " (" + n + ")";
            }
            names.add(unlike);
        }
        return names;
    }

    private static String first(List<String> parts) {
        return parts.stream().filter(part -> !part.isEmpty()).findFirst().orElse("ride test");
    }
}
