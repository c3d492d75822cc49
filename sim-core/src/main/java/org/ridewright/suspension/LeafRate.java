package org.ridewright.suspension;

import org.ridewright.vehicle.Elasticity.LeafPack;
import org.ridewright.vehicle.SpringKind;

/**
 * Rate of a pack of leaves from its dimensions, with {@code ΣI = Σ n b t³/12} and working length {@code L}.
 *
 * <p>Half-elliptic {@code 32 E ΣI/L³}, off the middle {@code 2 E ΣI L/(p² q²)}; full-elliptic half of that (two in series);
 * quarter-elliptic {@code 2 E ΣI/L³}; cantilever, pivoted at p from its shackle and q from the axle, {@code 2 E ΣI/(q² L)}, since the
 * axle's end moves L/p times as far as the pivot would under L/p times the load; transverse as half-elliptic. Each but the
 * quarter-elliptic times the stiffening {@code (3 n_f + 2 n_g)/(2 n)} of full-length leaves.
 *
 * <p>Source: Mechanical Engineer's Data Handbook p. 35 (semi- and quarter-elliptic); Bhandari, Design of Machine Elements, section
 * on extra full-length leaves (from memory); unequal arms and cantilever derived from the same beam.
 */
public final class LeafRate {
    private LeafRate() {}

    /**
     * Rate of a pack.
     *
     * @param kind a leaf spring
     * @return rate (N/m) under a load at its seat or, of a cantilever, at the axle's end
     * @throws IllegalArgumentException if {@code kind} is no leaf spring, or the clamp takes the whole length
     */
    public static double of(SpringKind kind, LeafPack pack) {
        LeafGeometry at = LeafGeometry.of(pack);
        double ei = pack.modulus().value() * at.sumI();
        double length = at.length();
        double p = at.shortArm();
        double q = at.longArm();
        double half = 2 * ei * length / (p * p * q * q) * at.stiffening();
        return switch (kind) {
            case HALF_ELLIPTIC, TRANSVERSE -> half;
            case FULL_ELLIPTIC -> half / 2;
            case QUARTER_ELLIPTIC -> 2 * ei / Math.pow(length, 3);
            case CANTILEVER -> half * p * p / (length * length);
            default -> throw new IllegalArgumentException(kind.word() + " is no leaf spring");
        };
    }
}
