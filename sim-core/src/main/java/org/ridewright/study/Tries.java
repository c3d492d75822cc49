package org.ridewright.study;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.IntStream;
import org.ridewright.math.Quantiles;

/**
 * Answers draw by draw, for what has to be told within each draw: the difference of two things, the best level, the first level beyond a bound.
 * Things are what is compared, or the levels of a value. A study as written only is a single draw.
 *
 * <p>Memory is bounded: of more draws than there is room for, the first are kept.
 */
public final class Tries {
    /** Numbers kept. */
    private static final int ROOM = 4_000_000;

    private final Study study;
    private final List<String> things;
    private final double[] axis;
    private final List<List<String>> labels;
    /** By thing, ride test, question, draw. */
    private final double[][][][] values;

    private final int draws;
    private final boolean drawn;

    /**
     * @param axis where each thing stands on the axis of the value that varies; empty if things are compared
     * @param labels of each ride test
     * @param draws 0: as written only
     */
    Tries(Study study, List<String> things, double[] axis, List<List<String>> labels, int draws) {
        this.study = study;
        this.things = List.copyOf(things);
        this.axis = axis.clone();
        this.labels = labels.stream().map(List::copyOf).toList();
        int questions = study.questions().size();
        int cells = Math.max(1, things.size() * labels.size() * questions);
        drawn = draws > 0;
        this.draws = Math.max(1, Math.min(draws, ROOM / cells));
        values = new double[things.size()][labels.size()][questions][this.draws];
        for (double[][][] thing : values) {
            for (double[][] test : thing) {
                for (double[] question : test) {
                    Arrays.fill(question, Double.NaN);
                }
            }
        }
    }

    /** Things of one run each, as they stand. */
    public static Tries of(Study study, List<String> things, List<Outcome> outcomes) {
        List<List<String>> labels = outcomes.stream()
                .map(o -> o.tests().stream().map(Outcome.Line::labels).toList())
                .filter(each -> !each.isEmpty())
                .findFirst()
                .orElse(List.of());
        Tries tries = new Tries(study, things, new double[0], labels, 0);
        for (int th = 0; th < outcomes.size(); th++) {
            for (int t = 0; t < labels.size(); t++) {
                for (int q = 0; q < study.questions().size(); q++) {
                    tries.put(th, t, q, 0, outcomes.get(th).answer(t, q));
                }
            }
        }
        return tries;
    }

    void put(int thing, int test, int question, long draw, double value) {
        if (draw < draws) {
            values[thing][test][question][(int) draw] = value;
        }
    }

    /** Names of the things; of levels, their numbers. */
    public List<String> things() {
        return things;
    }

    /** Where a level stands on its axis. */
    public double at(int level) {
        return axis[level];
    }

    /** Whether there are draws, and so intervals. */
    public boolean isDrawn() {
        return drawn;
    }

    /** The only ride test that has all of some labels; empty if there is none, or several. */
    public OptionalInt test(List<String> on) {
        int[] found = tests(on);
        return found.length == 1 ? OptionalInt.of(found[0]) : OptionalInt.empty();
    }

    /** All ride tests that have all of some labels. */
    public int[] tests(List<String> on) {
        return IntStream.range(0, labels.size())
                .filter(t -> labels.get(t).containsAll(on))
                .toArray();
    }

    /** How many draws there are. */
    public int draws() {
        return draws;
    }

    /** In how many of the draws all of some things have an answer. */
    public int used(int test, int question, int... of) {
        return (int) IntStream.range(0, draws)
                .filter(d -> IntStream.of(of).allMatch(th -> Double.isFinite(values[th][test][question][d])))
                .count();
    }

    /** Labels of the ride tests. */
    public List<List<String>> labels() {
        return labels;
    }

    /** An answer: its median and 90 % interval over the draws. */
    public Estimate value(int thing, int test, int question) {
        return estimate(values[thing][test][question]);
    }

    /** By how much a thing's answer is above another's, draw by draw. */
    public Estimate difference(int from, int to, int test, int question) {
        return estimate(paired(from, to, test, question, RoundOff::difference));
    }

    /** A thing's answer over another's, draw by draw; not a number where the latter is nil. */
    public Estimate ratio(int from, int to, int test, int question) {
        return estimate(paired(from, to, test, question, RoundOff::ratio));
    }

    private double[] paired(int from, int to, int test, int question, DoubleBinaryOperator of) {
        double[] a = values[from][test][question];
        double[] b = values[to][test][question];
        return IntStream.range(0, draws)
                .mapToDouble(d -> of.applyAsDouble(a[d], b[d]))
                .toArray();
    }

    private static Estimate estimate(double[] all) {
        double[] sorted = Quantiles.sorted(all);
        return new Estimate(Quantiles.median(sorted), Quantiles.low(sorted), Quantiles.high(sorted));
    }

    /** The thing itself, or the one whose median is best or worst; −1 where none has an answer. */
    public int thing(int choice, int test, int question) {
        if (choice >= 0) {
            return choice;
        }
        boolean least = (choice == Telling.BEST)
                == (study.questions().get(question).measure().worse() != Worse.LOW);
        int found = -1;
        double of = Double.NaN;
        for (int th = 0; th < things.size(); th++) {
            double median = value(th, test, question).value();
            if (Double.isFinite(median) && (found < 0 || (least ? median < of : median > of))) {
                found = th;
                of = median;
            }
        }
        return found;
    }

    /**
     * The best level, and which neighbours cannot be told apart from it.
     *
     * @param best number of the level with the best median
     * @param low lowest level of those beside it whose difference from it, draw by draw, has an interval that holds zero
     * @param high highest of them
     */
    public record Band(int best, int low, int high) {}

    /** The levels told from the others; where nothing has an answer, the number of the best is −1. */
    public Band best(int test, int question) {
        int best = thing(Telling.BEST, test, question);
        int low = best;
        int high = best;
        while (best >= 0 && low > 0 && isLike(best, low - 1, test, question)) {
            low--;
        }
        while (best >= 0 && high < things.size() - 1 && isLike(best, high + 1, test, question)) {
            high++;
        }
        return new Band(best, low, high);
    }

    /** Whether two things cannot be told apart: the 90 % interval of their difference holds zero. Without draws, whether they are the same. */
    public boolean isLike(int a, int b, int test, int question) {
        Estimate difference = difference(a, b, test, question);
        return !(difference.low() > 0 || difference.high() < 0);
    }

    /**
     * Where, on the axis, an answer first passes a bound: in proportion between the levels before and after it. An answer that stays at the bound, such as
     * none at all, up to a level, leaves it somewhere before the next one, nobody knows where.
     *
     * @param at median and 90 % interval over the draws of where it has not yet passed; NaN at an end that lies beyond the last level
     * @param after of where it has; the same but for an answer that stayed at the bound
     * @param never share of the draws in which it does not
     * @param atOnce share of the draws in which it is beyond the bound from the first level on
     * @param left share of all draws that are left out, since a level on the way could not be ridden
     */
    public record Passing(Estimate at, Estimate after, double never, double atOnce, double left) {}

    /** @param above whether the answer is to be above the bound, rather than below */
    public Passing first(boolean above, double bound, int test, int question) {
        double[] at = new double[draws];
        double[] after = new double[draws];
        int count = 0;
        int never = 0;
        int atOnce = 0;
        for (int d = 0; d < draws; d++) {
            int level = firstLevel(above, bound, test, question, d);
            if (level < 0) {
                continue;
            } else if (level == things.size()) {
                never++;
                at[count] = Double.POSITIVE_INFINITY;
                after[count] = Double.POSITIVE_INFINITY;
            } else if (level == 0) {
                atOnce++;
                at[count] = axis[0];
                after[count] = axis[0];
            } else {
                double before = values[level - 1][test][question][d];
                double share = (bound - before) / (values[level][test][question][d] - before);
                at[count] = axis[level - 1] + share * (axis[level] - axis[level - 1]);
                after[count] = before == bound ? axis[level] : at[count];
            }
            count++;
        }
        double some = Math.max(1, count);
        return new Passing(
                ends(Arrays.copyOf(at, count)),
                ends(Arrays.copyOf(after, count)),
                never / some,
                atOnce / some,
                (draws - count) / (double) draws);
    }

    /** NaN where beyond the last level. */
    private static Estimate ends(double[] places) {
        Arrays.sort(places);
        return new Estimate(
                finite(Quantiles.median(places)), finite(Quantiles.low(places)), finite(Quantiles.high(places)));
    }

    private static double finite(double place) {
        return Double.isInfinite(place) ? Double.NaN : place;
    }

    /** The level itself, the number of levels if there is none, or −1 if a level before it has no answer. */
    private int firstLevel(boolean above, double bound, int test, int question, int draw) {
        for (int th = 0; th < things.size(); th++) {
            double value = values[th][test][question][draw];
            if (Double.isNaN(value)) {
                return -1;
            }
            if (above ? value > bound : value < bound) {
                return th;
            }
        }
        return things.size();
    }
}
