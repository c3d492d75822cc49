package org.ridewright.study;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * Rides a search: its runs are numbered as they are asked for, run 0 is the scenario as written, and those that the journal has are not ridden again.
 * A run counts as far as the ride tests of what is sought, and of the limits, could be ridden.
 */
public final class SearchRun {
    private final Study study;
    private final Method.Search method;
    private final Supplier<Bench> benches;
    private final Journal journal;
    private final RunKeys keys;
    private final Map<String, Outcome> known = new HashMap<>();
    private final List<Step> path = new ArrayList<>();
    private final Runs.Progress progress;
    private final BooleanSupplier stop;

    /** Thrown when the search is to end before its time. */
    public static final class Stopped extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    /**
     * One run on the way.
     *
     * @param shares of the ranges; empty for the scenario as written
     * @param worth what is sought, of the worst of its ride tests; NaN where one could not be ridden
     * @param limited the answer that decides on each limit; NaN where one could not be ridden
     * @param keeps whether there is a worth and all limits are kept
     */
    public record Step(
            Trial trial, double[] shares, Outcome outcome, double worth, List<Double> limited, boolean keeps) {
        public Step {
            limited = List.copyOf(limited);
        }

        /** Why it could not be ridden in full; empty if it could. */
        public String reason() {
            return outcome.reason();
        }
    }

    /**
     * How it ended.
     *
     * @param way all runs, in order; the first is the scenario as written
     * @param best number of the run with which it ended: the best that keeps the limits, or, if none does, the one that breaks them least; −1 if
     *     none could be ridden
     * @param settled whether the search ended by itself, with a change of sign enclosed where a target is sought
     */
    public record Result(List<Step> way, int best, boolean settled) {
        public Result {
            way = List.copyOf(way);
        }
    }

    public SearchRun(Study study, Path file, Journal journal, Runs.Progress progress, BooleanSupplier stop)
            throws IOException {
        this(study, () -> new StudyBench(study), file, journal, progress, stop);
    }

    SearchRun(
            Study study,
            Supplier<Bench> benches,
            Path file,
            Journal journal,
            Runs.Progress progress,
            BooleanSupplier stop)
            throws IOException {
        this.study = study;
        method = (Method.Search) study.method();
        this.benches = benches;
        this.journal = journal;
        this.progress = progress;
        this.stop = stop;
        keys = new RunKeys(study);
        Journal.read(file, (run, key, outcome) -> {
            if (run <= method.runs()) {
                known.put(run + " " + key, outcome.get());
            }
        });
    }

    /**
     * Searches to the end.
     *
     * @throws Stopped if it was to stop before
     * @throws IOException if a run could not be kept
     */
    public Result run(int threads) throws IOException {
        ThreadLocal<Bench> bench = ThreadLocal.withInitial(benches);
        ExecutorService crew = Executors.newFixedThreadPool(threads, task -> {
            Thread thread = new Thread(task, "study");
            thread.setDaemon(true);
            return thread;
        });
        try {
            ride(crew, bench, List.of(study.schedule().trial(0)), List.of(new double[0]));
            Search search = new Search(points -> tried(crew, bench, points), method.looks(), method.runs());
            Search.Found found = found(search);
            return new Result(path, bestStep(found), found.settled());
        } catch (UncheckedIOException e) {
            throw e.getCause();
        } finally {
            // not interrupted: a run that is being kept is to be kept whole
            finish(crew);
        }
    }

    private static void finish(ExecutorService crew) {
        crew.shutdown();
        try {
            crew.awaitTermination(1, TimeUnit.MINUTES);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private Search.Found found(Search search) {
        int n = method.factors().size();
        if (method.sought().target().isEmpty()) {
            return search.least(n, method.seed());
        }
        double target = method.sought().target().get();
        return n == 1 ? search.meeting(target) : search.nearest(n, target, method.seed());
    }

    private int bestStep(Search.Found found) {
        for (int i = 1; found.best().isPresent() && i < path.size(); i++) {
            if (Arrays.equals(path.get(i).shares(), found.best().get().at())) {
                return i;
            }
        }
        return -1;
    }

    private List<Tried> tried(ExecutorService crew, ThreadLocal<Bench> bench, List<double[]> points) {
        List<Trial> trials = new ArrayList<>();
        for (double[] shares : points) {
            long run = (long) path.size() + trials.size();
            trials.add(Schedules.at(run, "search", study.variants().get(0), method.factors(), shares));
        }
        int from = path.size();
        try {
            ride(crew, bench, trials, points);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        boolean sign = method.sought().target().isPresent() || method.sought().least();
        return path.subList(from, path.size()).stream()
                .map(step -> new Tried(step.shares(), sign ? step.worth() : -step.worth(), excess(step.limited())))
                .toList();
    }

    private double[] excess(List<Double> limited) {
        return IntStream.range(0, limited.size())
                .mapToDouble(i -> method.limits().get(i).excess(limited.get(i)))
                .toArray();
    }

    private void ride(ExecutorService crew, ThreadLocal<Bench> bench, List<Trial> trials, List<double[]> points)
            throws IOException {
        List<Future<Outcome>> tasks = new ArrayList<>();
        for (Trial trial : trials) {
            Outcome before = known.get(trial.run() + " " + keys.of(trial));
            tasks.add(crew.submit(() -> before != null ? before : fresh(trial, bench.get())));
        }
        for (int i = 0; i < tasks.size(); i++) {
            Outcome outcome = result(tasks.get(i));
            path.add(step(trials.get(i), points.get(i).clone(), outcome));
            progress.at(path.size(), method.runs() + 1L);
        }
        journal.force();
    }

    private Outcome fresh(Trial trial, Bench bench) throws IOException {
        if (stop.getAsBoolean()) {
            throw new Stopped();
        }
        Outcome outcome = bench.ride(trial);
        journal.add(trial.run(), keys.of(trial), outcome);
        return outcome;
    }

    private static Outcome result(Future<Outcome> task) throws IOException {
        try {
            return task.get();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof IOException io) {
                throw io;
            } else if (e.getCause() instanceof RuntimeException unchecked) {
                throw unchecked;
            } else if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Stopped();
        }
    }

    private Step step(Trial trial, double[] shares, Outcome outcome) {
        Asked asked = method.sought().asked();
        double worth =
                asked.worst(outcome, study.questions().get(asked.question()).measure());
        List<Double> limited =
                method.limits().stream().map(l -> l.decisive(outcome)).toList();
        return new Step(trial, shares, outcome, worth, limited, new Tried(shares, worth, excess(limited)).keeps());
    }
}
