package org.ridewright.math;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.CholeskyDecomposition_F64;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * The generalised symmetric eigenproblem {@code A x = λ B x}, B positive definite: with {@code B = L Lᵀ} and {@code y = Lᵀ x} it is the
 * ordinary one of {@code L⁻¹ A L⁻ᵀ}.
 *
 * @param values λ, rising, length n
 * @param vectors x of each, normalised to {@code xᵀ B x = 1}; the entry largest in size is positive
 */
public record SymmetricPair(double[] values, double[][] vectors) {
    /**
     * Solves it.
     *
     * @param a symmetric, n × n; not modified
     * @param b symmetric, positive definite, n × n; not modified
     * @throws IllegalArgumentException if B is not positive definite, or a number is not finite
     */
    public static SymmetricPair of(double[][] a, double[][] b) {
        int n = a.length;
        CholeskyDecomposition_F64<DMatrixRMaj> cholesky = DecompositionFactory_DDRM.chol(n, true);
        if (!cholesky.decompose(new DMatrixRMaj(b))) {
            throw new IllegalArgumentException("the second matrix of the pair must be positive definite");
        }
        DMatrixRMaj inverse = new DMatrixRMaj(n, n);
        CommonOps_DDRM.invert(cholesky.getT(null), inverse);
        DMatrixRMaj half = new DMatrixRMaj(n, n);
        CommonOps_DDRM.mult(inverse, new DMatrixRMaj(a), half);
        DMatrixRMaj reduced = new DMatrixRMaj(n, n);
        CommonOps_DDRM.multTransB(half, inverse, reduced);
        DMatrixRMaj transposed = CommonOps_DDRM.transpose(reduced, null);
        CommonOps_DDRM.add(0.5, reduced, 0.5, transposed, reduced);
        EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(n, true, true);
        if (CommonOps_DDRM.elementSumAbs(reduced) * 0 != 0 || !eigen.decompose(reduced)) {
            throw new IllegalArgumentException(
                    "the eigenvalues of the pair were not found: its numbers must be finite");
        }
        return sorted(eigen, inverse, n);
    }

    private static SymmetricPair sorted(EigenDecomposition_F64<DMatrixRMaj> eigen, DMatrixRMaj inverse, int n) {
        Integer[] order = new Integer[n];
        for (int i = 0; i < n; i++) {
            order[i] = i;
        }
        Arrays.sort(order, (i, j) -> Double.compare(eigen.getEigenvalue(i).real, eigen.getEigenvalue(j).real));
        double[] values = new double[n];
        double[][] vectors = new double[n][];
        DMatrixRMaj x = new DMatrixRMaj(n, 1);
        for (int i = 0; i < n; i++) {
            values[i] = eigen.getEigenvalue(order[i]).real;
            CommonOps_DDRM.multTransA(inverse, eigen.getEigenVector(order[i]), x);
            vectors[i] = upright(x.getData());
        }
        return new SymmetricPair(values, vectors);
    }

    private static double[] upright(double[] x) {
        double largest = 0;
        for (double each : x) {
            largest = Math.abs(each) > Math.abs(largest) ? each : largest;
        }
        double[] result = x.clone();
        for (int i = 0; i < x.length && largest < 0; i++) {
            result[i] = -x[i];
        }
        return result;
    }
}
