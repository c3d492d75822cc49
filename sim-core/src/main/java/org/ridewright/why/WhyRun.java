package org.ridewright.why;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.ridewright.dynamics.RideException;
import org.ridewright.quantity.UnfitValueException;
import org.ridewright.ride.Measured;
import org.ridewright.ride.RideBench;
import org.ridewright.ride.Scenario;
import org.ridewright.ride.Wanted;
import org.ridewright.study.Outcome;
import org.ridewright.study.Question;
import org.ridewright.study.Runs;
import org.ridewright.uncertainty.NormalDraws;

/**
 * Rides every choice that is wanted, once as written and once for each draw, on all cores. What is found does not depend on their number. A
 * draw of which one choice cannot be ridden is left out as a whole.
 */
public final class WhyRun {
    /** Which of all hypercubes of draws. */
    public static final long SEED = 1;

    /** Share of the draws that may be lost. */
    private static final double MOST_LOST = 0.5;

    /** Draws that may be replaced however few there are. */
    private static final int FEWEST_TRIES = 10;

    /** How many draws may have to be replaced for each that serves: one vehicle in five must be possible. */
    private static final int MOST_REPLACED = 4;

    private static final List<String> NOT_LABELLED = List.of("", "", "", "");

    private final SwappedRides source;
    private final List<Question> questions;
    private final Set<Wanted> wanted = EnumSet.noneOf(Wanted.class);
    private final Runs.Progress progress;
    private final KeptRides kept;
    private final BooleanSupplier stop;
    private final AtomicLong done = new AtomicLong();
    private long of;
    private final int k;
    private int replaced;

    private WhyRun(
            SwappedRides source,
            List<Question> questions,
            Runs.Progress progress,
            KeptRides kept,
            BooleanSupplier stop) {
        this.kept = kept;
        this.stop = stop;
        this.source = source;
        this.questions = questions;
        this.progress = progress;
        questions.forEach(q -> wanted.addAll(q.measure().wanted()));
        k = source.swaps().size();
    }

    /** Was stopped before all was ridden. */
    public static final class Stopped extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    /**
     * Rides.
     *
     * @param draws N, ≥ 2
     * @param whole whether draws, too, are ridden in every choice, which gives shares intervals
     * @param kept what was ridden before, and where rides go
     * @param stop asked before each ride; once it says so no more are begun
     * @throws Stopped if it was
     * @throws UnfitValueException if there is no swap, or too many, if a swap as written makes no vehicle, or too many draws do not
     * @throws RideException if a choice as written cannot be ridden
     */
    public static WhyFindings run(
            SwappedRides source,
            List<Question> questions,
            int draws,
            boolean whole,
            Runs.Progress progress,
            KeptRides kept,
            BooleanSupplier stop) {
        int k = source.swaps().size();
        if (k < 1 || k > Choices.MOST) {
            throw new UnfitValueException("there must be from 1 to " + Choices.MOST + " swaps, got " + k);
        }
        return new WhyRun(source, questions, progress, kept, stop).ride(draws, whole);
    }

    private WhyFindings ride(int draws, boolean whole) {
        double[] asWritten = new double[source.uncertainValues()];
        int[] written = k <= Choices.MOST_WHOLE ? Choices.all(k) : Choices.pairs(k);
        int[] drawn = whole ? Choices.all(k) : Choices.pairs(k);
        of = written.length + (long) draws * drawn.length;
        List<String> tests = tests(source.ride(-1, asWritten, 0));
        WhyFindings.Known central = central(asWritten, written, tests.size());

        List<double[]> values = values(draws);
        WhyFindings.Known[] known =
                IntStream.range(0, draws).mapToObj(d -> unknown(tests.size())).toArray(WhyFindings.Known[]::new);
        Set<Integer> lost = ConcurrentHashMap.newKeySet();
        ConcurrentHashMap<Integer, String> why = new ConcurrentHashMap<>();
        IntStream.range(0, draws * drawn.length).parallel().forEach(task -> {
            if (stop.getAsBoolean()) {
                return;
            }
            int d = task / drawn.length;
            int choice = drawn[task % drawn.length];
            try {
                ride(d, values.get(d), choice, known[d]);
            } catch (UnfitValueException | RideException unfit) {
                lost.add(d);
                why.put(d, String.valueOf(unfit.getMessage()));
            }
            count();
        });
        refuseStopped();
        if (lost.size() > MOST_LOST * draws) {
            throw new UnfitValueException("of " + draws + " draws within the tolerances, " + lost.size()
                    + " cannot be ridden with every swap; make the tolerances narrower or leave a swap out. One was refused so: "
                    + why.get(lost.stream().sorted().findFirst().orElseThrow()));
        }
        List<WhyFindings.Known> kept = IntStream.range(0, draws)
                .filter(d -> !lost.contains(d))
                .mapToObj(d -> known[d])
                .toList();
        return answered(tests, central, kept, lost.size());
    }

    /** Draws of which the vehicle as it is can be. */
    private List<double[]> values(int draws) {
        NormalDraws normal = new NormalDraws(draws, source.uncertainValues(), SEED);
        List<double[]> values = new ArrayList<>();
        for (int d = 0; d < draws; d++) {
            double[] w = normal.draw(d);
            while (!canBe(d, w, draws)) {
                w = normal.another();
            }
            values.add(w);
        }
        return values;
    }

    private boolean canBe(int draw, double[] w, int draws) {
        try {
            source.ride(draw, w, 0);
            return true;
        } catch (UnfitValueException unfit) {
            replaced++;
            if (replaced > Math.max(FEWEST_TRIES, MOST_REPLACED * draws)) {
                UnfitValueException refusal = new UnfitValueException("of " + (replaced + draw)
                        + " vehicles drawn within the tolerances, " + replaced
                        + " cannot be; make the tolerances narrower. The last was refused so: " + unfit.getMessage());
                refusal.initCause(unfit);
                throw refusal;
            }
            return false;
        }
    }

    private WhyFindings.Known central(double[] asWritten, int[] choices, int tests) {
        WhyFindings.Known central = unknown(tests);
        // by itself first: who is refused must be told which swap did it
        for (int choice : choices) {
            if (Integer.bitCount(choice) < 2) {
                refuseStopped();
                named(asWritten, choice, central);
            }
        }
        Arrays.stream(choices)
                .parallel()
                .filter(choice -> Integer.bitCount(choice) >= 2)
                .filter(choice -> !stop.getAsBoolean())
                .forEach(choice -> named(asWritten, choice, central));
        refuseStopped();
        return central;
    }

    private void refuseStopped() {
        if (stop.getAsBoolean()) {
            throw new Stopped();
        }
    }

    private void named(double[] w, int choice, WhyFindings.Known into) {
        try {
            ride(-1, w, choice, into);
        } catch (RideException | UnfitValueException failed) {
            if (choice == 0) {
                throw failed;
            }
            throw new RideException("with " + names(choice) + " swapped the vehicle cannot ride: " + failed.getMessage()
                    + "; leave one of them out, or state another alternative");
        }
        count();
    }

    private String names(int choice) {
        return String.join(
                " and ",
                IntStream.range(0, k)
                        .filter(i -> (choice & 1 << i) != 0)
                        .mapToObj(i -> source.swaps().get(i).name())
                        .toList());
    }

    private void count() {
        progress.at(done.incrementAndGet(), of);
    }

    private WhyFindings.Known unknown(int tests) {
        double[][][] y = new double[tests][questions.size()][1 << k];
        for (double[][] test : y) {
            for (double[] question : test) {
                Arrays.fill(question, Double.NaN);
            }
        }
        return new WhyFindings.Known(y);
    }

    /** Each writes to its own place. */
    private void ride(int draw, double[] w, int choice, WhyFindings.Known into) {
        Scenario scenario = source.ride(draw, w, choice);
        long run = (draw + 1L) << k | choice;
        Outcome outcome = kept.of(run, scenario, () -> ridden(scenario));
        if (outcome.hasFailed()) {
            throw new RideException(outcome.reason());
        }
        for (int t = 0; t < outcome.tests().size(); t++) {
            for (int q = 0; q < questions.size(); q++) {
                into.y()[t][q][choice] = outcome.answer(t, q);
            }
        }
    }

    private Outcome ridden(Scenario scenario) {
        RideBench bench = new RideBench();
        List<Outcome.Line> lines = new ArrayList<>();
        try {
            for (RideBench.Test test : RideBench.tests(scenario)) {
                Measured measured = bench.measure(scenario, test, wanted);
                lines.add(new Outcome.Line(
                        NOT_LABELLED,
                        questions.stream().map(q -> q.of(measured)).toList(),
                        ""));
            }
        } catch (RideException gaveUp) {
            return Outcome.failed(String.valueOf(gaveUp.getMessage()));
        }
        return new Outcome(lines, "");
    }

    private static List<String> tests(Scenario scenario) {
        List<RideBench.Test> tests = RideBench.tests(scenario);
        boolean loads = tests.stream().map(t -> t.load().name()).distinct().count() > 1;
        boolean speeds = tests.stream().map(t -> t.plan().title()).distinct().count() > 1;
        return tests.stream()
                .map(t -> t.road().name()
                        + (speeds ? ", " + t.plan().title() : "")
                        + (loads ? ", " + t.load().name() : ""))
                .toList();
    }

    /** Without the questions to which the vehicle as written has no answer, or the answer 0, of which nothing is a part. */
    private WhyFindings answered(
            List<String> tests, WhyFindings.Known central, List<WhyFindings.Known> kept, int lost) {
        List<Integer> answered = IntStream.range(0, questions.size())
                .filter(q -> IntStream.range(0, tests.size())
                        .allMatch(t -> Double.isFinite(central.y()[t][q][0]) && central.y()[t][q][0] != 0))
                .boxed()
                .toList();
        List<WhyFindings.Known> draws = new ArrayList<>();
        kept.forEach(known -> draws.add(only(known, answered)));
        return new WhyFindings(
                source.swaps(),
                tests,
                answered.stream().map(questions::get).toList(),
                IntStream.range(0, questions.size())
                        .filter(q -> !answered.contains(q))
                        .mapToObj(questions::get)
                        .toList(),
                only(central, answered),
                draws,
                replaced,
                lost,
                source.uncertainValues());
    }

    private static WhyFindings.Known only(WhyFindings.Known known, List<Integer> questions) {
        return new WhyFindings.Known(Arrays.stream(known.y())
                .map(test -> questions.stream().map(q -> test[q]).toArray(double[][]::new))
                .toArray(double[][][]::new));
    }
}
