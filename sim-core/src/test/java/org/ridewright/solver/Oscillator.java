package org.ridewright.solver;

import java.util.List;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.suspension.ForceLaw;

/** One mass on one element, {@code m ẍ = −f(x)} with c = −x or c = u − x; no gravity unless stated. */
public final class Oscillator {
    private Oscillator() {}

    /** On one element, without gravity, from position x0 at speed v0. */
    public static Problem free(double mass, ForceLaw law, double x0, double v0, double duration) {
        Element spring = new Element("spring", Element.Kind.SPRING, new double[] {-1}, -1, law);
        return problem(mass, 0, List.of(spring), List.of(), x0, v0, duration);
    }

    /** At rest on one element that follows a height. */
    public static Problem driven(
            double mass, ForceLaw law, PiecewisePolynomial height, double weight, double duration) {
        Element spring = new Element("contact", Element.Kind.CONTACT, new double[] {-1}, 0, law);
        return problem(mass, weight, List.of(spring), List.of(height), 0, 0, duration);
    }

    /** On any elements; {@code weight} (N) pulls downwards. */
    public static Problem problem(
            double mass,
            double weight,
            List<Element> elements,
            List<PiecewisePolynomial> heights,
            double x0,
            double v0,
            double duration) {
        Equations equations =
                new Equations(new double[] {mass}, new double[] {0}, new double[] {weight}, elements, heights.size());
        int states =
                elements.stream().mapToInt(e -> e.law().friction().states()).sum();
        return new Problem(equations, heights, new double[] {x0}, new double[] {v0}, new double[states], duration);
    }
}
