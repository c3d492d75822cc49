package org.ridewright.ride;

import java.util.Arrays;
import java.util.List;
import org.ridewright.solver.Step;
import org.ridewright.solver.StepListener;

/** Reads off at an even rate, from time 0 to the end of a run, and hands each instant's values on; at a jump the right-hand ones. */
final class EvenSampler implements StepListener {
    /** Room for any read-off's polynomial. */
    static final int ROOM = 40;

    private final ReadOff[] readOffs;
    private final double rate;
    private final double duration;
    private final long count;
    private final Sink sink;
    private final double[][] work;
    private final int[] degree;
    private final double[] values;
    private long next;

    /** Takes the values of one instant; the array is used again for the next. */
    @FunctionalInterface
    interface Sink {
        void accept(double[] values);
    }

    EvenSampler(List<? extends ReadOff> readOffs, double rate, double duration, Sink sink) {
        this.readOffs = readOffs.toArray(ReadOff[]::new);
        this.rate = rate;
        this.duration = duration;
        this.sink = sink;
        count = count(rate, duration);
        work = new double[this.readOffs.length][ROOM];
        degree = new int[this.readOffs.length];
        values = new double[this.readOffs.length];
    }

    /** Number of samples of a run. */
    static long count(double rate, double duration) {
        return (long) Math.floor(duration * rate + 1e-9) + 1;
    }

    @Override
    public void step(Step step) {
        double finish = step.start() + step.duration();
        // The last instant belongs to the last step, on which the run ends.
        boolean last = finish >= duration * (1 - 1e-12);
        if (next >= count || !(last || next / rate < finish) || readOffs.length == 0) {
            return;
        }
        for (int r = 0; r < readOffs.length; r++) {
            Arrays.fill(work[r], 0);
            degree[r] = readOffs[r].polynomial(step, work[r]);
        }
        while (next < count && (last || next / rate < finish)) {
            double tau = Math.max(0, (next / rate - step.start()) / step.h());
            for (int r = 0; r < readOffs.length; r++) {
                double sum = 0;
                for (int k = degree[r]; k >= 0; k--) {
                    sum = sum * tau + work[r][k];
                }
                values[r] = sum;
            }
            sink.accept(values);
            next++;
        }
    }
}
