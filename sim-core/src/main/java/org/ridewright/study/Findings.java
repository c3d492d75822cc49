package org.ridewright.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What a method makes of the runs, which it takes in the order of their numbers. */
public abstract class Findings implements Finished.Taker {
    private final Study study;
    private final List<Outcome.Line> base = new ArrayList<>();
    private final List<String> reasons = new ArrayList<>();
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

    @Override
    public final void take(Trial trial, Outcome outcome) {
        runs++;
        if (trial.run() == 0) {
            base.addAll(outcome.tests());
        }
        if (outcome.hasFailed()) {
            failed++;
            if (reasons.size() < 3) {
                reasons.add(outcome.reason());
            }
        }
        add(trial, outcome);
    }

    /** Takes one run. */
    abstract void add(Trial trial, Outcome outcome);

    /** The study. */
    public Study study() {
        return study;
    }

    /** Ride tests of the first variant as written; empty if it cannot be ridden. */
    public List<Outcome.Line> base() {
        return List.copyOf(base);
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

    /** Reasons of the first few of them. */
    public List<String> reasons() {
        return List.copyOf(reasons);
    }
}
