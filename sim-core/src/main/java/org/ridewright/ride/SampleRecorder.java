package org.ridewright.ride;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ridewright.signal.Channel;
import org.ridewright.solver.Step;
import org.ridewright.solver.StepListener;

/** Samples read-offs at an even rate; at a jump the right-hand value. */
final class SampleRecorder implements StepListener {
    /** Room for any read-off's polynomial. */
    static final int ROOM = 40;

    private final List<? extends ReadOff> readOffs;
    private final double rate;
    private final double duration;
    private final double[][] samples;
    private final double[] work = new double[ROOM];
    private int next;

    SampleRecorder(List<? extends ReadOff> readOffs, double rate, double duration) {
        this.readOffs = List.copyOf(readOffs);
        this.rate = rate;
        this.duration = duration;
        int count = (int) Math.floor(duration * rate + 1e-9) + 1;
        samples = new double[readOffs.size()][count];
    }

    @Override
    public void step(Step step) {
        double finish = step.start() + step.duration();
        // The last instant belongs to the last step, on which the run ends.
        boolean last = finish >= duration * (1 - 1e-12);
        int first = next;
        while (next < samples0() && (last || next / rate < finish)) {
            next++;
        }
        fill(step, first, next);
    }

    private int samples0() {
        return samples.length == 0 ? 0 : samples[0].length;
    }

    private void fill(Step step, int from, int to) {
        if (from == to) {
            return;
        }
        for (int r = 0; r < samples.length; r++) {
            Arrays.fill(work, 0);
            int degree = readOffs.get(r).polynomial(step, work);
            for (int i = from; i < to; i++) {
                double tau = Math.max(0, (i / rate - step.start()) / step.h());
                double sum = 0;
                for (int k = degree; k >= 0; k--) {
                    sum = sum * tau + work[k];
                }
                samples[r][i] = sum;
            }
        }
    }

    List<Channel> channels() {
        List<Channel> result = new ArrayList<>();
        for (int r = 0; r < samples.length; r++) {
            double[] values = samples[r];
            if (next < values.length && next > 0) {
                values = values.clone();
                Arrays.fill(values, next, values.length, values[next - 1]);
            }
            result.add(new Channel(readOffs.get(r).name(), readOffs.get(r).unit(), rate, 0, values));
        }
        return result;
    }
}
