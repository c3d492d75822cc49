package org.ridewright.why;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.ridewright.study.Question;

/**
 * What was found: every number of every ride test for every choice that was ridden, as written and by draw.
 *
 * <p>Contributions are parts of the number as it is now, worked out draw by draw: {@code Δᵢ/y(∅)} with both from one draw.
 */
public final class WhyFindings {
    private final List<Swap> swaps;
    private final List<String> tests;
    private final List<Question> questions;
    private final List<Question> unanswered;
    private final Known asWritten;
    private final List<Known> draws;
    private final int replaced;
    private final int lost;
    private final int uncertainValues;

    /**
     * One vehicle in all its choices.
     *
     * @param y by ride test, question and choice
     */
    record Known(double[][][] y) {}

    WhyFindings(
            List<Swap> swaps,
            List<String> tests,
            List<Question> questions,
            List<Question> unanswered,
            Known asWritten,
            List<Known> draws,
            int replaced,
            int lost,
            int uncertainValues) {
        this.swaps = List.copyOf(swaps);
        this.tests = List.copyOf(tests);
        this.questions = List.copyOf(questions);
        this.unanswered = List.copyOf(unanswered);
        this.asWritten = asWritten;
        this.draws = List.copyOf(draws);
        this.replaced = replaced;
        this.lost = lost;
        this.uncertainValues = uncertainValues;
    }

    /** The swaps, in the order of all other methods. */
    public List<Swap> swaps() {
        return swaps;
    }

    /** The ride tests by name. */
    public List<String> tests() {
        return tests;
    }

    /** What was asked of each; what has no answer as written was left out. */
    public List<Question> questions() {
        return questions;
    }

    /** What was asked, too, and has no answer on this ride, or the answer 0, of which nothing is a part. */
    public List<Question> unanswered() {
        return unanswered;
    }

    /** Draws that count. */
    public int draws() {
        return draws.size();
    }

    /** Draws replaced by others, since no such vehicle can be. */
    public int replaced() {
        return replaced;
    }

    /** Draws left out, since one of their vehicles could not be or not ride. */
    public int lost() {
        return lost;
    }

    /** Values drawn. */
    public int uncertainValues() {
        return uncertainValues;
    }

    /** The number as it is now (unit of the question). */
    public double now(int test, int question) {
        return effects(asWritten, test, question).base();
    }

    /** The number now, by draw, as an interval's values (unit of the question). */
    public Contribution nowDrawn(int test, int question) {
        return new Contribution(
                now(test, question),
                draws.stream()
                        .mapToDouble(known -> effects(known, test, question).base())
                        .toArray());
    }

    /** What swap i does by itself. */
    public Contribution alone(int test, int question, int i) {
        return part(test, question, e -> e.alone(i));
    }

    /** By how much swaps i and j together do more than the sum of each alone. */
    public Contribution interaction(int test, int question, int i, int j) {
        return part(test, question, e -> e.interaction(i, j));
    }

    /** What all swaps do together. */
    public Contribution together(int test, int question) {
        return part(test, question, Effects::together);
    }

    /** Share of swap i in what all do together; of draws only where every choice was ridden. */
    public Contribution share(int test, int question, int i) {
        return part(test, question, e -> e.share(i));
    }

    /** Whether swap i changes no bit of any number in any draw: what it changes is not in use. */
    public boolean isVoid(int i) {
        for (int t = 0; t < tests.size(); t++) {
            for (int q = 0; q < questions.size(); q++) {
                Contribution alone = alone(t, q, i);
                if (alone.asWritten() != 0 || Arrays.stream(alone.draws()).anyMatch(d -> d != 0)) {
                    return false;
                }
            }
        }
        return true;
    }

    private Contribution part(int test, int question, ToDoubleFunction<Effects> of) {
        return new Contribution(
                relative(asWritten, test, question, of),
                draws.stream()
                        .mapToDouble(known -> relative(known, test, question, of))
                        .toArray());
    }

    private double relative(Known known, int test, int question, ToDoubleFunction<Effects> of) {
        Effects effects = effects(known, test, question);
        return of.applyAsDouble(effects) / effects.base();
    }

    private Effects effects(Known known, int test, int question) {
        return new Effects(swaps.size(), known.y()[test][question]);
    }
}
