package org.ridewright.yardstick;

import org.ridewright.solver.Step;
import org.ridewright.solver.StepListener;

/** Keeps the body's accelerations at every millisecond, right-hand limits, and compares them with the reference. */
final class BodyAccelerations implements StepListener {
    private static final int BODY = 3;
    /** Samples closer than this to the step's beginning are at it (s). */
    private static final double SAME_INSTANT = 1e-12;

    private final YardstickProblem problem;
    private final double[] trace;
    private int next;

    BodyAccelerations(YardstickProblem problem) {
        this.problem = problem;
        trace = new double[problem.samples() * BODY];
    }

    void begin() {
        next = 0;
    }

    @Override
    public void step(Step step) {
        double end = step.start() + step.duration();
        boolean last = end >= problem.problem().duration() - SAME_INSTANT;
        while (next < problem.samples()) {
            double time = next * problem.interval();
            if (time >= end - SAME_INSTANT && !last) {
                return;
            }
            double since = time - step.start();
            double tau = since < SAME_INSTANT ? 0 : since / step.h();
            for (int i = 0; i < BODY; i++) {
                trace[next * BODY + i] = step.acceleration(i, tau);
            }
            next++;
        }
    }

    /** r.m.s. of the difference over r.m.s., the worst of the body's coordinates. */
    double error() {
        double worst = 0;
        for (int i = 0; i < BODY; i++) {
            double difference = 0;
            double size = 0;
            for (int k = 0; k < problem.samples(); k++) {
                double expected = problem.reference()[k * problem.coordinates() + i];
                double d = trace[k * BODY + i] - expected;
                difference += d * d;
                size += expected * expected;
            }
            worst = Math.max(worst, Math.sqrt(difference / size));
        }
        return worst;
    }
}
