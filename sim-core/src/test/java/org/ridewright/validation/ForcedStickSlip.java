package org.ridewright.validation;

import java.util.List;

/**
 * The same oscillator where the mass stops during each half cycle. There is no closed form; the table's amplitudes come from a
 * simulation apart from this project, exact between root-found turning and release times, to six decimals. Rigid friction by the
 * same extrapolation as without stops: where the mass rests for long the error falls like 1/k_p, which the extrapolation takes out
 * as well.
 */
final class ForcedStickSlip implements ReferenceProblem {
    private static final double ASKED = 5e-3;
    private static final Source SIMULATED = Source.integrator("exact segments between root-found stops");

    @Override
    public String title() {
        return "Forced Coulomb oscillator with stops";
    }

    @Override
    public String statement() {
        return "The same oscillator where the mass stops in each half cycle, rigid friction by the same extrapolation.";
    }

    @Override
    public List<Check> checks() {
        Rows rows = new Rows(this);
        for (DenHartog row : DenHartog.withStops()) {
            rows.relative(SIMULATED, row.name(), "1", row.simulated(), row.rigid(), ASKED);
        }
        return rows.list();
    }

    @Override
    public String remarks() {
        List<DenHartog> outside = DenHartog.withStops().stream()
                .filter(row -> Math.abs(shareOfRigid(row)) > ASKED)
                .toList();
        return "At 10⁵ k without extrapolation these differ by more than 0.5 %, just past the limit where stops begin: "
                + DenHartog.listed(outside, ForcedStickSlip::shareOfRigid) + ".";
    }

    private static double shareOfRigid(DenHartog row) {
        return row.atRigid() / row.simulated() - 1;
    }
}
