package org.ridewright.cli;

import java.io.PrintWriter;
import java.time.Duration;
import java.util.function.LongSupplier;
import org.ridewright.study.Runs;

/** One line at a terminal that says how far a study is and how long it will take, drawn anew a few times a second. */
final class ProgressLine implements Runs.Progress {
    private static final int WIDTH = 30;
    private static final long BETWEEN = 200_000_000L;
    /** Time after which the pace is believed (ns). */
    private static final long WARM = 1_000_000_000L;

    private final PrintWriter out;
    private final LongSupplier clock;
    private long begun = -1;
    private long already;
    private long drawn;
    private int length;

    /** @param clock in nanoseconds */
    ProgressLine(PrintWriter out, LongSupplier clock) {
        this.out = out;
        this.clock = clock;
    }

    @Override
    public synchronized void at(long done, long of) {
        long now = clock.getAsLong();
        if (begun < 0) {
            begun = now;
            already = done;
        } else if (done < of && now - drawn < BETWEEN) {
            return;
        }
        drawn = now;
        int full = (int) (of == 0 ? WIDTH : WIDTH * done / of);
        draw("[" + "#".repeat(full) + " ".repeat(WIDTH - full) + "] " + done + " of " + of + " runs"
                + left(done, of, now));
    }

    private String left(long done, long of, long now) {
        long spent = now - begun;
        long own = done - already;
        if (done == of || own == 0 || spent < WARM) {
            return "";
        }
        Duration rest = Duration.ofNanos((long) ((double) spent / own * (of - done)));
        return ", " + words(rest) + " left";
    }

    /** To the second below a minute, to the minute below an hour. */
    static String words(Duration rest) {
        long seconds = rest.toSeconds() + 1;
        if (seconds < 60) {
            return seconds + " s";
        }
        long minutes = (seconds + 59) / 60;
        return minutes < 60 ? minutes + " min" : minutes / 60 + " h " + minutes % 60 + " min";
    }

    private void draw(String text) {
        out.print("\r" + text + " ".repeat(Math.max(0, length - text.length())));
        out.flush();
        length = text.length();
    }

    /** Wipes the line. */
    synchronized void clear() {
        if (length > 0) {
            out.print("\r" + " ".repeat(length) + "\r");
            out.flush();
            length = 0;
        }
    }
}
