package org.ridewright.bounce;

import java.util.stream.IntStream;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;
import org.ridewright.solver.Step;
import org.ridewright.solver.StepListener;

/** From when on every spring's friction holds until the end, and for how long it held in all. */
final class LockWatch implements StepListener {
    private final int[] rubbing;
    private double offset;
    private double since = Double.NaN;
    private double held;
    private boolean slid;

    LockWatch(Equations equations) {
        rubbing = IntStream.range(0, equations.elements().size())
                .filter(e -> isSpring(equations.elements().get(e)))
                .toArray();
    }

    private static boolean isSpring(Element element) {
        return (element.kind() == Element.Kind.SPRING || element.kind() == Element.Kind.LINKAGE)
                && element.law().friction().states() > 0
                && !element.law().friction().isEnvelope();
    }

    /** Time of the next run's beginning, which its steps count from. */
    void beginAt(double time) {
        offset = time;
    }

    @Override
    public void step(Step step) {
        boolean locked = rubbing.length > 0;
        for (int e : rubbing) {
            locked &= step.isLocked(e);
        }
        if (!locked) {
            since = Double.NaN;
            slid |= rubbing.length > 0;
            return;
        }
        held += step.duration();
        if (Double.isNaN(since)) {
            since = offset + step.start();
        }
    }

    /** Time for which all were locked (s). */
    double held() {
        return held;
    }

    /** Whether any has slid at all. */
    boolean slid() {
        return slid;
    }

    /** Time since which all have been locked (s); NaN where some slides at the end, or none has sliders. */
    double since() {
        return since;
    }
}
