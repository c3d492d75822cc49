package org.ridewright.yardstick;

import org.ridewright.solver.Step;
import org.ridewright.solver.StepListener;

/** The body's vertical acceleration at even instants, into an array. */
final class SampledAcceleration implements StepListener {
    private final double[] trace;
    private final double interval;
    private int next;

    SampledAcceleration(double[] trace, double interval) {
        this.trace = trace;
        this.interval = interval;
    }

    @Override
    public void step(Step step) {
        double end = step.start() + step.duration();
        while (next < trace.length && next * interval < end) {
            trace[next] = step.acceleration(0, (next * interval - step.start()) / step.h());
            next++;
        }
    }
}
