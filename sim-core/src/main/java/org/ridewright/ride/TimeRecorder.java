package org.ridewright.ride;

import java.util.Arrays;
import java.util.Optional;
import org.ridewright.dynamics.Equations;
import org.ridewright.solver.Step;
import org.ridewright.solver.StepListener;

/** How long each element was off, locked or past each of its stages, and the impulse of the draught. */
final class TimeRecorder implements StepListener {
    /** Time in which nobody pulls harder (s). */
    private static final double SPELL = 2;

    private static final int PARTS = 8;

    private final double[] off;
    private final double[] locked;
    private final double[][] stageOn;
    private final Optional<Draught> draught;
    private final double[] work = new double[SampleRecorder.ROOM];
    private double impulse;
    /** Impulse at the beginning of each of the last eighths of a spell, as a ring. */
    private final double[] earlier = new double[PARTS];

    private double nextPart;
    private int part;
    private double greatestImpulse;

    /** @param draught whose impulse is kept; absent: it is not */
    TimeRecorder(Equations equations, Optional<Draught> draught) {
        int count = equations.elements().size();
        off = new double[count];
        locked = new double[count];
        stageOn = new double[count][];
        for (int e = 0; e < count; e++) {
            stageOn[e] =
                    new double[equations.elements().get(e).law().allStages().count()];
        }
        this.draught = draught;
    }

    @Override
    public void step(Step step) {
        double dt = step.duration();
        for (int e = 0; e < off.length; e++) {
            if (step.isOff(e)) {
                off[e] += dt;
            }
            if (step.isLocked(e)) {
                locked[e] += dt;
            }
            for (int p = 0; p < stageOn[e].length; p++) {
                if (step.isStageOn(e, p)) {
                    stageOn[e][p] += dt;
                }
            }
        }
        draught.ifPresent(d -> impulse(d, step));
    }

    private void impulse(Draught pull, Step step) {
        Arrays.fill(work, 0);
        int degree = pull.polynomial(step, work);
        double power = step.end();
        double sum = 0;
        for (int k = 0; k <= degree; k++) {
            sum += work[k] * power / (k + 1);
            power *= step.end();
        }
        impulse += sum * step.h();
        for (double before : earlier) {
            greatestImpulse = Math.max(greatestImpulse, Math.abs(impulse - before));
        }
        while (step.start() + step.duration() >= nextPart) {
            part = (part + 1) % PARTS;
            earlier[part] = impulse;
            nextPart += SPELL / PARTS;
        }
    }

    double off(int element) {
        return off[element];
    }

    double locked(int element) {
        return locked[element];
    }

    double stageOn(int element, int stage) {
        return stageOn[element][stage];
    }

    /** Greatest size of the draught's impulse over any spell of {@value #SPELL} s (N·s): longer ones the pull makes good. */
    double greatestImpulse() {
        return greatestImpulse;
    }
}
