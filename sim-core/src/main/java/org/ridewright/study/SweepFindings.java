package org.ridewright.study;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Answers at every level of a sweep, as far as a figure can show them. */
public final class SweepFindings extends Findings {
    private final Method.Sweep sweep;
    private final Levels[] levels;
    /** By test, question, slot of the first value, slot of the second. */
    private double[][][][] values = new double[0][][][];

    /** By test and question. */
    private long[][] answered = new long[0][];

    private Optional<Tries> tries = Optional.empty();

    SweepFindings(Study study, Method.Sweep sweep) {
        super(study);
        this.sweep = sweep;
        levels = sweep.swept().stream()
                .map(s -> new Levels(s.coordinates().size()))
                .toArray(Levels[]::new);
    }

    @Override
    void add(Trial trial, Outcome outcome) {
        if (trial.run() == 0) {
            int second = levels.length > 1 ? levels[1].kept() : 1;
            values = new double[testCount()][questionCount()][levels[0].kept()][second];
            for (double[][][] test : values) {
                for (double[][] question : test) {
                    for (double[] row : question) {
                        Arrays.fill(row, Double.NaN);
                    }
                }
            }
            answered = new long[testCount()][questionCount()];
            if (study().answer().isPresent() && levels.length == 1) {
                tries = Optional.of(levelled(axis(0), 0));
            }
            return;
        }
        for (int t = 0; t < answered.length; t++) {
            for (int q = 0; q < questionCount(); q++) {
                answered[t][q] += Double.isFinite(outcome.answer(t, q)) ? 1 : 0;
            }
        }
        int inner = levels.length > 1 ? levels[1].count() : 1;
        int first = levels[0].slot((int) ((trial.run() - 1) / inner));
        int second = levels.length > 1 ? levels[1].slot((int) ((trial.run() - 1) % inner)) : 0;
        if (first < 0 || second < 0) {
            return;
        }
        for (int t = 0; t < values.length; t++) {
            for (int q = 0; q < questionCount(); q++) {
                values[t][q][first][second] = outcome.answer(t, q);
                if (tries.isPresent() && t < base().size()) {
                    tries.get().put(first, t, q, 0, outcome.answer(t, q));
                }
            }
        }
    }

    @Override
    public Optional<Tries> tries() {
        return tries;
    }

    /** What was swept. */
    public List<Method.Swept> swept() {
        return sweep.swept();
    }

    /** Levels shown of a value, as on its axis. */
    public double[] axis(int value) {
        Method.Swept swept = sweep.swept().get(value);
        double[] axis = new double[levels[value].kept()];
        for (int slot = 0; slot < axis.length; slot++) {
            axis[slot] = swept.factor().shown(swept.coordinates().get(levels[value].level(slot)));
        }
        return axis;
    }

    /** Steps, those that no figure shows included. */
    public long steps() {
        return sweep.swept().stream().mapToLong(s -> s.coordinates().size()).reduce(1, (a, b) -> a * b);
    }

    /** Steps of which there is an answer. */
    public long answered(int test, int question) {
        return answered[test][question];
    }

    /** Answers by slot of the first value and of the second, of which there is one if only one value is swept. */
    public double[][] values(int test, int question) {
        double[][] copy = values[test][question].clone();
        for (int i = 0; i < copy.length; i++) {
            copy[i] = copy[i].clone();
        }
        return copy;
    }
}
