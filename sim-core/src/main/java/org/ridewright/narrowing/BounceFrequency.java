package org.ridewright.narrowing;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.CholeskyDecomposition_F64;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;
import org.ridewright.dynamics.VehicleModel;

/**
 * Undamped natural frequency (Hz) of the mode in which the body heaves most, springs sliding: {@code (K − ω² M) a = 0} about the position of
 * rest, {@code K = K_g + Σ f_e'(c_i) B_iᵀ B_i}.
 */
final class BounceFrequency {
    private BounceFrequency() {}

    static double of(VehicleModel model) {
        Equations equations = model.equations();
        int n = equations.size();
        DMatrixRMaj mass = new DMatrixRMaj(n, n);
        DMatrixRMaj stiffness = new DMatrixRMaj(n, n);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                mass.set(i, j, equations.mass(i, j));
                stiffness.set(i, j, equations.gravityStiffness(i, j));
            }
        }
        for (int e = 0; e < equations.elements().size(); e++) {
            Element element = equations.elements().get(e);
            double rate = element.law().elasticRate(model.rest().compression()[e]);
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    stiffness.add(i, j, rate * element.row()[i] * element.row()[j]);
                }
            }
        }
        return frequency(mass, stiffness, model.coordinates().heave());
    }

    /** In the coordinates {@code p = Lᵀ q}, {@code M = L Lᵀ}, in which the mass matrix is the unit matrix. */
    private static double frequency(DMatrixRMaj mass, DMatrixRMaj stiffness, int heave) {
        int n = mass.getNumRows();
        CholeskyDecomposition_F64<DMatrixRMaj> cholesky = DecompositionFactory_DDRM.chol(n, true);
        if (!cholesky.decompose(mass.copy())) {
            return Double.NaN;
        }
        DMatrixRMaj inverse = cholesky.getT(null);
        CommonOps_DDRM.invert(inverse);
        DMatrixRMaj half = new DMatrixRMaj(n, n);
        DMatrixRMaj reduced = new DMatrixRMaj(n, n);
        CommonOps_DDRM.mult(inverse, stiffness, half);
        CommonOps_DDRM.multTransB(half, inverse, reduced);
        EigenDecomposition_F64<DMatrixRMaj> modes = DecompositionFactory_DDRM.eig(n, true, true);
        if (!modes.decompose(reduced)) {
            return Double.NaN;
        }
        double most = -1;
        double square = Double.NaN;
        for (int k = 0; k < n; k++) {
            DMatrixRMaj q = new DMatrixRMaj(n, 1);
            CommonOps_DDRM.multTransA(inverse, modes.getEigenVector(k), q);
            double part = mass.get(heave, heave) * q.get(heave, 0) * q.get(heave, 0);
            if (part > most) {
                most = part;
                square = modes.getEigenvalue(k).getReal();
            }
        }
        return square > 0 ? Math.sqrt(square) / (2 * Math.PI) : Double.NaN;
    }
}
