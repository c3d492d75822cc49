package org.ridewright.math;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;
import org.hipparchus.complex.Complex;

/** A small set of linear equations with complex numbers, {@code (A + iB) x = r}, as {@code [[A, −B], [B, A]]} of twice the size. */
public final class ComplexSystem {
    private ComplexSystem() {}

    /**
     * Solves it.
     *
     * @param real A, n × n; not modified
     * @param imaginary B, n × n; not modified
     * @param right r, length n; not modified
     * @return x, length n, new
     * @throws ArithmeticException if the matrix is singular to round-off
     */
    public static Complex[] solve(double[][] real, double[][] imaginary, Complex[] right) {
        int n = right.length;
        DMatrixRMaj matrix = new DMatrixRMaj(2 * n, 2 * n);
        DMatrixRMaj r = new DMatrixRMaj(2 * n, 1);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                matrix.set(i, j, real[i][j]);
                matrix.set(n + i, n + j, real[i][j]);
                matrix.set(i, n + j, -imaginary[i][j]);
                matrix.set(n + i, j, imaginary[i][j]);
            }
            r.set(i, 0, right[i].getReal());
            r.set(n + i, 0, right[i].getImaginary());
        }
        LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.lu(2 * n);
        DMatrixRMaj x = new DMatrixRMaj(2 * n, 1);
        if (!solver.setA(matrix)) {
            throw new ArithmeticException("the equations have no single solution");
        }
        solver.solve(r, x);
        Complex[] result = new Complex[n];
        for (int i = 0; i < n; i++) {
            result[i] = new Complex(x.get(i, 0), x.get(n + i, 0));
        }
        return result;
    }
}
