package org.ridewright.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;

/** Lets a study end in order when it is interrupted (Ctrl-C): runs that are under way are finished and kept, as far as that takes seconds. */
final class Interruption implements AutoCloseable {
    private static final long PATIENCE = 5;

    private final AtomicBoolean stop = new AtomicBoolean();
    private final CountDownLatch ended = new CountDownLatch(1);
    private final Thread hook;

    /** @param then run on the way out, once the study has ended or its time is up */
    Interruption(Runnable then) {
        hook = new Thread(() -> {
            stop.set(true);
            try {
                ended.await(PATIENCE, TimeUnit.SECONDS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            then.run();
        });
        Runtime.getRuntime().addShutdownHook(hook);
    }

    boolean isStopping() {
        return stop.get();
    }

    /** The study has ended: there is nothing to wait for. */
    @Override
    public void close() {
        ended.countDown();
        if (!stop.get()) {
            try {
                Runtime.getRuntime().removeShutdownHook(hook);
            } catch (IllegalStateException onTheWayOut) {
                return;
            }
        }
    }
}
