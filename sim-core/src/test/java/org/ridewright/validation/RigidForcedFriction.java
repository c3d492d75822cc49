package org.ridewright.validation;

import java.util.Comparator;
import java.util.List;

/**
 * Den Hartog's forced oscillator with Coulomb friction, moving without stops:
 *
 * <pre>
 *   m ẍ + k x + F sgn ẋ = F₀ cos ωt
 *   X k/F₀ = √(V² − (U F/F₀)²)      V = 1/(1 − r²)      U = sin(π/r)/(r (1 + cos(π/r)))
 * </pre>
 *
 * <p>Source: see {@link DenHartog}. Rigid friction is reached by extrapolation in the locked rate,
 * see {@link DenHartog}.
 */
final class RigidForcedFriction implements ReferenceProblem {
    @Override
    public String title() {
        return "Forced Coulomb oscillator: rigid friction without stops";
    }

    @Override
    public String statement() {
        return "`m ẍ + k x + F sgn ẋ = F₀ cos ωt`, steady X k/F₀, for every row of the reference table in which the mass "
                + "never stops. Solved at 1, 4 and 16 times the locked rate of rigid friction, 10⁵ k, and extrapolated in "
                + "`k_p^(−1/2)`; the order is read off between 4 and 16 times.";
    }

    @Override
    public List<Check> checks() {
        Rows rows = new Rows(this);
        List<DenHartog> all = DenHartog.withoutStops();
        double misprint = 0;
        for (ReferenceTable.Row row :
                ReferenceTable.read("friction_oscillator_forced.csv").rows()) {
            if (row.given("X_closed").isPresent()) {
                double formula = HalfCycle.rigidAmplitude(row.number("r"), row.number("F_over_F0"));
                misprint = Math.max(misprint, Math.abs(formula - row.number("X_closed")));
            }
        }
        rows.ofReference()
                .absolute(DenHartog.PAPER, "table beside the formula, greatest difference", "1", 0, misprint, 1e-6);
        for (DenHartog row : all) {
            rows.relative(DenHartog.PAPER, row.name(), "1", row.closed(), row.rigid(), 1e-5);
        }
        for (double r : all.stream().mapToDouble(DenHartog::r).distinct().toArray()) {
            DenHartog worst = all.stream()
                    .filter(row -> row.r() == r)
                    .max(Comparator.comparingDouble(row -> Math.abs(row.order() - 0.5)))
                    .orElseThrow();
            rows.absolute(
                    DenHartog.FORMULA,
                    "r = " + DenHartog.trimmed(r) + ": power of 1/k_p with which the error falls, farthest from ½",
                    "1",
                    0.5,
                    worst.order(),
                    0.01);
        }
        return rows.list();
    }
}
