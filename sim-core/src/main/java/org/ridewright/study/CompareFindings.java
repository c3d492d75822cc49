package org.ridewright.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Things side by side on the same tests: each answer as written, and, where there are draws, how it is spread, which thing is best, and how the
 * differences of the others from it are spread. The draws are the same for all, so that what they have in common cancels.
 */
public final class CompareFindings extends Findings {
    private final Method.Compare method;
    private final List<List<List<String>>> written = new ArrayList<>();
    private final List<Outcome> asWritten = new ArrayList<>();
    private final List<Outcome> draw = new ArrayList<>();
    private SameTests same;
    private double[][][] values = new double[0][][];
    private QuantileSketch[][][] spreads = new QuantileSketch[0][][];
    /** The same of those draws alone in which every thing has an answer. */
    private QuantileSketch[][][] common = new QuantileSketch[0][][];
    /** By thing, thing after it, row and question: the later one's answer less the earlier one's. */
    private QuantileSketch[][][][] differences = new QuantileSketch[0][][][];

    private Optional<Tries> tries = Optional.empty();
    private int drawNumber;

    CompareFindings(Study study, Method.Compare method) {
        super(study);
        this.method = method;
        same = new SameTests(method.by(), study.variants(), List.of());
    }

    /** Whether all that a study compares have a ride test in common. */
    public static boolean haveTestsInCommon(List<Variant> variants, Method.By by) {
        return !new SameTests(
                        by, variants, variants.stream().map(TestLabels::of).toList())
                .rows()
                .isEmpty();
    }

    @Override
    void add(Trial trial, Outcome outcome) {
        int count = study().variants().size();
        if (trial.run() < count) {
            written.add(testsAsWritten(trial.variant()));
            asWritten.add(outcome);
            if (trial.run() == count - 1) {
                arrange();
            }
            return;
        }
        draw.add(outcome);
        if (draw.size() == count) {
            drawn();
            draw.clear();
        }
    }

    private void arrange() {
        same = new SameTests(method.by(), study().variants(), written);
        int n = things().size();
        int rows = same.rows().size();
        values = empty();
        spreads = new QuantileSketch[n][][];
        common = new QuantileSketch[n][][];
        differences = new QuantileSketch[n][n][][];
        for (int th = 0; th < n; th++) {
            spreads[th] = sketches(rows);
            common[th] = sketches(rows);
            for (int later = th + 1; later < n; later++) {
                differences[th][later] = sketches(rows);
            }
        }
        for (int v = 0; v < written.size(); v++) {
            fill(values, v, asWritten.get(v));
        }
        asWritten.clear();
        boolean inBands = !BandFamily.of(study().questions()).isEmpty();
        if (study().answer().isPresent() || inBands) {
            tries = Optional.of(new Tries(study(), things(), new double[0], same.rows(), method.draws()));
            if (method.draws() == 0) {
                keep(values);
            }
        }
    }

    private double[][][] empty() {
        double[][][] all = new double[things().size()][same.rows().size()][questionCount()];
        for (double[][] thing : all) {
            for (double[] row : thing) {
                Arrays.fill(row, Double.NaN);
            }
        }
        return all;
    }

    private QuantileSketch[][] sketches(int rows) {
        QuantileSketch[][] all = new QuantileSketch[rows][questionCount()];
        for (QuantileSketch[] row : all) {
            Arrays.setAll(row, q -> new QuantileSketch());
        }
        return all;
    }

    private void keep(double[][][] now) {
        for (int th = 0; tries.isPresent() && th < things().size(); th++) {
            for (int r = 0; r < same.rows().size(); r++) {
                for (int q = 0; q < questionCount(); q++) {
                    tries.get().put(th, r, q, drawNumber, now[th][r][q]);
                }
            }
        }
        drawNumber++;
    }

    @Override
    public Optional<Tries> tries() {
        return tries;
    }

    private void fill(double[][][] to, int variant, Outcome outcome) {
        for (int t = 0; t < outcome.tests().size(); t++) {
            int[] place = same.place(variant, t);
            for (int q = 0; place != null && q < questionCount(); q++) {
                to[place[0]][place[1]][q] = outcome.answer(t, q);
            }
        }
    }

    private void drawn() {
        double[][][] now = empty();
        for (int v = 0; v < draw.size(); v++) {
            fill(now, v, draw.get(v));
        }
        keep(now);
        for (int th = 0; th < now.length; th++) {
            for (int r = 0; r < same.rows().size(); r++) {
                for (int q = 0; q < questionCount(); q++) {
                    spreads[th][r][q].add(now[th][r][q]);
                    common[th][r][q].add(haveAll(now, r, q) ? now[th][r][q] : Double.NaN);
                    for (int later = th + 1; later < now.length; later++) {
                        differences[th][later][r][q].add(RoundOff.difference(now[th][r][q], now[later][r][q]));
                    }
                }
            }
        }
    }

    private static boolean haveAll(double[][][] now, int row, int question) {
        return Arrays.stream(now).allMatch(thing -> Double.isFinite(thing[row][question]));
    }

    /** The median of what all things went through, so that none is judged by draws which another could not ride; of all draws if there are none such. */
    private double median(int thing, int row, int question) {
        QuantileSketch own = common[thing][row][question];
        return (own.count() > 0 ? own : spreads[thing][row][question]).quantile(0.5);
    }

    /** The method. */
    public Method.Compare method() {
        return method;
    }

    /** What is compared. */
    public List<String> things() {
        return same.things();
    }

    /** Names of the tests that all of them go through. */
    public List<String> rows() {
        return TestNames.of(same.rows());
    }

    /** An answer as written; NaN where there is none. */
    public double value(int thing, int row, int question) {
        return values[thing][row][question];
    }

    /** Labels of ride tests that one of the things alone goes through, which are left out. */
    public List<String> leftOut() {
        return same.leftOut().stream().map(labels -> String.join(", ", labels)).toList();
    }

    /**
     * The thing whose answer is best, of draws by their median, else as written; −1 where neither is better, two are alike, or one alone has an
     * answer.
     */
    public int best(int row, int question) {
        return best(question, th -> method.draws() > 0 ? median(th, row, question) : values[th][row][question]);
    }

    /** The same as written, which draws of what is not known, such as the seed of a road, may contradict. */
    public int bestAsWritten(int row, int question) {
        return best(question, th -> values[th][row][question]);
    }

    private int best(int question, IntToDoubleFunction answer) {
        Worse worse = study().questions().get(question).measure().worse();
        int best = -1;
        int answered = 0;
        for (int th = 0; th < things().size(); th++) {
            double value = answer.applyAsDouble(th);
            if (Double.isFinite(value)) {
                answered++;
                boolean better = best < 0
                        || (worse == Worse.LOW
                                ? value > answer.applyAsDouble(best)
                                : value < answer.applyAsDouble(best));
                best = better ? th : best;
            }
        }
        int found = best;
        boolean tied = found >= 0
                && IntStream.range(0, things().size())
                        .anyMatch(th ->
                                th != found && RoundOff.isAlike(answer.applyAsDouble(th), answer.applyAsDouble(found)));
        return answered < 2 || tied || worse == Worse.NEITHER ? -1 : best;
    }

    /** Draws in which all things have an answer. */
    public long used(int row, int question) {
        return things().isEmpty() ? 0 : common[0][row][question].count();
    }

    /** Whether two things or more have an answer, and it is the same for all: by the draws, where there are any, else as written. */
    public boolean isSame(int row, int question) {
        double[] answers = IntStream.range(0, things().size())
                .mapToDouble(th -> method.draws() > 0 ? median(th, row, question) : values[th][row][question])
                .filter(Double::isFinite)
                .toArray();
        return answers.length > 1 && Arrays.stream(answers).allMatch(a -> RoundOff.isAlike(a, answers[0]));
    }

    /** Whether there is no best, though answers differ, because two or more are best alike. */
    public boolean isTied(int row, int question) {
        return best(row, question) < 0
                && !isSame(row, question)
                && study().questions().get(question).measure().worse() != Worse.NEITHER
                && IntStream.range(0, things().size())
                                .filter(th -> Double.isFinite(values[th][row][question]))
                                .count()
                        > 1;
    }

    /** Whether the draws tell the best from all others, whose differences from it have intervals to one side; without draws, whether there is a best. */
    public boolean isClear(int row, int question) {
        int best = best(row, question);
        return best >= 0
                && IntStream.range(0, things().size())
                        .filter(th ->
                                th != best && difference(th, row, question).count() > 0)
                        .allMatch(th -> isWorse(th, row, question));
    }

    /** How an answer is spread over the draws. */
    public QuantileSketch spread(int thing, int row, int question) {
        return spreads[thing][row][question];
    }

    /** How its difference from the best one's is spread, draw by draw; of the best itself, and where there is none, nothing. */
    public QuantileSketch difference(int thing, int row, int question) {
        int best = best(row, question);
        if (best < 0 || best == thing) {
            return new QuantileSketch();
        }
        return best < thing
                ? differences[best][thing][row][question]
                : differences[thing][best][row][question].negated();
    }

    /** Whether an answer is worse than the best one's in more than 95 of a hundred draws. */
    public boolean isWorse(int thing, int row, int question) {
        QuantileSketch difference = difference(thing, row, question);
        return study().questions().get(question).measure().worse() == Worse.LOW
                ? difference.high() < 0
                : difference.low() > 0;
    }
}
