package org.ridewright.suspension;

import org.ridewright.vehicle.Elasticity.LeafPack;
import org.ridewright.vehicle.SpringKind;

/**
 * Greatest bending stress in a pack of leaves, {@code σ = M t/(2 ΣI)} at the clamp, t that of the thickest leaf.
 *
 * <p>The moment of a load W at the seat is {@code W p q/L} of a half-elliptic, of each half of a full-elliptic and of a transverse spring,
 * {@code W L} of a quarter-elliptic, {@code W q} of a cantilever with W at the axle's end; of even arms and like leaves that is
 * {@code 3 W L/(2 n b t²)} and {@code 6 W L/(n b t²)}. Of full-length leaves that were not nipped to carry as much as the others the full-length ones bear
 * {@code 3 n/(3 n_f + 2 n_g)} of it: the pack is taken to be without nip, which errs to the safe side. Eyes, bolt holes, twist, side
 * and braking forces and the shock of the road are left out.
 *
 * <p>Source: Mechanical Engineer's Data Handbook p. 35 (semi- and quarter-elliptic); Bhandari, Design of Machine Elements, section on extra
 * full-length leaves (from memory); unequal arms and cantilever derived from the same beam.
 */
public final class LeafStress {
    /** A full-length leaf is bent half as much again as a graduated one beside it. */
    private static final double FULL_LENGTH = 1.5;

    private LeafStress() {}

    /**
     * Stress under a load.
     *
     * @param kind a leaf spring
     * @param load W at its seat or, of a cantilever, at the axle's end (N)
     * @return σ (Pa), of the sign of the load
     * @throws IllegalArgumentException if {@code kind} is no leaf spring, or the clamp takes the whole length
     */
    public static double of(SpringKind kind, LeafPack pack, double load) {
        LeafGeometry at = LeafGeometry.of(pack);
        if (kind == SpringKind.QUARTER_ELLIPTIC) {
            return load * at.length() * at.thickest() / (2 * at.sumI());
        }
        double moment =
                switch (kind) {
                    case HALF_ELLIPTIC, FULL_ELLIPTIC, TRANSVERSE -> load * at.shortArm() * at.longArm() / at.length();
                    case CANTILEVER -> load * at.longArm();
                    default -> throw new IllegalArgumentException(kind.word() + " is no leaf spring");
                };
        double unevenness = pack.fullLengthLeaves() > 0 ? FULL_LENGTH / at.stiffening() : 1;
        return unevenness * moment * at.thickest() / (2 * at.sumI());
    }
}
