package org.ridewright.study;

import java.io.IOException;
import java.nio.file.Path;
import java.util.BitSet;
import java.util.List;

/**
 * The finished runs of a study in one journal or several, read in the order of their numbers with memory for a stretch of them at a time.
 */
public final class Finished {
    /** Runs held at a time. */
    private static final int STRETCH = 10_000;

    private final List<Path> journals;
    private final Schedule schedule;
    private final RunKeys keys;

    /** @param journals those that are not there are empty */
    public Finished(Study study, List<Path> journals) {
        this.journals = List.copyOf(journals);
        schedule = study.schedule();
        keys = new RunKeys(study);
    }

    /** Which runs there are; those that a defect of the program ended are to be ridden again. */
    public BitSet runs() throws IOException {
        return runs(false);
    }

    /** Which runs there are, those that a defect ended included. */
    public BitSet runsWithDefects() throws IOException {
        return runs(true);
    }

    private BitSet runs(boolean withDefects) throws IOException {
        BitSet done = new BitSet();
        for (Path journal : journals) {
            Journal.read(journal, (run, key, outcome) -> {
                boolean isNew = run < schedule.size() && !done.get((int) run) && isOf(run, key);
                if (isNew && (withDefects || !outcome.get().isDefect())) {
                    done.set((int) run);
                }
            });
        }
        return done;
    }

    private boolean isOf(long run, String key) {
        return keys.of(schedule.trial(run)).equals(key);
    }

    /** Takes one run after another. */
    @FunctionalInterface
    public interface Taker {
        void take(Trial trial, Outcome outcome) throws IOException;
    }

    /**
     * Hands over every run, in order.
     *
     * @throws IllegalStateException if one is missing
     */
    public void inOrder(Taker taker) throws IOException {
        for (long from = 0; from < schedule.size(); from += STRETCH) {
            int length = (int) Math.min(STRETCH, schedule.size() - from);
            long first = from;
            Outcome[] stretch = new Outcome[length];
            for (Path journal : journals) {
                Journal.read(journal, (run, key, outcome) -> {
                    if (run >= first
                            && run < first + length
                            && (stretch[(int) (run - first)] == null || stretch[(int) (run - first)].isDefect())
                            && isOf(run, key)) {
                        stretch[(int) (run - first)] = outcome.get();
                    }
                });
            }
            for (int i = 0; i < length; i++) {
                if (stretch[i] == null) {
                    throw new IllegalStateException("run " + (first + i) + " is missing");
                }
                taker.take(schedule.trial(first + i), stretch[i]);
            }
        }
    }
}
