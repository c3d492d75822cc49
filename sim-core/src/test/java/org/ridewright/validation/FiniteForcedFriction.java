package org.ridewright.validation;

import java.util.Comparator;
import java.util.List;

/**
 * The same oscillator at the locked rate which a description gets that asks for rigid friction, {@code k_p = 10⁵ k}, without
 * extrapolation. What the solver must give there is known without it, from {@link HalfCycle}; how far that lies from rigid friction
 * is a property of the finite rate, of the order {@code (k/k_p)^½} and largest next to the limit of motion without stops, where X
 * changes fast with F.
 *
 * <p>The rows to be compared with rigid friction are those in which the exact amplitude at 10⁵ k is within 1e-3 of it; the others
 * are told in the remarks. They are chosen by {@link HalfCycle} alone, so that a row that the solver gets wrong cannot slip out of
 * the list.
 */
final class FiniteForcedFriction implements ReferenceProblem {
    private static final double ASKED = 1e-3;
    /** What {@code docs/vehicle-file.md} says of {@code locked rate: rigid}. */
    private static final double PROMISED = 0.032;

    private static final Source MATCHED = Source.closedForm("half cycle matched at finite k_p");

    @Override
    public String title() {
        return "Forced Coulomb oscillator: locked rate 10⁵ k without stops";
    }

    @Override
    public String statement() {
        return "The same rows at the locked rate of a description that asks for rigid friction, 10⁵ k, without "
                + "extrapolation: beside the exact amplitude with a slider of that rate, and beside rigid friction where "
                + "such a slider can come within 1e-3 of it; the last row is the worst of all, beside the 3.2 % that "
                + "vehicle-file.md tells of a rigid locked rate.";
    }

    @Override
    public List<Check> checks() {
        Rows rows = new Rows(this);
        List<DenHartog> all = DenHartog.withoutStops();
        for (double r : all.stream().mapToDouble(DenHartog::r).distinct().toArray()) {
            List<DenHartog> some = all.stream().filter(row -> row.r() == r).toList();
            double greatest = some.stream()
                    .mapToDouble(row -> Math.abs(row.atRigid() / row.exactAtRigidRate() - 1))
                    .max()
                    .orElseThrow();
            rows.absolute(
                    MATCHED,
                    "r = " + DenHartog.trimmed(r) + ": greatest relative difference of " + some.size() + " rows",
                    "1",
                    0,
                    greatest,
                    1e-9);
            List<DenHartog> near = some.stream().filter(row -> !isOutside(row)).toList();
            DenHartog farthest = near.stream()
                    .max(Comparator.comparingDouble(row -> Math.abs(shareOfRigid(row))))
                    .orElseThrow();
            rows.relative(
                    DenHartog.PAPER,
                    farthest.name() + ", against rigid friction, farthest of " + near.size(),
                    "1",
                    farthest.closed(),
                    farthest.atRigid(),
                    ASKED);
        }
        DenHartog worst = all.stream()
                .max(Comparator.comparingDouble(row -> Math.abs(shareOfRigid(row))))
                .orElseThrow();
        return rows.relative(
                        DenHartog.PAPER,
                        worst.name() + ", against rigid friction, farthest of all " + all.size(),
                        "1",
                        worst.closed(),
                        worst.atRigid(),
                        PROMISED)
                .list();
    }

    private static double shareOfRigid(DenHartog row) {
        return row.exactAtRigidRate() / row.closed() - 1;
    }

    private static boolean isOutside(DenHartog row) {
        return Math.abs(shareOfRigid(row)) > ASKED;
    }

    @Override
    public String remarks() {
        List<DenHartog> all = DenHartog.withoutStops();
        List<DenHartog> outside =
                all.stream().filter(FiniteForcedFriction::isOutside).toList();
        return "At 10⁵ k a slider differs from rigid friction by more than 0.1 % in " + outside.size() + " of "
                + all.size()
                + " rows, by its finite rate and not by the way it is solved: "
                + DenHartog.listed(outside, FiniteForcedFriction::shareOfRigid) + ".";
    }
}
