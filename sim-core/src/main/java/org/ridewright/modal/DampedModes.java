package org.ridewright.modal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.complex.Complex;
import org.hipparchus.linear.EigenDecompositionNonSymmetric;
import org.hipparchus.linear.FieldVector;
import org.hipparchus.linear.MatrixUtils;
import org.ridewright.math.SymmetricPair;
import org.ridewright.modal.Mode.DampedSwing;

/**
 * Damped modes, each beside the undamped one that it is nearest to.
 *
 * <p>In the coordinates η of the undamped modes, those at zero frequency left out (no damper acts on them either), the state
 * {@code (Ω η, η̇)} obeys {@code d/dt = [[0, Ω], [−Ω, −Φᵀ C Φ]]}. Each pair {@code λ = −ζω ± iω√(1−ζ²)} is one that swings. It belongs to
 * the undamped mode with the greatest share in its speeds; the surest pairing is made first.
 */
final class DampedModes {
    private record Candidate(int pair, int mode, double share) {}

    private DampedModes() {}

    /**
     * Swings in the order of the undamped modes.
     *
     * @param free number of modes at zero frequency, which come first
     */
    static List<Optional<DampedSwing>> of(SymmetricPair undamped, double[][] damping, int free) {
        int all = undamped.values().length;
        List<Optional<DampedSwing>> swings = new ArrayList<>();
        for (int i = 0; i < all; i++) {
            swings.add(Optional.empty());
        }
        int m = all - free;
        if (m == 0) {
            return swings;
        }
        EigenDecompositionNonSymmetric eigen =
                new EigenDecompositionNonSymmetric(MatrixUtils.createRealMatrix(state(undamped, damping, free)));
        List<DampedSwing> found = new ArrayList<>();
        List<Candidate> candidates = new ArrayList<>();
        for (int i = 0; i < 2 * m; i++) {
            Complex lambda = eigen.getEigenvalue(i);
            // what is closer to real than round-off allows to tell does not swing
            if (lambda.getImaginary() > 1e-7 * lambda.norm()) {
                found.add(new DampedSwing(lambda.getImaginary() / (2 * Math.PI), -lambda.getReal() / lambda.norm()));
                FieldVector<Complex> vector = eigen.getEigenvector(i);
                for (int j = 0; j < m; j++) {
                    double size = vector.getEntry(m + j).norm();
                    candidates.add(new Candidate(found.size() - 1, free + j, size * size / speeds(vector, m)));
                }
            }
        }
        candidates.sort((a, b) -> Double.compare(b.share(), a.share()));
        boolean[] used = new boolean[found.size()];
        for (Candidate each : candidates) {
            if (!used[each.pair()] && swings.get(each.mode()).isEmpty()) {
                used[each.pair()] = true;
                swings.set(each.mode(), Optional.of(found.get(each.pair())));
            }
        }
        return swings;
    }

    private static double speeds(FieldVector<Complex> vector, int m) {
        double sum = 0;
        for (int j = 0; j < m; j++) {
            double size = vector.getEntry(m + j).norm();
            sum += size * size;
        }
        return sum;
    }

    private static double[][] state(SymmetricPair undamped, double[][] damping, int free) {
        int m = undamped.values().length - free;
        double[][] a = new double[2 * m][2 * m];
        for (int i = 0; i < m; i++) {
            double omega = Math.sqrt(undamped.values()[free + i]);
            a[i][m + i] = omega;
            a[m + i][i] = -omega;
            double[] left = undamped.vectors()[free + i];
            for (int j = 0; j < m; j++) {
                double[] right = undamped.vectors()[free + j];
                for (int r = 0; r < left.length; r++) {
                    for (int s = 0; s < left.length; s++) {
                        a[m + i][m + j] -= left[r] * damping[r][s] * right[s];
                    }
                }
            }
        }
        return a;
    }
}
