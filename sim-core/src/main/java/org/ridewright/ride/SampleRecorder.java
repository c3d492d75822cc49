package org.ridewright.ride;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ridewright.signal.Channel;
import org.ridewright.solver.Step;
import org.ridewright.solver.StepListener;

/** Keeps every sample of read-offs. */
final class SampleRecorder implements StepListener {
    /** Room for any read-off's polynomial. */
    static final int ROOM = EvenSampler.ROOM;

    private final List<? extends ReadOff> readOffs;
    private final double rate;
    private final EvenSampler sampler;
    private final double[][] samples;
    private int next;

    SampleRecorder(List<? extends ReadOff> readOffs, double rate, double duration) {
        this.readOffs = List.copyOf(readOffs);
        this.rate = rate;
        samples = new double[readOffs.size()][Math.toIntExact(EvenSampler.count(rate, duration))];
        sampler = new EvenSampler(readOffs, rate, duration, this::keep);
    }

    private void keep(double[] values) {
        for (int r = 0; r < samples.length; r++) {
            samples[r][next] = values[r];
        }
        next++;
    }

    @Override
    public void step(Step step) {
        sampler.step(step);
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
