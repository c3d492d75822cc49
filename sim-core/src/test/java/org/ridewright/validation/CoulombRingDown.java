package org.ridewright.validation;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.solver.Oscillator;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.SpringLaws;
import org.ridewright.vehicle.Friction;

/**
 * Free motion against dry friction, {@code m ẍ + d ẋ + k x + F sgn ẋ = 0} from x₀ at rest, with x_s = F/k.
 *
 * <pre>
 *   ζ = 0   |x_{j+1}| = |x_j| − 2 x_s, every half cycle lasts π/ω
 *           stops at the first turn with |x| ≤ x_s: N = ⌈(|x₀|/x_s − 1)/2⌉ half cycles, at (−1)^N (|x₀| − 2 N x_s)
 *   ζ > 0   |x_{j+1}| = |x_j| e − x_s (1 + e), e = exp(−πζ/√(1 − ζ²)), every half cycle lasts π/ω_d
 * </pre>
 *
 * <p>The friction is that of a description which asks for rigid friction, k_p = 10⁵ k. Once it stays, the mass swings without damping on
 * the locked slider, by at most F/k_p to either side of its place of rest; the middle of that swing is taken. Each half cycle is
 * shorter than under rigid friction by less than {@code (m/k_p)^½}, 3·10⁻⁴ s; from turn to turn that adds up, and most of it comes
 * last.
 *
 * <p>Source: Den Hartog, Mechanical Vibrations; Rao, Mechanical Vibrations, with its exercise of a block on a rough floor (both
 * from memory).
 */
final class CoulombRingDown implements ReferenceProblem {
    private static final double MASS = 100;
    private static final double RATE = 10_000;
    private static final double LIMIT = 50;
    private static final double START = 0.0525;
    private static final double SLIP = LIMIT / RATE;
    private static final Source TABLE = Source.closedForm("linear decrement (Den Hartog, Rao, from memory)");
    private static final Source CLOSED = Source.closedForm("stopping rule");

    @Override
    public String title() {
        return "Coulomb ring-down";
    }

    @Override
    public String statement() {
        return "`m ẍ + d ẋ + k x + F sgn ẋ = 0`; m = 100 kg, k = 10 kN/m, F = 50 N, so F/k = 5 mm; from 52.5 mm unless "
                + "stated; locked rate 10⁵ k.";
    }

    @Override
    public List<Check> checks() {
        Rows rows = new Rows(this);
        for (double zeta : new double[] {0, 0.1}) {
            addPeaks(rows, zeta);
        }
        for (double start : new double[] {0.0045, 0.012, 0.0201, 0.0525, 0.0987}) {
            addRest(rows, start);
        }
        addRoughFloor(rows);
        return rows.list();
    }

    private static void addPeaks(Rows rows, double zeta) {
        List<ReferenceTable.Row> known = ReferenceTable.read("friction_oscillator_ringdown.csv").rows().stream()
                .filter(row -> row.number("zeta") == zeta && row.number("half_cycle") > 0)
                .toList();
        Crossings turns = Crossings.turns(0);
        double damping = 2 * zeta * Math.sqrt(RATE * MASS);
        RegimeSolver.solve(Oscillator.free(MASS, rubbing(RATE, LIMIT).withDamping(damping), START, 0, 2), turns);
        List<Crossings.Event> found = turns.events();
        for (int i = 0; i < known.size(); i++) {
            String which = "turn " + (i + 1) + ", ζ = " + (zeta == 0 ? "0" : String.valueOf(zeta));
            rows.absolute(
                    TABLE,
                    which,
                    "mm",
                    known.get(i).number("peak_mm"),
                    1000 * found.get(i).value(),
                    1e-4 * 1000 * START);
            rows.relative(
                    TABLE,
                    "time of " + which,
                    "s",
                    known.get(i).number("time_s"),
                    found.get(i).time(),
                    1e-3);
        }
    }

    private static void addRest(Rows rows, double start) {
        int halfCycles = (int) Math.ceil((start / SLIP - 1) / 2);
        double rest = (halfCycles % 2 == 0 ? 1 : -1) * (start - 2 * halfCycles * SLIP);
        Extremes held = new Extremes(Reading.displacement(0), 4);
        Crossings turns = Crossings.turns(0);
        RegimeSolver.solve(Oscillator.free(MASS, rubbing(RATE, LIMIT), start, 0, 4.5), step -> {
            held.step(step);
            turns.step(step);
        });
        String from = "from " + Numbers.mm(start);
        rows.absolute(CLOSED, "half cycles until it stays, " + from, "1", halfCycles, travels(start, turns), 0);
        rows.absolute(CLOSED, "place of rest, " + from, "mm", 1000 * rest, 1000 * held.middle(), 1e-2 * 1000 * SLIP);
    }

    /** Half cycles, swings on the locked slider apart. */
    private static int travels(double start, Crossings turns) {
        int number = 0;
        double from = start;
        for (Crossings.Event turn : turns.events()) {
            number += Math.abs(turn.value() - from) > 1e-2 * SLIP ? 1 : 0;
            from = turn.value();
        }
        return number;
    }

    /** A block on a rough floor takes five cycles in 2 s to fall from 100 mm to 10 mm: its friction coefficient is 0.11318 (Rao). */
    private static void addRoughFloor(Rows rows) {
        double omega = 5 * Math.PI;
        double rate = MASS * omega * omega;
        Crossings turns = Crossings.turns(0);
        RegimeSolver.solve(Oscillator.free(MASS, rubbing(rate, 0.11318 * MASS * 9.81), 0.1, 0, 2.1), turns);
        Source rao = Source.book("Rao, Mechanical Vibrations (from memory)");
        rows.absolute(
                rao,
                "block on a floor of friction 0.11318, 100 mm falls in five cycles to",
                "mm",
                10,
                1000 * turns.events().get(9).value(),
                0.01);
    }

    private static ForceLaw rubbing(double rate, double limit) {
        Friction rigid = new Friction(
                Measure.of(0, QuantityKind.RATIO),
                Measure.of(limit, QuantityKind.FORCE),
                new Friction.LockedRate.Rigid(),
                List.of(),
                Optional.empty());
        return SpringLaws.withFriction(ForceLaw.spring(rate), rate, rigid);
    }
}
