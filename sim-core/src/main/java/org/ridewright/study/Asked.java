package org.ridewright.study;

import java.util.List;
import java.util.stream.DoubleStream;

/**
 * One of a study's answers in some of its ride tests.
 *
 * @param question its number among the study's questions
 * @param tests numbers of the ride tests, in the order of the scenario; empty: all of them
 * @param on the words by which the author tells those tests from others; may be empty
 */
public record Asked(int question, List<Integer> tests, List<String> on) {
    public Asked {
        tests = List.copyOf(tests);
        on = List.copyOf(on);
    }

    /** An answer in all ride tests. */
    public static Asked everywhere(int question) {
        return new Asked(question, List.of(), List.of());
    }

    /** The answer in each of the tests, as far as it exists; none if one of them could not be ridden. */
    public double[] of(Outcome outcome) {
        List<Outcome.Line> lines = tests.isEmpty()
                ? outcome.tests()
                : tests.stream()
                        .filter(t -> t < outcome.tests().size())
                        .map(outcome.tests()::get)
                        .toList();
        if (!outcome.failure().isEmpty()
                || lines.stream().anyMatch(l -> !l.failure().isEmpty())) {
            return new double[0];
        }
        return lines.stream()
                .mapToDouble(line -> line.answer(question))
                .filter(v -> !Double.isNaN(v))
                .toArray();
    }

    /** The worst of the tests; not a number if one of them could not be ridden, or none has it. */
    public double worst(Outcome outcome, RideMeasure measure) {
        return measure.worst(DoubleStream.of(of(outcome)).boxed().toList());
    }

    /** Whether it is one of several ride tests that counts. */
    public boolean isOfSeveral(int all) {
        return (tests.isEmpty() ? all : tests.size()) > 1;
    }
}
