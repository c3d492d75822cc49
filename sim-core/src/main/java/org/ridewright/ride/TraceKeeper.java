package org.ridewright.ride;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.signal.Channel;
import org.ridewright.solver.Step;
import org.ridewright.solver.StepListener;

/**
 * Traces of a run: whole ones of a short run; of a long one the stretch around the greatest size of the read-offs by which it is judged,
 * in memory that does not grow with the run.
 *
 * <p>A long run is cut in chunks; those before, with and after the greatest value stay.
 */
final class TraceKeeper implements StepListener {
    /** Runs up to this long are kept whole (s). */
    static final double WHOLE = 40;
    /** Length of a chunk of a longer one (s). */
    private static final double CHUNK = 8;

    private final List<? extends ReadOff> readOffs;
    private final int[] judges;
    private final double rate;
    private final EvenSampler sampler;
    private final int chunkLength;
    private Chunk before;
    private Chunk current;
    private List<Chunk> best = List.of();
    private double greatest = -1;
    private boolean waiting;

    /** Samples from one instant on. */
    private static final class Chunk {
        final long first;
        final double[][] samples;
        int filled;
        double greatest;

        Chunk(long first, double[][] room) {
            this.first = first;
            samples = room;
        }
    }

    /** @param judges numbers of the read-offs whose greatest size is looked for */
    TraceKeeper(List<? extends ReadOff> readOffs, int[] judges, double rate, double duration) {
        this.readOffs = List.copyOf(readOffs);
        this.judges = judges.clone();
        this.rate = rate;
        long count = EvenSampler.count(rate, duration);
        chunkLength = duration <= WHOLE ? Math.toIntExact(count) : (int) Math.ceil(CHUNK * rate);
        current = new Chunk(0, new double[readOffs.size()][chunkLength]);
        sampler = new EvenSampler(readOffs, rate, duration, this::keep);
    }

    @Override
    public void step(Step step) {
        sampler.step(step);
    }

    private void keep(double[] values) {
        if (current.filled == chunkLength) {
            finish();
        }
        for (int r = 0; r < values.length; r++) {
            current.samples[r][current.filled] = values[r];
        }
        current.filled++;
        for (int judge : judges) {
            current.greatest = Math.max(current.greatest, Math.abs(values[judge]));
        }
    }

    /** Begins a new chunk, in the memory of one that is not wanted any more. */
    private void finish() {
        judge();
        boolean spare = before != null && !best.contains(before);
        double[][] room = spare ? before.samples : new double[readOffs.size()][chunkLength];
        before = current;
        current = new Chunk(current.first + current.filled, room);
    }

    private void judge() {
        if (current.greatest > greatest) {
            greatest = current.greatest;
            best = before == null ? List.of(current) : List.of(before, current);
            waiting = true;
        } else if (waiting) {
            best = new ArrayList<>(best);
            best.add(current);
            waiting = false;
        }
    }

    /** What was kept. */
    List<Channel> channels() {
        if (current.filled > 0) {
            judge();
        }
        int total = best.stream().mapToInt(c -> c.filled).sum();
        List<Channel> result = new ArrayList<>();
        for (int r = 0; r < readOffs.size(); r++) {
            double[] values = new double[total];
            int at = 0;
            for (Chunk chunk : best) {
                System.arraycopy(chunk.samples[r], 0, values, at, chunk.filled);
                at += chunk.filled;
            }
            result.add(new Channel(
                    readOffs.get(r).name(), readOffs.get(r).unit(), rate, best.get(0).first / rate, values));
        }
        return result;
    }
}
