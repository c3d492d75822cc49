package org.ridewright.solver;

import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;

/**
 * Where the energy went: work of the heights on the elements, change of stored energy, and dissipation, each from its own law.
 *
 * <p>On a step everything is a polynomial, so {@code ∫ f u̇ dt}, {@code ∫ f_d ċ dt} and {@code ∫ s ċ dt} are exact. A slider stores
 * {@code s²/(2 k_p)}. While a contact is compressed without passing on force, what it loses of its elastic energy, {@code −f_e ċ}, is
 * dissipated.
 */
final class EnergyAudit {
    /** Below this both road work and dissipation count as nil (J). */
    private static final double LEAST = 1e-3;

    private final FlatLaws laws;
    private final Regime regime;
    private final TaylorSeries series;
    private final double[] dissipated;
    private final double[] first;
    private final double[] second;
    private final double[] integralWeights;
    private double work;

    EnergyAudit(FlatLaws laws, Regime regime, TaylorSeries series, int most) {
        this.laws = laws;
        this.regime = regime;
        this.series = series;
        dissipated = new double[laws.ne];
        first = new double[most + 3];
        second = new double[most + 3];
        integralWeights = new double[2 * most + 8];
    }

    void step(double end) {
        int order = series.order();
        double power = end;
        for (int k = 0; k < integralWeights.length; k++) {
            integralWeights[k] = power / (k + 1);
            power *= end;
        }
        int inputs = laws.equations.inputs();
        for (int e = 0; e < laws.ne; e++) {
            int in = laws.input[e];
            if (in >= 0 && regime.acts(e)) {
                work += workOf(e, in, inputs, order);
            }
            boolean rubs = laws.sliderFrom[e + 1] > laws.sliderFrom[e];
            boolean lifting = laws.pushes[e] && regime.contact[e] == Regime.LIFTING;
            if (lifting || (regime.acts(e) && (laws.damped[e] || rubs))) {
                dissipated[e] += series.h() * lossOf(e, order, lifting);
            }
        }
    }

    private double workOf(int e, int in, int inputs, int order) {
        int degree = -1;
        for (int k = 0; k <= order; k++) {
            second[k] = (k + 1) * series.u[(k + 1) * inputs + in];
            if (second[k] != 0) {
                degree = k;
            }
        }
        if (degree < 0) {
            return 0;
        }
        for (int k = 0; k <= order; k++) {
            first[k] = series.force[k * laws.ne + e];
        }
        return product(order, degree);
    }

    private double lossOf(int e, int order, boolean lifting) {
        int ns = laws.sliders();
        for (int k = 0; k <= order; k++) {
            double f = lifting ? -series.elastic[k * laws.ne + e] : series.viscous[k * laws.ne + e];
            for (int j = laws.sliderFrom[e]; j < laws.sliderFrom[e + 1]; j++) {
                f += series.s[k * ns + j];
            }
            first[k] = f;
            second[k] = series.speed[k * laws.ne + e];
        }
        return product(order, order);
    }

    private double product(int degreeFirst, int degreeSecond) {
        double sum = 0;
        for (int i = 0; i <= degreeFirst; i++) {
            double inner = 0;
            for (int j = 0; j <= degreeSecond; j++) {
                inner += second[j] * integralWeights[i + j];
            }
            sum += first[i] * inner;
        }
        return sum;
    }

    /** Energy stored in motion, gravity, springs and locked friction (J). */
    static double stored(Equations equations, double[] q, double[] v, double[] s, double[] u) {
        double sum = equations.kineticEnergy(v) + equations.gravityEnergy(q);
        int slider = 0;
        for (int e = 0; e < equations.elements().size(); e++) {
            Element element = equations.elements().get(e);
            double c = equations.compression(e, q, u);
            if (!element.law().pushesOnly() || c > 0) {
                sum += element.law().elasticEnergy(c);
            }
            if (!element.law().friction().isEnvelope()) {
                for (double kp : element.law().friction().lockedRates()) {
                    sum += s[slider] * s[slider] / (2 * kp);
                    slider++;
                }
            } else {
                slider += element.law().friction().states();
            }
        }
        return sum;
    }

    /** Frictional stores apart, {@code s²/(2 k_p)} of an element's sliders (J). */
    private static double frictionStore(FlatLaws laws, int e, double[] s) {
        double sum = 0;
        if (laws.envelope[e] == 0) {
            for (int j = laws.sliderFrom[e]; j < laws.sliderFrom[e + 1]; j++) {
                sum += s[j] * s[j] / (2 * laws.sliderRate[j]);
            }
        }
        return sum;
    }

    /** Closes the books. */
    EnergyBalance close(double storedBefore, double storedAfter, double[] sBefore, double[] sAfter) {
        double[] loss = dissipated.clone();
        double total = 0;
        for (int e = 0; e < laws.ne; e++) {
            loss[e] -= frictionStore(laws, e, sAfter) - frictionStore(laws, e, sBefore);
            total += loss[e];
        }
        double residual = work - (storedAfter - storedBefore) - total;
        return new EnergyBalance(work, storedAfter - storedBefore, loss, total, residual, LEAST);
    }
}
