package org.ridewright.validation;

import java.util.List;
import org.ridewright.dynamics.Element;
import org.ridewright.solver.Oscillator;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.SpringLaws;

/**
 * {@code m ẍ + d(ẋ) ẋ + k x = 0} with one coefficient in bump and another in rebound: each half cycle is that of a linear
 * oscillator with its own ζ, lasts {@code π/(ω√(1 − ζ²))} and leaves {@code x_{j+1} = −x_j exp(−πζ/√(1 − ζ²))}. Falling (ẋ < 0) is
 * bump.
 */
final class BilinearDamper implements ReferenceProblem {
    private static final double MASS = 300;
    private static final double RATE = 20_000;
    private static final double BUMP = 600;
    private static final double REBOUND = 1800;
    private static final double START = 0.06;
    private static final Source CLOSED = Source.closedForm("linear half cycles");

    @Override
    public String title() {
        return "Damper with bump and rebound";
    }

    @Override
    public String statement() {
        return "300 kg on 20 N/mm, damper of 600 N·s/m in bump and 1800 N·s/m in rebound, let go 60 mm up.";
    }

    @Override
    public List<Check> checks() {
        Crossings turns = Crossings.turns(0);
        List<Element> elements = List.of(
                new Element("spring", Element.Kind.SPRING, new double[] {-1}, -1, ForceLaw.spring(RATE)),
                new Element("damper", Element.Kind.DAMPER, new double[] {-1}, -1, SpringLaws.bilinear(BUMP, REBOUND)));
        RegimeSolver.solve(Oscillator.problem(MASS, 0, elements, List.of(), START, 0, 2), turns);
        Rows rows = new Rows(this);
        double x = START;
        double t = 0;
        double omega = Math.sqrt(RATE / MASS);
        for (int i = 0; i < 4; i++) {
            double zeta = (i % 2 == 0 ? BUMP : REBOUND) / (2 * Math.sqrt(RATE * MASS));
            double root = Math.sqrt(1 - zeta * zeta);
            x *= -Math.exp(-Math.PI * zeta / root);
            t += Math.PI / (omega * root);
            Crossings.Event turn = turns.events().get(i);
            rows.relative(CLOSED, "turn " + (i + 1), "mm", 1000 * x, 1000 * turn.value(), 1e-9);
            rows.relative(CLOSED, "time of turn " + (i + 1), "s", t, turn.time(), 1e-10);
        }
        return rows.list();
    }
}
