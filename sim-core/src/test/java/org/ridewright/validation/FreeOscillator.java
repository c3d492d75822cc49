package org.ridewright.validation;

import java.util.List;
import org.ridewright.solver.Oscillator;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.suspension.ForceLaw;

/**
 * Free motion of {@code m ẍ + d ẋ + k x = 0} from x₀ at rest, with {@code ω = √(k/m)} and {@code ζ = d/(2√(km))}.
 *
 * <pre>
 *   ζ &lt; 1   x = x₀ e^(−ζωt) (cos ω_d t + ζω/ω_d sin ω_d t),  ω_d = ω√(1 − ζ²);  turns every π/ω_d, x_{j+1} = −x_j e^(−πζ/√(1−ζ²))
 *   ζ = 1   x = x₀ (1 + ωt) e^(−ωt)
 *   ζ &gt; 1   x = x₀ (p₁ e^(−p₂t) − p₂ e^(−p₁t))/(p₁ − p₂),  p = ω(ζ ± √(ζ² − 1))
 * </pre>
 */
final class FreeOscillator implements ReferenceProblem {
    private static final double MASS = 100;
    private static final double RATE = 10_000;
    private static final double OMEGA = 10;
    private static final double START = 0.05;
    private static final Source CLOSED = Source.closedForm("linear differential equation");

    @Override
    public String title() {
        return "Free linear oscillator";
    }

    @Override
    public String statement() {
        return "`m ẍ + d ẋ + k x = 0`; m = 100 kg, k = 10 kN/m, released 50 mm from rest.";
    }

    @Override
    public List<Check> checks() {
        Rows rows = new Rows(this);
        Crossings undamped = turns(0, 20);
        rows.relative(
                CLOSED,
                "time of the 20th turn, ζ = 0",
                "s",
                20 * Math.PI / OMEGA,
                undamped.events().get(19).time(),
                1e-12);
        rows.relative(
                CLOSED,
                "deflection at the 20th turn, ζ = 0",
                "m",
                START,
                undamped.events().get(19).value(),
                1e-11);
        double zeta = 0.1;
        double damped = OMEGA * Math.sqrt(1 - zeta * zeta);
        Crossings.Event fifth = turns(zeta, 5).events().get(4);
        rows.relative(CLOSED, "time of the 5th turn, ζ = 0.1", "s", 5 * Math.PI / damped, fifth.time(), 1e-11);
        rows.relative(
                CLOSED,
                "deflection at the 5th turn, ζ = 0.1",
                "m",
                -START * Math.exp(-5 * Math.PI * zeta / Math.sqrt(1 - zeta * zeta)),
                fifth.value(),
                1e-10);
        double t = 0.3;
        rows.relative(
                CLOSED,
                "deflection after 0.3 s, ζ = 1",
                "m",
                START * (1 + OMEGA * t) * Math.exp(-OMEGA * t),
                after(1, t),
                1e-11);
        double p1 = OMEGA * (2 + Math.sqrt(3));
        double p2 = OMEGA * (2 - Math.sqrt(3));
        double slow = (p1 * Math.exp(-p2 * t) - p2 * Math.exp(-p1 * t)) / (p1 - p2);
        return rows.relative(CLOSED, "deflection after 0.3 s, ζ = 2", "m", START * slow, after(2, t), 1e-11)
                .list();
    }

    private static ForceLaw law(double zeta) {
        return ForceLaw.spring(RATE).withDamping(2 * zeta * OMEGA * MASS);
    }

    private static Crossings turns(double zeta, int number) {
        Crossings turns = Crossings.turns(0);
        double duration = (number + 0.5) * Math.PI / (OMEGA * Math.sqrt(1 - zeta * zeta));
        RegimeSolver.solve(Oscillator.free(MASS, law(zeta), START, 0, duration), turns);
        return turns;
    }

    private static double after(double zeta, double t) {
        return RegimeSolver.solve(Oscillator.free(MASS, law(zeta), START, 0, t), step -> {})
                .q()[0];
    }
}
