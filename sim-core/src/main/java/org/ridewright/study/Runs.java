package org.ridewright.study;

import java.io.IOException;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/**
 * Rides what is missing of a study on several threads. What is handed out are chunks of a fixed number of runs; what a run gives does not depend on
 * who rides it, nor when.
 */
public final class Runs {
    /** Runs of a chunk, after which the journal is forced to the disk. */
    private static final int CHUNK = 16;

    private Runs() {}

    /** Is told how far things are; from several threads, one at a time. */
    @FunctionalInterface
    public interface Progress {
        /** Nobody is told. */
        Progress SILENT = (done, of) -> {};

        /**
         * @param done finished runs of the part, those of earlier sessions included
         * @param of all its runs
         */
        void at(long done, long of);
    }

    /**
     * Rides every run of a part that is not done.
     *
     * @param stop asked before each run; once it says so no more are begun
     * @return whether all are done
     * @throws IOException if a run could not be kept; what was kept before is whole
     */
    public static boolean ride(
            Study study, Part part, BitSet done, Journal journal, int threads, Progress progress, BooleanSupplier stop)
            throws IOException {
        return ride(study, () -> new StudyBench(study), part, done, journal, threads, progress, stop);
    }

    /** As the other, on other benches. */
    static boolean ride(
            Study study,
            Supplier<Bench> benches,
            Part part,
            BitSet done,
            Journal journal,
            int threads,
            Progress progress,
            BooleanSupplier stop)
            throws IOException {
        Session session = new Session(study, part, done, journal, progress, stop);
        List<Thread> crew = new ArrayList<>();
        for (int i = 0; i < threads; i++) {
            Thread thread = new Thread(() -> session.work(benches), "study-" + i);
            thread.setDaemon(true);
            crew.add(thread);
        }
        session.tell();
        crew.forEach(Thread::start);
        for (Thread thread : crew) {
            join(thread, session);
        }
        return session.ended();
    }

    private static void join(Thread thread, Session session) {
        try {
            thread.join();
        } catch (InterruptedException interrupted) {
            session.failure.compareAndSet(null, interrupted);
            Thread.currentThread().interrupt();
        }
    }

    /** What the threads share. */
    private static final class Session {
        private final Study study;
        private final Part part;
        private final BitSet done;
        private final Journal journal;
        private final Progress progress;
        private final BooleanSupplier stop;
        private final long size;
        private final AtomicLong nextChunk = new AtomicLong();
        private final AtomicReference<Throwable> failure = new AtomicReference<>();
        private long finished;

        Session(Study study, Part part, BitSet done, Journal journal, Progress progress, BooleanSupplier stop) {
            this.study = study;
            this.part = part;
            this.done = (BitSet) done.clone();
            this.journal = journal;
            this.progress = progress;
            this.stop = stop;
            size = part.size(study.schedule().size());
            for (long i = 0; i < size; i++) {
                finished += this.done.get((int) part.run(i)) ? 1 : 0;
            }
        }

        void work(Supplier<Bench> benches) {
            try {
                Schedule schedule = study.schedule();
                RunKeys keys = new RunKeys(study);
                Bench bench = benches.get();
                for (long chunk = nextChunk.getAndIncrement();
                        chunk * CHUNK < size;
                        chunk = nextChunk.getAndIncrement()) {
                    chunk(chunk, schedule, keys, bench);
                }
            } catch (Throwable thrown) {
                // what ends one thread ends the study, plainly
                failure.compareAndSet(null, thrown);
            }
        }

        private void chunk(long chunk, Schedule schedule, RunKeys keys, Bench bench) throws IOException {
            boolean any = false;
            for (long i = chunk * CHUNK; i < Math.min(size, (chunk + 1) * CHUNK); i++) {
                long run = part.run(i);
                if (done.get((int) run)) {
                    continue;
                }
                if (failure.get() != null || stop.getAsBoolean()) {
                    break;
                }
                Trial trial = schedule.trial(run);
                journal.add(run, keys.of(trial), bench.ride(trial));
                any = true;
                count();
            }
            if (any) {
                journal.force();
            }
        }

        private synchronized void count() {
            finished++;
            tell();
        }

        synchronized void tell() {
            progress.at(finished, size);
        }

        synchronized boolean ended() throws IOException {
            Throwable thrown = failure.get();
            if (thrown instanceof IOException io) {
                throw io;
            } else if (thrown instanceof RuntimeException unchecked) {
                throw unchecked;
            } else if (thrown instanceof Error error) {
                throw error;
            }
            return finished == size;
        }
    }
}
