package org.ridewright.solver;

/** Takes what it wants from each step of a run. */
@FunctionalInterface
public interface StepListener {
    /** Called once per step, in order of time; the step is valid during the call only. */
    void step(Step step);
}
