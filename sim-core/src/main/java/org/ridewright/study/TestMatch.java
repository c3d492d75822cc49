package org.ridewright.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Finds the ride tests as written again in a run with changed values: by all their labels, or, where a label says what varies, by the others.
 *
 * @param tests labels of the ride tests as written
 * @param varied numbers of the labels that may change
 */
record TestMatch(List<List<String>> tests, Set<Integer> varied) {
    /** The outcome with its ride tests in the order as written, or a failure that says why there is none. */
    Outcome arranged(Outcome outcome) {
        if (!outcome.failure().isEmpty() || tests.isEmpty()) {
            return outcome;
        }
        List<Outcome.Line> rest = new ArrayList<>(outcome.tests());
        List<Outcome.Line> arranged = new ArrayList<>();
        for (List<String> test : tests) {
            rest.stream().filter(line -> line.labels().equals(test)).findFirst().ifPresent(line -> {
                arranged.add(line);
                rest.remove(line);
            });
        }
        if (rest.isEmpty() && arranged.size() == tests.size()) {
            return new Outcome(arranged, "");
        }
        if (outcome.tests().size() != tests.size()) {
            return Outcome.failed("its ride tests are not those as written, of which there are " + tests.size()
                    + "; it has " + outcome.tests().size());
        }
        for (int t = 0; t < tests.size(); t++) {
            List<String> found = outcome.tests().get(t).labels();
            if (!isSame(tests.get(t), found)) {
                return Outcome.failed("its ride tests are not those as written: it has " + String.join(", ", found)
                        + " in place of " + String.join(", ", tests.get(t)));
            }
        }
        return outcome;
    }

    private boolean isSame(List<String> written, List<String> found) {
        return written.size() == found.size()
                && IntStream.range(0, written.size())
                        .allMatch(i -> varied.contains(i) || written.get(i).equals(found.get(i)));
    }
}
