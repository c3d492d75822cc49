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

/**
 * Rides a search: its runs are numbered as they are asked for, run 0 is the scenario as written, and those that the journal has are not ridden again.
 * What is sought is the first question's answer, the worst of all ride tests of the scenario.
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
     * @param worth answer to the first question, worst of all ride tests; NaN where a ride failed
     */
    public record Step(Trial trial, double[] shares, Outcome outcome, double worth) {}

    /**
     * @param way all runs, in order
     * @param found where it ended
     * @param best the step that it ended with; −1 if there is none
     */
    public record Result(List<Step> way, Search.Found found, int best) {
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
            Search search = new Search(points -> worth(crew, bench, points), method.runs());
            Search.Found found = found(search);
            return new Result(path, found, bestStep(found));
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
        if (method.target().isEmpty()) {
            return search.least(n, method.seed());
        }
        double target = method.target().get();
        return n == 1 ? search.meeting(target) : search.nearest(n, target, method.seed());
    }

    private int bestStep(Search.Found found) {
        for (int i = 0; i < path.size(); i++) {
            if (found.best().length > 0 && Arrays.equals(path.get(i).shares(), found.best())) {
                return i;
            }
        }
        return -1;
    }

    private double[] worth(ExecutorService crew, ThreadLocal<Bench> bench, List<double[]> points) {
        List<Trial> trials = new ArrayList<>();
        for (double[] shares : points) {
            long run = path.size() + trials.size();
            trials.add(Schedules.at(run, "search", study.variants().get(0), method.factors(), shares));
        }
        int from = path.size();
        try {
            ride(crew, bench, trials, points);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        boolean sign = method.target().isPresent() || method.least();
        return path.subList(from, path.size()).stream()
                .mapToDouble(step -> sign ? step.worth() : -step.worth())
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
            path.add(new Step(trials.get(i), points.get(i).clone(), outcome, worth(outcome)));
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

    /** The worst over all ride tests; none if one of them failed. */
    private double worth(Outcome outcome) {
        if (outcome.hasFailed() || outcome.tests().isEmpty()) {
            return Double.NaN;
        }
        return study.questions()
                .get(0)
                .measure()
                .worst(outcome.tests().stream()
                        .map(line -> line.answer(0))
                        .filter(v -> !Double.isNaN(v))
                        .toList());
    }
}
