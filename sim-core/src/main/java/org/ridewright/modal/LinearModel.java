package org.ridewright.modal;

import java.util.List;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;
import org.ridewright.dynamics.StaticState;
import org.ridewright.dynamics.VehicleModel;

/** Equations of small motions about a position of rest; immutable. */
public final class LinearModel {
    private final Equations equations;
    private final StaticState rest;
    private final double[] rates;
    private final double[] dampings;

    private LinearModel(Equations equations, StaticState rest, double[] rates, double[] dampings) {
        this.equations = equations;
        this.rest = rest;
        this.rates = rates;
        this.dampings = dampings;
    }

    /** Small motions of a vehicle about where it stands. */
    public static LinearModel of(VehicleModel model, Condition condition) {
        return of(model.equations(), model.rest(), condition);
    }

    /** Small motions about a position of rest. */
    public static LinearModel of(Equations equations, StaticState rest, Condition condition) {
        List<Element> elements = equations.elements();
        double[] rates = new double[elements.size()];
        double[] dampings = new double[elements.size()];
        for (int e = 0; e < rates.length; e++) {
            double c = rest.compression()[e];
            rates[e] = Linearisation.rate(elements.get(e).law(), c, condition);
            dampings[e] = Linearisation.damping(elements.get(e).law(), c);
        }
        return new LinearModel(equations, rest, rates, dampings);
    }

    /**
     * The same with other rates and dampings of the elements.
     *
     * @param newRates k of each element (N/m), length of the elements; copied
     * @param newDampings d of each (N·s/m); copied
     */
    public LinearModel with(double[] newRates, double[] newDampings) {
        if (newRates.length != rates.length || newDampings.length != rates.length) {
            throw new IllegalArgumentException("one rate and one damping per element, " + rates.length);
        }
        return new LinearModel(equations, rest, newRates.clone(), newDampings.clone());
    }

    /** Number of coordinates n. */
    public int size() {
        return equations.size();
    }

    /** The equations whose small motions these are. */
    public Equations equations() {
        return equations;
    }

    /** Position of rest. */
    public StaticState rest() {
        return rest;
    }

    /** k of element i (N/m). */
    public double rate(int i) {
        return rates[i];
    }

    /** d of element i (N·s/m). */
    public double damping(int i) {
        return dampings[i];
    }

    /** M, n × n, new. */
    public double[][] massMatrix() {
        double[][] m = new double[size()][size()];
        for (int i = 0; i < size(); i++) {
            for (int j = 0; j < size(); j++) {
                m[i][j] = equations.mass(i, j);
            }
        }
        return m;
    }

    /** {@code K = K_g + Σ k_i B_iᵀ B_i}, n × n, new. */
    public double[][] stiffnessMatrix() {
        double[][] k = sum(rates);
        for (int i = 0; i < size(); i++) {
            for (int j = 0; j < size(); j++) {
                k[i][j] += equations.gravityStiffness(i, j);
            }
        }
        return k;
    }

    /** {@code C = Σ d_i B_iᵀ B_i}, n × n, new. */
    public double[][] dampingMatrix() {
        return sum(dampings);
    }

    private double[][] sum(double[] factors) {
        double[][] total = new double[size()][size()];
        for (int e = 0; e < factors.length; e++) {
            double[] b = equations.elements().get(e).row();
            for (int i = 0; i < size() && factors[e] != 0; i++) {
                for (int j = 0; j < size(); j++) {
                    total[i][j] += factors[e] * b[i] * b[j];
                }
            }
        }
        return total;
    }
}
