package org.ridewright.ride;

import java.util.stream.IntStream;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;
import org.ridewright.solver.Step;

/** For how long friction has let go at least one spring. A vehicle of which some spring has no friction that can hold it slides at all times. */
final class SlideWatch {
    private final int[] rubbing;
    private final boolean free;
    private boolean sliding;
    private double start;
    private double before;

    SlideWatch(Equations equations) {
        int[] watched = IntStream.range(0, equations.elements().size())
                .filter(e -> isSpring(equations.elements().get(e)))
                .toArray();
        rubbing = IntStream.of(watched)
                .filter(e -> canHold(equations.elements().get(e)))
                .toArray();
        free = IntStream.of(watched)
                        .anyMatch(e -> equations.elements().get(e).kind() == Element.Kind.SPRING
                                && !canHold(equations.elements().get(e)))
                || rubbing.length == 0;
    }

    private static boolean isSpring(Element element) {
        return element.kind() == Element.Kind.SPRING || element.kind() == Element.Kind.LINKAGE;
    }

    private static boolean canHold(Element element) {
        return element.law().friction().states() > 0 && !element.law().friction().isEnvelope();
    }

    /** A step is about to be read. */
    void begin(Step step) {
        start = step.start();
        sliding = free;
        for (int e : rubbing) {
            sliding |= !step.isLocked(e);
        }
    }

    /** It has been read. */
    void end(Step step) {
        before = until(step.start() + step.duration());
    }

    /** Since the run's beginning (s), until an instant of the step that is being read. */
    double until(double t) {
        return before + (sliding ? Math.max(0, t - start) : 0);
    }
}
