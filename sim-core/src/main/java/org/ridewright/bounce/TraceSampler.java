package org.ridewright.bounce;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.signal.Channel;
import org.ridewright.solver.Step;
import org.ridewright.solver.StepListener;

/** Samples readings at an even rate over runs that follow one another. */
final class TraceSampler implements StepListener {
    private final List<BodyReading> readings;
    private final double rate;
    private final double begin;
    private final List<List<Double>> samples = new ArrayList<>();
    private final double[] work = new double[BodyReading.ROOM];
    private double offset;

    /** @param begin instant of the first sample (s) */
    TraceSampler(List<BodyReading> readings, double rate, double begin) {
        this.readings = readings;
        this.rate = rate;
        this.begin = begin;
        offset = begin;
        readings.forEach(r -> samples.add(new ArrayList<>()));
    }

    /** Time of the next run's beginning, which its steps count from. */
    void beginAt(double time) {
        offset = time;
    }

    @Override
    public void step(Step step) {
        double from = offset + step.start();
        double to = from + step.duration();
        for (int r = 0; r < readings.size(); r++) {
            List<Double> own = samples.get(r);
            int degree = -1;
            for (double t = begin + own.size() / rate; t < to; t = begin + own.size() / rate) {
                if (degree < 0) {
                    degree = readings.get(r).value(step, work);
                }
                own.add(BodyReading.polynomial(work, degree, Math.max(0, (t - from) / step.h())));
            }
        }
    }

    /** What was sampled, one channel to a reading. */
    List<Channel> channels() {
        List<Channel> channels = new ArrayList<>();
        for (int r = 0; r < readings.size(); r++) {
            Motion motion = readings.get(r).motion();
            double[] values =
                    samples.get(r).stream().mapToDouble(Double::doubleValue).toArray();
            channels.add(new Channel(motion.title(), motion.unit(), rate, begin, values));
        }
        return List.copyOf(channels);
    }
}
