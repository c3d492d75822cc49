package org.ridewright.bounce;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;
import org.ridewright.solver.Step;
import org.ridewright.solver.StepListener;

/** When friction holds every spring, and when some spring slides. */
final class LockWatch implements StepListener {
    /** Share of the time for which some spring may slide while all count as held: at most turns of a tremor it slides for a moment. */
    private static final double MOMENTS = 0.05;

    private final int[] rubbing;
    private double offset;
    private double now;
    /** Beginnings and ends of the intervals in which some spring slides. */
    private final List<double[]> slides = new ArrayList<>();

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
        double from = offset + step.start();
        now = from + step.duration();
        boolean locked = true;
        for (int e : rubbing) {
            locked &= step.isLocked(e);
        }
        if (locked) {
            return;
        }
        double[] last = slides.isEmpty() ? null : slides.get(slides.size() - 1);
        if (last != null && last[1] >= from - 1e-12) {
            last[1] = now;
        } else {
            slides.add(new double[] {from, now});
        }
    }

    /** Whether any has slid at all. */
    boolean slid() {
        return !slides.isEmpty();
    }

    /**
     * Time since which friction has held every spring, but for at most a twentieth of the time (s); NaN where it does not, or no spring has
     * sliders.
     */
    double since() {
        if (rubbing.length == 0) {
            return Double.NaN;
        }
        double since = slides.isEmpty() ? 0 : Double.NaN;
        double sliding = 0;
        for (int i = slides.size() - 1; i >= 0; i--) {
            double end = slides.get(i)[1];
            if (sliding <= MOMENTS * (now - end) && end < now) {
                since = end;
            }
            sliding += end - slides.get(i)[0];
        }
        return since;
    }
}
