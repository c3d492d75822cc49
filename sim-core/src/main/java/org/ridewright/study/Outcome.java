package org.ridewright.study;

import java.util.List;

/**
 * What one run gave: a line for each of its ride tests, or the reason why there is none.
 *
 * @param tests in the order of the scenario; empty if the run failed as a whole
 * @param failure why; empty if it did not
 */
public record Outcome(List<Line> tests, String failure) {
    public Outcome {
        tests = List.copyOf(tests);
    }

    /**
     * One ride test.
     *
     * @param labels vehicle, load case, road and speed
     * @param answers in the order of the study's questions, NaN where there is none; empty if the ride failed
     * @param failure why; empty if it did not
     */
    public record Line(List<String> labels, List<Double> answers, String failure) {
        public Line {
            labels = List.copyOf(labels);
            answers = List.copyOf(answers);
        }

        /** An answer; NaN where the ride failed. */
        public double answer(int question) {
            return answers.isEmpty() ? Double.NaN : answers.get(question);
        }
    }

    private static final String DEFECT = "defect: ";

    /** A run that gave nothing. */
    public static Outcome failed(String reason) {
        return new Outcome(List.of(), reason);
    }

    /** Why something failed that a defect of the program ended, and not what was ridden. */
    static String defect(RuntimeException thrown) {
        StackTraceElement[] trace = thrown.getStackTrace();
        return DEFECT + thrown + (trace.length > 0 ? " at " + trace[0] : "");
    }

    /** Whether a defect of the program ended it or one of its ride tests. */
    public boolean isDefect() {
        return failure.startsWith(DEFECT)
                || tests.stream().anyMatch(t -> t.failure().startsWith(DEFECT));
    }

    /** An answer of a ride test; NaN where there is none. */
    public double answer(int test, int question) {
        return test < tests.size() ? tests.get(test).answer(question) : Double.NaN;
    }

    /** Whether anything failed. */
    public boolean hasFailed() {
        return !failure.isEmpty() || tests.stream().anyMatch(t -> !t.failure().isEmpty());
    }

    /** The first reason for which something failed; empty if nothing did. */
    public String reason() {
        return !failure.isEmpty()
                ? failure
                : tests.stream()
                        .map(Line::failure)
                        .filter(why -> !why.isEmpty())
                        .findFirst()
                        .orElse("");
    }
}
