package org.ridewright.solver;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.ridewright.dynamics.Equations;
import org.ridewright.dynamics.StatedForce;
import org.ridewright.dynamics.WheelPush;

/**
 * Coefficients of the forces that are no element's, by Cauchy products. Mutable, one per run; empty for a vehicle that has none.
 *
 * <p>The slope of a wheel path follows from {@code v u′ = u̇}: {@code u′_k = (u̇_k − Σ_{j≥1} v_j u′_{k−j})/v_0}. The force is
 * {@code row Σ_j u′_j N_{k−j}}.
 */
final class PushTerms {
    private final int n;
    private final int ne;
    private final int inputs;
    private final int speed;
    private final int wheels;
    private final int[] element;
    private final int[] input;
    private final double[] wheelRow;
    private final double[] wheelW;
    private final int forces;
    private final int[] forceInput;
    private final double[] forceRow;
    private final double[] forceW;

    /** Row k: coefficient k of u′ under each wheel. */
    private final double[] slope;

    private final double[] product;
    private final double[] power;
    /** Highest power of u′ that may not be zero. */
    private int slopeDegree;

    /** @param rows of coefficients */
    PushTerms(FlatLaws laws, int rows) {
        Equations equations = laws.equations;
        n = laws.n;
        ne = laws.ne;
        inputs = equations.inputs();
        List<WheelPush> pushes = equations.pushes().wheels();
        List<StatedForce> stated = equations.pushes().stated();
        speed = equations.pushes().speed();
        wheels = pushes.size();
        element = pushes.stream().mapToInt(WheelPush::element).toArray();
        input = IntStream.of(element).map(e -> laws.input[e]).toArray();
        wheelRow = rows(pushes.stream().map(WheelPush::row).toList());
        wheelW = accelerations(equations, wheelRow, wheels);
        forces = stated.size();
        forceInput = stated.stream().mapToInt(StatedForce::input).toArray();
        forceRow = rows(stated.stream().map(StatedForce::row).toList());
        forceW = accelerations(equations, forceRow, forces);
        slope = new double[rows * wheels];
        product = new double[isEmpty() ? 0 : 2 * rows];
        power = new double[isEmpty() ? 0 : rows];
    }

    private double[] rows(List<double[]> rows) {
        double[] all = new double[rows.size() * n];
        for (int i = 0; i < rows.size(); i++) {
            System.arraycopy(rows.get(i), 0, all, i * n, n);
        }
        return all;
    }

    /** {@code M⁻¹ rowᵀ} of each row. */
    private static double[] accelerations(Equations equations, double[] rows, int count) {
        int n = equations.size();
        double[] w = new double[count * n];
        for (int r = 0; r < count; r++) {
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    w[r * n + i] += equations.inverseMass(i, j) * rows[r * n + j];
                }
            }
        }
        return w;
    }

    boolean isEmpty() {
        return wheels == 0 && forces == 0;
    }

    /** Power below which a series may not end: products of heights reach twice as far as the heights. */
    int least(int inputDegree) {
        return wheels == 0 ? inputDegree : 2 * inputDegree - 1;
    }

    /**
     * Adds the accelerations of coefficient k, with coefficients 0 to k of the elements' forces known.
     *
     * @param h time for which τ runs from 0 to 1 (s)
     * @param u coefficients of what the elements follow, up to {@code inputDegree}
     */
    void accelerate(int k, double h, double[] u, int inputDegree, double[] force, double[] acceleration) {
        if (k == 0) {
            boolean steady = true;
            for (int j = 1; j <= inputDegree; j++) {
                steady &= wheels == 0 || u[j * inputs + speed] == 0;
            }
            slopeDegree = steady ? inputDegree - 1 : Integer.MAX_VALUE;
        }
        for (int p = 0; p < wheels; p++) {
            if (k <= slopeDegree) {
                slope[k * wheels + p] = slope(p, k, h, u, inputDegree);
            }
            double push = 0;
            for (int j = 0; j <= Math.min(k, slopeDegree); j++) {
                push += slope[j * wheels + p] * force[(k - j) * ne + element[p]];
            }
            add(wheelW, p, push, acceleration);
        }
        for (int f = 0; f < forces && k <= inputDegree; f++) {
            add(forceW, f, u[k * inputs + forceInput[f]], acceleration);
        }
    }

    private double slope(int p, int k, double h, double[] u, int inputDegree) {
        double rest = k < inputDegree ? (k + 1) * u[(k + 1) * inputs + input[p]] / h : 0;
        for (int j = 1; j <= Math.min(k, inputDegree); j++) {
            rest -= u[j * inputs + speed] * slope[(k - j) * wheels + p];
        }
        return rest / u[speed];
    }

    private void add(double[] w, int row, double force, double[] acceleration) {
        for (int i = 0; i < n; i++) {
            acceleration[i] += w[row * n + i] * force;
        }
    }

    /** Adds the accelerations at one instant, from heights and speeds in rows 0 and 1 of u. */
    void accelerateAt(double[] u, double[] force, double[] acceleration) {
        for (int p = 0; p < wheels; p++) {
            add(wheelW, p, u[inputs + input[p]] / u[speed] * force[element[p]], acceleration);
        }
        for (int f = 0; f < forces; f++) {
            add(forceW, f, u[forceInput[f]], acceleration);
        }
    }

    /** Scales the slopes to a step shortened to the given share. */
    void rescale(double share, int last) {
        double factor = 1;
        for (int k = 0; k <= Math.min(last, slopeDegree); k++) {
            for (int p = 0; p < wheels; p++) {
                slope[k * wheels + p] *= factor;
            }
            factor *= share;
        }
    }

    /** Work over a step up to τ = end: {@code ∫ N u′ row·v dt + ∫ F row·v dt} (J). */
    double work(TaylorSeries series, double end) {
        double sum = 0;
        int order = series.order();
        for (int p = 0; p < wheels; p++) {
            Arrays.fill(product, 0);
            int degree = Math.min(order, slopeDegree);
            for (int j = 0; j <= degree; j++) {
                double factor = slope[j * wheels + p];
                for (int k = 0; factor != 0 && k <= order + 1; k++) {
                    product[j + k] += factor * series.force[k * ne + element[p]];
                }
            }
            sum += against(wheelRow, p, series, order + 1 + Math.max(0, degree), end);
        }
        for (int f = 0; f < forces; f++) {
            Arrays.fill(product, 0);
            for (int k = 0; k <= series.inputDegree(); k++) {
                product[k] = series.u[k * inputs + forceInput[f]];
            }
            sum += against(forceRow, f, series, series.inputDegree(), end);
        }
        return sum;
    }

    /** {@code ∫ product · (row v) dt} up to τ = end. */
    private double against(double[] rows, int row, TaylorSeries series, int degree, double end) {
        int order = series.order();
        double sum = 0;
        for (int k = 0; k <= order; k++) {
            power[k] = 0;
            for (int i = 0; i < n; i++) {
                power[k] += rows[row * n + i] * series.v[k * n + i];
            }
        }
        for (int j = degree; j >= 0; j--) {
            double inner = 0;
            for (int k = order; k >= 0; k--) {
                inner = inner * end + power[k] / (j + k + 1);
            }
            sum = sum * end + product[j] * inner;
        }
        return sum * end * series.h();
    }
}
