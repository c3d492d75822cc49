package org.ridewright.suspension;

import org.ridewright.vehicle.Elasticity.LeafPack;
import org.ridewright.vehicle.Elasticity.Leaves;

/**
 * What rate and stress of a pack of leaves are made of.
 *
 * @param length L without what the clamp takes out (m)
 * @param longArm q from clamp or pivot (m)
 * @param sumI ΣI = Σ n b t³/12 (m⁴)
 * @param stiffening {@code (3 n_f + 2 n_g)/(2 n)} of full-length leaves
 * @param thickest t (m)
 */
record LeafGeometry(double length, double longArm, double sumI, double stiffening, double thickest) {
    static LeafGeometry of(LeafPack pack) {
        double length = pack.length().value() - pack.clampDeduction().value();
        if (!(length > 0)) {
            throw new IllegalArgumentException("the clamp takes out the whole length of the spring");
        }
        double sumI = 0;
        int number = 0;
        double thickest = 0;
        for (Leaves leaves : pack.leaves()) {
            double t = leaves.thickness().value();
            sumI += leaves.number() * leaves.width().value() * Math.pow(t, 3) / 12;
            number += leaves.number();
            thickest = Math.max(thickest, t);
        }
        double q = pack.longArm().isPresent()
                ? pack.longArm().get().value() - pack.clampDeduction().value() / 2
                : length / 2;
        if (!(q > 0 && q < length)) {
            throw new IllegalArgumentException("the longer arm must be shorter than the spring");
        }
        double stiffening = (3.0 * pack.fullLengthLeaves() + 2.0 * (number - pack.fullLengthLeaves())) / (2.0 * number);
        return new LeafGeometry(length, q, sumI, stiffening, thickest);
    }

    double shortArm() {
        return length - longArm;
    }
}
