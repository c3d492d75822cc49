package org.ridewright.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Things side by side on the same tests: each answer as written, which thing is best, and, where there are draws, how the difference of the others
 * from it is spread. The draws are the same for all, so that what they have in common cancels.
 */
public final class CompareFindings extends Findings {
    private final Method.Compare method;
    private final List<String> things = new ArrayList<>();
    private final List<List<String>> rows = new ArrayList<>();
    /** Thing and row of each test of each variant. */
    private final Map<List<Integer>, int[]> places = new LinkedHashMap<>();

    private final List<List<Outcome.Line>> written = new ArrayList<>();
    private final List<Outcome> draw = new ArrayList<>();
    private double[][][] values = new double[0][][];
    private QuantileSketch[][][] spreads = new QuantileSketch[0][][];
    private QuantileSketch[][][] differences = new QuantileSketch[0][][];

    private Optional<Tries> tries = Optional.empty();
    private int drawNumber;

    CompareFindings(Study study, Method.Compare method) {
        super(study);
        this.method = method;
    }

    @Override
    void add(Trial trial, Outcome outcome) {
        int count = study().variants().size();
        if (trial.run() < count) {
            written.add(outcome.tests());
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
        Map<String, Integer> numbers = new LinkedHashMap<>();
        for (int v = 0; v < written.size(); v++) {
            for (int t = 0; t < written.get(v).size(); t++) {
                String thing = thing(v, written.get(v).get(t).labels());
                numbers.putIfAbsent(thing, numbers.size());
            }
        }
        things.addAll(numbers.keySet());
        List<List<Set<String>>> labels = new ArrayList<>();
        for (int v = 0; v < written.size(); v++) {
            Map<String, Integer> next = new LinkedHashMap<>();
            for (int t = 0; t < written.get(v).size(); t++) {
                List<String> of = written.get(v).get(t).labels();
                int row = next.merge(thing(v, of), 1, Integer::sum) - 1;
                while (labels.size() <= row) {
                    labels.add(List.of(
                            new LinkedHashSet<>(),
                            new LinkedHashSet<>(),
                            new LinkedHashSet<>(),
                            new LinkedHashSet<>()));
                }
                for (int i = 0; i < of.size(); i++) {
                    labels.get(row).get(i).add(of.get(i));
                }
                places.put(List.of(v, t), new int[] {numbers.get(thing(v, of)), row});
            }
        }
        for (List<Set<String>> row : labels) {
            rows.add(IntStream.range(0, row.size())
                    .mapToObj(i -> isCompared(i) || row.get(i).size() != 1
                            ? ""
                            : row.get(i).iterator().next())
                    .toList());
        }
        values = new double[things.size()][rows.size()][questionCount()];
        spreads = new QuantileSketch[things.size()][rows.size()][questionCount()];
        differences = new QuantileSketch[things.size()][rows.size()][questionCount()];
        for (int th = 0; th < things.size(); th++) {
            for (int r = 0; r < rows.size(); r++) {
                for (int q = 0; q < questionCount(); q++) {
                    values[th][r][q] = Double.NaN;
                    spreads[th][r][q] = new QuantileSketch();
                    differences[th][r][q] = new QuantileSketch();
                }
            }
        }
        for (int v = 0; v < written.size(); v++) {
            fill(values, v, new Outcome(written.get(v), ""));
        }
        boolean inBands = !BandFamily.of(study().questions()).isEmpty();
        if (study().answer().isPresent() || inBands) {
            tries = Optional.of(new Tries(study(), things, new double[0], rows, method.draws()));
            if (method.draws() == 0) {
                keep(values);
            }
        }
    }

    private void keep(double[][][] now) {
        for (int th = 0; tries.isPresent() && th < things.size(); th++) {
            for (int r = 0; r < rows.size(); r++) {
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

    /** Whether a label says which thing it is, rather than which test. */
    private boolean isCompared(int label) {
        return (method.by() == Method.By.VEHICLES && label == 0) || (method.by() == Method.By.LOAD_CASES && label == 1);
    }

    private String thing(int variant, List<String> labels) {
        return switch (method.by()) {
            case VEHICLES -> labels.get(0);
            case LOAD_CASES -> labels.get(1);
            case VARIANTS -> study().variants().get(variant).name();
        };
    }

    private void fill(double[][][] to, int variant, Outcome outcome) {
        for (int t = 0; t < outcome.tests().size(); t++) {
            int[] place = places.get(List.of(variant, t));
            for (int q = 0; place != null && q < questionCount(); q++) {
                to[place[0]][place[1]][q] = outcome.answer(t, q);
            }
        }
    }

    private void drawn() {
        double[][][] now = new double[things.size()][rows.size()][questionCount()];
        for (double[][] thing : now) {
            for (double[] row : thing) {
                Arrays.fill(row, Double.NaN);
            }
        }
        for (int v = 0; v < draw.size(); v++) {
            fill(now, v, draw.get(v));
        }
        keep(now);
        for (int r = 0; r < rows.size(); r++) {
            for (int q = 0; q < questionCount(); q++) {
                int best = best(r, q);
                for (int th = 0; th < things.size(); th++) {
                    spreads[th][r][q].add(now[th][r][q]);
                    if (best >= 0 && th != best) {
                        differences[th][r][q].add(now[th][r][q] - now[best][r][q]);
                    }
                }
            }
        }
    }

    /** The method. */
    public Method.Compare method() {
        return method;
    }

    /** What is compared. */
    public List<String> things() {
        return List.copyOf(things);
    }

    /** Names of the tests that all of them go through. */
    public List<String> rows() {
        return TestNames.of(rows);
    }

    /** An answer as written; NaN where there is none. */
    public double value(int thing, int row, int question) {
        return values[thing][row][question];
    }

    /** The thing whose answer as written is best; −1 where neither is better, two are alike, or one alone has an answer. */
    public int best(int row, int question) {
        Worse worse = study().questions().get(question).measure().worse();
        int best = -1;
        int answered = 0;
        for (int th = 0; th < things.size(); th++) {
            double value = values[th][row][question];
            if (Double.isFinite(value)) {
                answered++;
                boolean better = best < 0
                        || (worse == Worse.LOW
                                ? value > values[best][row][question]
                                : value < values[best][row][question]);
                best = better ? th : best;
            }
        }
        int found = best;
        boolean tied = found >= 0
                && IntStream.range(0, things.size())
                        .anyMatch(th -> th != found && values[th][row][question] == values[found][row][question]);
        return answered < 2 || tied || worse == Worse.NEITHER ? -1 : best;
    }

    /** Whether the draws tell the best from all others, whose differences from it have intervals to one side; without draws, whether there is a best. */
    public boolean isClear(int row, int question) {
        int best = best(row, question);
        return best >= 0
                && IntStream.range(0, things.size())
                        .filter(th -> th != best)
                        .mapToObj(th -> differences[th][row][question])
                        .filter(difference -> difference.count() > 0)
                        .allMatch(d -> d.quantile(0.05) > 0 || d.quantile(0.95) < 0);
    }

    /** How an answer is spread over the draws. */
    public QuantileSketch spread(int thing, int row, int question) {
        return spreads[thing][row][question];
    }

    /** How its difference from the best one's is spread. */
    public QuantileSketch difference(int thing, int row, int question) {
        return differences[thing][row][question];
    }
}
