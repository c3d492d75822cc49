package org.ridewright.validation;

import java.util.List;
import org.ridewright.dynamics.Element;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.solver.Oscillator;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.solver.StepListener;
import org.ridewright.suspension.ForceLaw;

/**
 * Forced motion {@code m ẍ + d ẋ + k x = F₀ cos ωt}: the force comes through a spring whose far end moves by {@code (F₀/k) cos ωt}.
 * With r = ω/√(k/m), in the steady state {@code x = X cos(ωt − ψ)},
 *
 * <pre>
 *   X k/F₀ = 1/√((1 − r²)² + (2ζr)²)        tan ψ = 2ζr/(1 − r²)
 * </pre>
 *
 * Over a base that moves by {@code U cos ωt}, spring and damper beside one another, the body moves by
 * {@code X/U = √((1 + (2ζr)²)/((1 − r²)² + (2ζr)²))}. Undamped at r = 1 from rest,
 * {@code x = F₀ t sin(ωt)/(2mω)} grows without bound.
 */
final class ForcedOscillator implements ReferenceProblem {
    private static final double MASS = 100;
    private static final double RATE = 10_000;
    private static final double OMEGA = 10;
    private static final double ZETA = 0.2;
    private static final double STATIC = 0.01;
    /** Time in which e^(−ζωt) falls below 1e-15 (s). */
    private static final double SETTLING = 18;

    private static final Source CLOSED = Source.closedForm("linear differential equation");

    @Override
    public String title() {
        return "Forced linear oscillator";
    }

    @Override
    public String statement() {
        return "`m ẍ + d ẋ + k x = F₀ cos ωt`, ζ = 0.2, and the same mass over a moving base; r = ω/√(k/m).";
    }

    @Override
    public List<Check> checks() {
        Rows rows = new Rows(this);
        for (double r : new double[] {0.5, 1, 2}) {
            double size = Math.hypot(1 - r * r, 2 * ZETA * r);
            Crossings turns = Crossings.turns(0);
            double amplitude = amplitude(r, forcing(), turns);
            rows.relative(CLOSED, "X k/F₀ at r = " + r, "1", 1 / size, amplitude / STATIC, 1e-9);
            Crossings.Event last = turns.events(false).get(turns.events(false).size() - 1);
            double lag = Math.IEEEremainder(r * OMEGA * last.time(), 2 * Math.PI);
            rows.absolute(CLOSED, "phase lag ψ at r = " + r, "rad", Math.atan2(2 * ZETA * r, 1 - r * r), lag, 1e-9);
            double transmitted = Math.hypot(1, 2 * ZETA * r) / size;
            rows.relative(
                    CLOSED,
                    "X/U over a moving base at r = " + r,
                    "1",
                    transmitted,
                    amplitude(r, base(), step -> {}) / STATIC,
                    1e-9);
        }
        double t = 7.3;
        PiecewisePolynomial drive = Drives.cosine(STATIC, OMEGA, 0, t);
        double grown = RegimeSolver.solve(Oscillator.driven(MASS, ForceLaw.spring(RATE), drive, 0, t), step -> {})
                .q()[0];
        double exact = RATE * STATIC * t * Math.sin(OMEGA * t) / (2 * MASS * OMEGA);
        return rows.relative(CLOSED, "deflection after 7.3 s at r = 1, ζ = 0, from rest", "m", exact, grown, 1e-11)
                .list();
    }

    private static List<Element> forcing() {
        double damping = 2 * ZETA * OMEGA * MASS;
        return List.of(element("spring", 0, ForceLaw.spring(RATE)), element("damper", -1, ForceLaw.damper(damping)));
    }

    private static List<Element> base() {
        return List.of(element("spring", 0, ForceLaw.spring(RATE).withDamping(2 * ZETA * OMEGA * MASS)));
    }

    private static Element element(String name, int input, ForceLaw law) {
        return new Element(name, Element.Kind.SPRING, new double[] {-1}, input, law);
    }

    private static double amplitude(double r, List<Element> elements, StepListener also) {
        double cycle = 2 * Math.PI / (r * OMEGA);
        double duration = SETTLING + 2 * cycle;
        Extremes extremes = new Extremes(Reading.displacement(0), SETTLING);
        List<PiecewisePolynomial> drive = List.of(Drives.cosine(STATIC, r * OMEGA, 0, duration));
        RegimeSolver.solve(Oscillator.problem(MASS, 0, elements, drive, 0, 0, duration), step -> {
            extremes.step(step);
            also.step(step);
        });
        return extremes.amplitude();
    }
}
