package org.ridewright.study;

import java.util.List;

/** Elementary effects on every answer. */
public final class ScreeningFindings extends Findings {
    private final Method.Screening method;
    private EffectSums[][] sums = new EffectSums[0][];
    private double[][][] trajectory = new double[0][][];

    ScreeningFindings(Study study, Method.Screening method) {
        super(study);
        this.method = method;
    }

    @Override
    void add(Trial trial, Outcome outcome) {
        int k = method.factors().size();
        if (trial.run() == 0) {
            sums = new EffectSums[testCount()][questionCount()];
            trajectory = new double[testCount()][questionCount()][k + 1];
            for (EffectSums[] test : sums) {
                for (int q = 0; q < test.length; q++) {
                    test[q] = new EffectSums(k, method.design(), method.seed());
                }
            }
            return;
        }
        int step = (int) ((trial.run() - 1) % (k + 1));
        for (int t = 0; t < testCount(); t++) {
            for (int q = 0; q < questionCount(); q++) {
                trajectory[t][q][step] = outcome.answer(t, q);
                if (step == k) {
                    sums[t][q].add((trial.run() - 1) / (k + 1), trajectory[t][q]);
                }
            }
        }
    }

    /** Values whose correlation is left out of account. */
    public List<Correlated> correlated() {
        return method.correlated();
    }

    /** What varied. */
    public List<Factor> factors() {
        return method.factors();
    }

    /** Number of trajectories. */
    public int trajectories() {
        return method.trajectories();
    }

    /** Effects on an answer. */
    public EffectSums effects(int test, int question) {
        return sums[test][question];
    }
}
