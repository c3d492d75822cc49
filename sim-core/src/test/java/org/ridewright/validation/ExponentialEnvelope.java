package org.ridewright.validation;

import java.util.List;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.ridewright.dynamics.Element;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.solver.Oscillator;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.FrictionLaw;

/**
 * The exponential envelope on the friction part, {@code ds/dc = (sgn(ċ) F − s)/β}: from s₀ at a reversal, {@code s = ±F + (s₀ ∓ F)
 * e^(−d/β)} after a travel d.
 *
 * <pre>
 *   steady loop of ±X        area 4 F (X − β tanh(X/β)), s = F tanh(X/β) at the turns
 *   mass let go at x₀, s₀    travel d to the next turn:  k x₀ d − k d²/2 = F d − (F − s₀) β (1 − e^(−d/β)), s₁ = F − (F − s₀) e^(−d/β)
 * </pre>
 *
 * The second line is the balance of energy between turns, s counted against the travel; it gives the turns one after another.
 *
 * <p>Source: Fancher, Ervin, MacAdam and Winkler, SAE 800905 (from memory), the envelope rule on the friction part alone.
 */
final class ExponentialEnvelope implements ReferenceProblem {
    private static final double LIMIT = 400;
    private static final double BETA = 1e-3;
    private static final Source LOOP = Source.closedForm("integral of the law of SAE 800905 (from memory)");
    private static final Source ENERGY = Source.closedForm("energy between turns");

    @Override
    public String title() {
        return "Exponential friction envelope";
    }

    @Override
    public String statement() {
        return "`ds/dc = (sgn(ċ) F − s)/β` beside k = 100 N/mm, F = 400 N, β = 1 mm: loss in a steady cycle of ±X, and "
                + "turns of 500 kg let go 50 mm from rest.";
    }

    @Override
    public List<Check> checks() {
        Rows rows = new Rows(this);
        for (double x : new double[] {0.0005, 0.002, 0.02}) {
            double area = 4 * LIMIT * (x - BETA * Math.tanh(x / BETA));
            rows.relative(LOOP, "loop area, X = " + Numbers.mm(x), "J", area, loop(x), 1e-7);
        }
        addTurns(rows);
        return rows.list();
    }

    private static ForceLaw law() {
        return ForceLaw.spring(100_000).withFriction(FrictionLaw.envelope(0, LIMIT, BETA));
    }

    private static double loop(double amplitude) {
        double settled = Math.ceil(10 * BETA / amplitude) + 0.25;
        return lost(amplitude, settled + 1) - lost(amplitude, settled);
    }

    /**
     * Energy lost in so many cycles of a sine; no mass hangs on the element. The path is cut finely, since the solver's steps are
     * as long as accelerations allow, and here there are none.
     */
    private static double lost(double amplitude, double cycles) {
        double omega = 2;
        double duration = cycles * 2 * Math.PI / omega;
        PiecewisePolynomial path = Drives.cosine(amplitude, omega, -Math.PI / 2, duration, 6000);
        Element spring = new Element("spring", Element.Kind.SPRING, new double[] {0}, 0, law());
        return RegimeSolver.solve(Oscillator.problem(1, 0, List.of(spring), List.of(path), 0, 0, duration), step -> {})
                .energy()
                .dissipatedByElement()[0];
    }

    private static void addTurns(Rows rows) {
        double rate = 100_000;
        Crossings turns = Crossings.turns(0);
        RegimeSolver.solve(Oscillator.free(500, law(), 0.05, 0, 1.5), turns);
        double x = 0.05;
        double held = 0;
        for (int i = 0; i < 4; i++) {
            double size = x;
            double s0 = held;
            double d = new BrentSolver(1e-15, 1e-16, 1e-16)
                    .solve(
                            200,
                            t -> rate * size * t
                                    - rate * t * t / 2
                                    - LIMIT * t
                                    + (LIMIT - s0) * BETA * (1 - Math.exp(-t / BETA)),
                            size,
                            2 * size);
            x = d - size;
            held = -(LIMIT - (LIMIT - s0) * Math.exp(-d / BETA));
            rows.relative(
                    ENERGY,
                    "turn " + (i + 1),
                    "mm",
                    (i % 2 == 0 ? -1 : 1) * 1000 * x,
                    1000 * turns.events().get(i).value(),
                    1e-9);
        }
    }
}
