package org.ridewright.study;

import java.util.List;

/** Sobol' indices of every answer. */
public final class IndexFindings extends Findings {
    private final Method.Indices method;
    private IndexSums[][] sums = new IndexSums[0][];
    private double[][][] point = new double[0][][];

    IndexFindings(Study study, Method.Indices method) {
        super(study);
        this.method = method;
    }

    @Override
    void add(Trial trial, Outcome outcome) {
        int k = method.factors().size();
        if (trial.run() == 0) {
            sums = new IndexSums[testCount()][questionCount()];
            point = new double[testCount()][questionCount()][k + 2];
            for (IndexSums[] test : sums) {
                for (int q = 0; q < test.length; q++) {
                    test[q] = new IndexSums(k, method.seed());
                }
            }
            return;
        }
        int which = (int) ((trial.run() - 1) % (k + 2));
        for (int t = 0; t < testCount(); t++) {
            for (int q = 0; q < questionCount(); q++) {
                point[t][q][which] = outcome.answer(t, q);
                if (which == k + 1) {
                    sums[t][q].add((trial.run() - 1) / (k + 2), point[t][q]);
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

    /** Points of each sample. */
    public int draws() {
        return method.draws();
    }

    /** Indices of an answer. */
    public IndexSums indices(int test, int question) {
        return sums[test][question];
    }
}
