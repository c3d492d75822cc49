package org.ridewright.ride;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;
import org.ridewright.dynamics.WheelPlace;
import org.ridewright.solver.Problem;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.suspension.ForceLaw;

/**
 * How far a result depends on contacts that are hardly damped: the same run with them damped like an unyielding wheel's default.
 *
 * @param place where the acceleration was read off
 * @param peak greatest acceleration with the damping given (m/s²)
 * @param peakWhenCalmer greatest acceleration with the ratio {@value #CALMER_RATIO} (m/s²)
 */
record Liveliness(String place, double peak, double peakWhenCalmer) {
    static final double CALMER_RATIO = 0.15;

    /** Runs the comparison on one read-off, whose extreme in the original run is known. */
    static Liveliness of(Problem problem, List<WheelPlace> wheels, ReadOff readOff, String place, double peak) {
        Equations equations = problem.equations();
        List<Element> elements = new ArrayList<>(equations.elements());
        for (WheelPlace wheel : wheels) {
            if (wheel.contact().isLively()) {
                double d = wheel.contact().damping()
                        * CALMER_RATIO
                        / wheel.contact().dampingRatio();
                Element element = elements.get(wheel.element());
                elements.set(
                        wheel.element(),
                        element.withLaw(ForceLaw.contact(wheel.contact().rate(), d)));
            }
        }
        Problem calmer = new Problem(
                equations.withElements(elements),
                problem.heights(),
                problem.q(),
                problem.v(),
                problem.friction(),
                problem.duration());
        RangeRecorder range = new RangeRecorder(List.of(readOff));
        RegimeSolver.solve(calmer, range);
        return new Liveliness(place, peak, range.range(0).greatestSize());
    }
}
