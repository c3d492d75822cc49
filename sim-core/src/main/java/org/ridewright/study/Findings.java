package org.ridewright.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** What a method makes of the runs, which it takes in the order of their numbers. */
public abstract class Findings implements Finished.Taker {
    private static final int MOST_REASONS = 3;

    private final Study study;
    private final Map<Integer, TestMatch> matches = new HashMap<>();
    private final List<Outcome.Line> base = new ArrayList<>();
    private final Reasons reasons = new Reasons();
    private long runs;
    private long failed;

    Findings(Study study) {
        this.study = study;
    }

    /** Those of the study's method; of a search see {@link SearchRun}. */
    public static Findings of(Study study) {
        Method method = study.method();
        if (method instanceof Method.Sweep sweep) {
            return new SweepFindings(study, sweep);
        } else if (method instanceof Method.Compare compare) {
            return new CompareFindings(study, compare);
        } else if (method instanceof Method.Uncertainty uncertainty) {
            return new UncertaintyFindings(study, uncertainty);
        } else if (method instanceof Method.Screening screening) {
            return new ScreeningFindings(study, screening);
        } else if (method instanceof Method.Indices indices) {
            return new IndexFindings(study, indices);
        }
        throw new IllegalArgumentException("a search finds its runs as it goes");
    }

    /**
     * An outcome with its ride tests in the order of the variant as written, each of which is taken for the one with its labels; a failure where a run has
     * other ride tests. The first run of each variant is the one as written.
     */
    public Outcome matched(Trial trial, Outcome outcome) {
        return matches.computeIfAbsent(trial.variant(), variant -> match(variant, outcome))
                .arranged(outcome);
    }

    private TestMatch match(int variant, Outcome written) {
        List<List<String>> tests = written.tests().isEmpty()
                ? TestLabels.of(study.variants().get(variant))
                : written.tests().stream().map(Outcome.Line::labels).toList();
        return new TestMatch(tests, TestLabels.following(TestLabels.varied(study.method(), variant)));
    }

    /** Labels of a variant's ride tests as written. */
    List<List<String>> testsAsWritten(int variant) {
        return matches.get(variant).tests();
    }

    @Override
    public final void take(Trial trial, Outcome ridden) {
        Outcome outcome = matched(trial, ridden);
        runs++;
        if (trial.run() == 0) {
            for (List<String> labels : testsAsWritten(0)) {
                base.add(new Outcome.Line(labels, List.of(), outcome.failure()));
            }
            for (int t = 0; t < outcome.tests().size(); t++) {
                base.set(t, outcome.tests().get(t));
            }
        }
        if (outcome.hasFailed()) {
            failed++;
            reasons.add(outcome.reason());
        }
        add(trial, outcome);
    }

    /** Takes one run. */
    abstract void add(Trial trial, Outcome outcome);

    /** The study. */
    public Study study() {
        return study;
    }

    /** Ride tests of the first variant as written, which may have failed; empty before it is taken. */
    public List<Outcome.Line> base() {
        return List.copyOf(base);
    }

    /** Why the first variant cannot be ridden as written, in one ride test at least, though others may; empty if it can. */
    public String baseFailure() {
        return base.stream()
                .map(Outcome.Line::failure)
                .filter(why -> !why.isEmpty())
                .findFirst()
                .orElse("");
    }

    /** Names of the ride tests, unlike; one, if the scenario could not be ridden as written. */
    public List<String> tests() {
        return base.isEmpty()
                ? List.of("ride test")
                : TestNames.of(base.stream().map(Outcome.Line::labels).toList());
    }

    /** Room for answers at the levels of a value. */
    Tries levelled(double[] axis, int draws) {
        List<String> levels =
                IntStream.range(0, axis.length).mapToObj(Integer::toString).toList();
        return new Tries(
                study, levels, axis, base.stream().map(Outcome.Line::labels).toList(), draws);
    }

    int testCount() {
        return Math.max(1, base.size());
    }

    int questionCount() {
        return study.questions().size();
    }

    /** An answer as written; NaN where there is none. */
    public double asWritten(int test, int question) {
        return test < base.size() ? base.get(test).answer(question) : Double.NaN;
    }

    /** Answers draw by draw; empty unless the study has sentences to make of them, and its method can. */
    public Optional<Tries> tries() {
        return Optional.empty();
    }

    /** Runs taken. */
    public long runs() {
        return runs;
    }

    /** Runs of which something failed. */
    public long failed() {
        return failed;
    }

    /** The commonest of their reasons, with how often each was. */
    public List<String> reasons() {
        return reasons.commonest(MOST_REASONS);
    }
}
