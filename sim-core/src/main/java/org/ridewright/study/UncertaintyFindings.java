package org.ridewright.study;

import java.util.Optional;

/** How answers are spread over the draws, once or at each level of a value. */
public final class UncertaintyFindings extends Findings {
    private final Method.Uncertainty method;
    private final Levels levels;
    private Optional<Tries> tries = Optional.empty();
    /** By slot, test, question. */
    private QuantileSketch[][][] sketches = new QuantileSketch[0][][];

    UncertaintyFindings(Study study, Method.Uncertainty method) {
        super(study);
        this.method = method;
        levels = new Levels(method.along().map(a -> a.coordinates().size()).orElse(1));
    }

    @Override
    void add(Trial trial, Outcome outcome) {
        if (trial.run() == 0) {
            sketches = new QuantileSketch[levels.kept()][testCount()][questionCount()];
            for (QuantileSketch[][] level : sketches) {
                for (QuantileSketch[] test : level) {
                    for (int q = 0; q < test.length; q++) {
                        test[q] = new QuantileSketch();
                    }
                }
            }
            if (study().answer().isPresent()) {
                tries = Optional.of(levelled(axis(), method.draws()));
            }
            return;
        }
        int slot = levels.slot((int) ((trial.run() - 1) / method.draws()));
        for (int t = 0; slot >= 0 && t < testCount(); t++) {
            for (int q = 0; q < questionCount(); q++) {
                double answer = outcome.answer(t, q);
                sketches[slot][t][q].add(answer);
                if (tries.isPresent() && t < base().size()) {
                    tries.get().put(slot, t, q, (trial.run() - 1) % method.draws(), answer);
                }
            }
        }
    }

    @Override
    public Optional<Tries> tries() {
        return tries;
    }

    /** The method. */
    public Method.Uncertainty method() {
        return method;
    }

    /** Levels shown, as on their axis; a single 0 if draws were taken once. */
    public double[] axis() {
        double[] axis = new double[levels.kept()];
        for (int slot = 0; slot < axis.length; slot++) {
            int level = levels.level(slot);
            axis[slot] = method.along()
                    .map(a -> a.factor().shown(a.coordinates().get(level)))
                    .orElse(0.0);
        }
        return axis;
    }

    /** Draws of an answer at a level. */
    public QuantileSketch spread(int slot, int test, int question) {
        return sketches[slot][test][question];
    }
}
