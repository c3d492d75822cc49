package org.ridewright.dynamics;

import java.util.ArrayList;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/** Equations of motion of one vehicle under one load; immutable. */
public final class Equations {
    private final int size;
    private final double[] mass;
    private final double[] inverseMass;
    private final double[] gravityStiffness;
    private final double[] gravityForce;
    private final List<Element> elements;
    private final int inputs;
    private final Pushes pushes;

    /**
     * @param mass M, symmetric positive definite, row-major n × n; copied
     * @param gravityStiffness K_g, symmetric, row-major n × n; copied
     * @param gravityForce g_q, length n; copied
     * @param inputs number of heights that elements follow
     * @throws IllegalArgumentException if shapes disagree or M is not positive definite
     */
    public Equations(
            double[] mass, double[] gravityStiffness, double[] gravityForce, List<Element> elements, int inputs) {
        this(mass, inverse(mass, gravityForce.length), gravityStiffness, gravityForce, elements, inputs, Pushes.NONE);
    }

    private Equations(
            double[] mass,
            double[] inverseMass,
            double[] gravityStiffness,
            double[] gravityForce,
            List<Element> elements,
            int inputs,
            Pushes pushes) {
        this.size = gravityForce.length;
        if (mass.length != size * size || gravityStiffness.length != size * size) {
            throw new IllegalArgumentException("matrices must be " + size + " × " + size);
        }
        this.mass = mass.clone();
        this.inverseMass = inverseMass;
        this.gravityStiffness = gravityStiffness.clone();
        this.gravityForce = gravityForce.clone();
        this.elements = List.copyOf(elements);
        this.inputs = inputs;
        this.pushes = pushes;
        for (Element e : elements) {
            if (e.row().length != size || e.input() >= inputs) {
                throw new IllegalArgumentException("element '" + e.name() + "' does not fit the coordinates");
            }
        }
        for (WheelPush push : pushes.wheels()) {
            if (push.row().length != size || elements.get(push.element()).input() < 0 || pushes.speed() >= inputs) {
                throw new IllegalArgumentException("the push of element " + push.element() + " does not fit");
            }
        }
        for (StatedForce force : pushes.stated()) {
            if (force.row().length != size || force.input() >= inputs) {
                throw new IllegalArgumentException("'" + force.name() + "' does not fit the coordinates");
            }
        }
    }

    private static double[] inverse(double[] mass, int n) {
        DMatrixRMaj matrix = new DMatrixRMaj(n, n, true, mass);
        LinearSolverDense<DMatrixRMaj> cholesky = LinearSolverFactory_DDRM.chol(n);
        if (!cholesky.setA(matrix.copy())) {
            throw new IllegalArgumentException(
                    "the mass matrix is not positive definite: no body has such masses and inertias");
        }
        DMatrixRMaj result = new DMatrixRMaj(n, n);
        cholesky.invert(result);
        DMatrixRMaj transposed = CommonOps_DDRM.transpose(result, null);
        CommonOps_DDRM.add(0.5, result, 0.5, transposed, result);
        return result.getData().clone();
    }

    /** The same with other elements, one for one. */
    public Equations withElements(List<Element> newElements) {
        return new Equations(mass, inverseMass, gravityStiffness, gravityForce, newElements, inputs, pushes);
    }

    /** The same with other forces that are no element's. */
    public Equations withPushes(Pushes newPushes) {
        return new Equations(mass, inverseMass, gravityStiffness, gravityForce, elements, inputs, newPushes);
    }

    /** The same with one more stated force, {@code Q = row · F(t)}; F(t) follows the inputs that there are. */
    public Equations withForce(String name, double[] row) {
        List<StatedForce> stated = new ArrayList<>(pushes.stated());
        stated.add(new StatedForce(name, row.clone(), inputs));
        Pushes more = new Pushes(pushes.wheels(), pushes.speed(), stated);
        return new Equations(mass, inverseMass, gravityStiffness, gravityForce, elements, inputs + 1, more);
    }

    /** Number of coordinates n. */
    public int size() {
        return size;
    }

    /** Number of heights that elements follow. */
    public int inputs() {
        return inputs;
    }

    /** Force elements, in the order of their indices. */
    public List<Element> elements() {
        return elements;
    }

    /** Forces that are no element's. */
    public Pushes pushes() {
        return pushes;
    }

    /** {@code M_ij}. */
    public double mass(int i, int j) {
        return mass[i * size + j];
    }

    /** {@code (M⁻¹)_ij}. */
    public double inverseMass(int i, int j) {
        return inverseMass[i * size + j];
    }

    /** {@code K_g,ij}. */
    public double gravityStiffness(int i, int j) {
        return gravityStiffness[i * size + j];
    }

    /** {@code g_q,i} (N or N·m). */
    public double gravityForce(int i) {
        return gravityForce[i];
    }

    /** Potential energy of gravity {@code g_q·q + ½ qᵀ K_g q} (J). */
    public double gravityEnergy(double[] q) {
        double sum = 0;
        for (int i = 0; i < size; i++) {
            sum += gravityForce[i] * q[i];
            for (int j = 0; j < size; j++) {
                sum += gravityStiffness[i * size + j] * q[i] * q[j] / 2;
            }
        }
        return sum;
    }

    /** Kinetic energy {@code ½ vᵀ M v} (J). */
    public double kineticEnergy(double[] v) {
        double sum = 0;
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                sum += mass[i * size + j] * v[i] * v[j] / 2;
            }
        }
        return sum;
    }

    /** Compression of element i at q, heights u. */
    public double compression(int i, double[] q, double[] u) {
        Element e = elements.get(i);
        double c = e.input() >= 0 ? u[e.input()] : 0;
        for (int j = 0; j < size; j++) {
            c += e.row()[j] * q[j];
        }
        return c;
    }
}
