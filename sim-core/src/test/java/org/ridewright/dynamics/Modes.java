package org.ridewright.dynamics;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * Undamped modes {@code (K − ω² M) a = 0} of a vehicle about its position of rest, friction left out, contacts touching.
 *
 * @param omegas natural frequencies, rising (rad/s)
 * @param shapes coordinates of each mode, of any length
 */
public record Modes(double[] omegas, double[][] shapes) {
    /** The modes of a vehicle. */
    public static Modes of(VehicleModel model) {
        return of(model.equations(), model.rest().compression());
    }

    /** The modes with each element on the piece where these compressions put it. */
    public static Modes of(Equations equations, double[] compression) {
        int n = equations.size();
        EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(n, true);
        if (!eigen.decompose(dynamic(equations, compression))) {
            throw new IllegalStateException("no eigenvalues found");
        }
        int[] order = IntStream.range(0, n)
                .boxed()
                .sorted(Comparator.comparing(i -> eigen.getEigenvalue(i).getReal()))
                .mapToInt(i -> i)
                .toArray();
        return new Modes(
                Arrays.stream(order)
                        .mapToDouble(i -> Math.sqrt(eigen.getEigenvalue(i).getReal()))
                        .toArray(),
                Arrays.stream(order)
                        .mapToObj(i -> eigen.getEigenVector(i).getData().clone())
                        .toArray(double[][]::new));
    }

    /** M⁻¹K. */
    private static DMatrixRMaj dynamic(Equations equations, double[] compression) {
        int n = equations.size();
        DMatrixRMaj result = new DMatrixRMaj(n, n);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double sum = 0;
                for (int k = 0; k < n; k++) {
                    double stiffness = equations.gravityStiffness(k, j);
                    for (int e = 0; e < equations.elements().size(); e++) {
                        Element element = equations.elements().get(e);
                        stiffness += element.law().elasticRate(compression[e]) * element.row()[k] * element.row()[j];
                    }
                    sum += equations.inverseMass(i, k) * stiffness;
                }
                result.set(i, j, sum);
            }
        }
        return result;
    }
}
