package org.ridewright.solver;

import java.util.stream.IntStream;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;

/**
 * Where the energy went: work of the heights on the elements, change of stored energy, and dissipation, each from its own law.
 *
 * <p>On a step everything is a polynomial, so {@code ∫ f u̇ dt} and {@code ∫ f_d ċ dt} are exact. A slider that slides loses
 * {@code ±∫ S dc} less the change of {@code s²/(2 k_p)}, which follows from the compressions at which it began and ended; one that
 * is locked stores {@code s²/(2 k_p)}. A
 * contact that is compressed without passing on force loses what it gives up of its elastic energy. Wheels that push along their
 * contact normals add {@code −∫ N u′ ξ̇ dt} to the work, stated forces theirs.
 */
final class EnergyAudit {
    /** Below this both road work and dissipation count as nil (J). */
    private static final double LEAST = 1e-3;

    private final FlatLaws laws;
    private final Regime regime;
    private final HeldLaws held;
    private final TaylorSeries series;
    private final CurvedTerms curved;
    private final PushTerms pushes;
    private final double[] dissipated;
    /** Compression at which the present stretch of friction or of lifting began, of each element. */
    private final double[] since;

    private final double[] first;
    private final double[] second;
    private final double[] integralWeights;
    /** {@code 1/(k + 1)}. */
    private final double[] inverse;

    private final Element[] elements;
    private double work;

    EnergyAudit(
            FlatLaws laws,
            Regime regime,
            HeldLaws held,
            TaylorSeries series,
            CurvedTerms curved,
            PushTerms pushes,
            int most) {
        this.laws = laws;
        this.regime = regime;
        this.held = held;
        this.series = series;
        this.curved = curved;
        this.pushes = pushes;
        dissipated = new double[laws.ne];
        since = new double[laws.ne];
        first = new double[most + 3];
        second = new double[most + 3];
        integralWeights = new double[2 * most + 8];
        inverse = IntStream.range(0, integralWeights.length)
                .mapToDouble(k -> 1.0 / (k + 1))
                .toArray();
        elements = laws.equations.elements().toArray(Element[]::new);
    }

    /** Begins with given compressions. */
    void begin(double[] compressions) {
        System.arraycopy(compressions, 0, since, 0, since.length);
    }

    /** Takes in a step up to τ = end. */
    void step(double end) {
        int order = series.order();
        double power = end;
        for (int k = 0; k <= 2 * order + 2; k++) {
            integralWeights[k] = power * inverse[k];
            power *= end;
        }
        int inputs = laws.equations.inputs();
        for (int e : laws.driven) {
            if (series.inputDegree() > 0 && regime.acts(e)) {
                work += workOf(e, laws.input[e], inputs, order);
            }
        }
        if (!pushes.isEmpty()) {
            work += pushes.work(series, end);
        }
        for (int e = 0; e < laws.ne; e++) {
            if (laws.damped[e] && regime.acts(e)) {
                dissipated[e] += viscousLoss(e, order);
            }
        }
        for (int e : curved.elements) {
            if (laws.envelope[e] > 0 && regime.acts(e)) {
                dissipated[e] += envelopeLoss(e, order);
            }
        }
    }

    /** {@code ∫ f u̇ dt}. */
    private double workOf(int e, int in, int inputs, int order) {
        double sum = 0;
        for (int j = 0; j < series.inputDegree(); j++) {
            double slope = (j + 1) * series.u[(j + 1) * inputs + in];
            if (slope != 0) {
                double inner = 0;
                for (int k = 0; k <= order + 1; k++) {
                    inner += series.force[k * laws.ne + e] * integralWeights[j + k];
                }
                sum += slope * inner;
            }
        }
        return sum;
    }

    /** {@code ∫ (d_0 + d ċ) ċ dt}. */
    private double viscousLoss(int e, int order) {
        int ne = laws.ne;
        double[] y = first;
        for (int i = 0, at = e; i <= order; i++, at += ne) {
            y[i] = series.speed[at];
        }
        double square = 0;
        for (int i = 0; i <= order; i++) {
            double even = 0;
            double odd = 0;
            int j = i + 1;
            for (; j + 1 <= order; j += 2) {
                even += y[j] * integralWeights[i + j];
                odd += y[j + 1] * integralWeights[i + j + 1];
            }
            if (j <= order) {
                even += y[j] * integralWeights[i + j];
            }
            square += y[i] * (y[i] * integralWeights[2 * i] + 2 * (even + odd));
        }
        double loss = held.damping[e] * square;
        if (regime.dampingOffset[e] != 0) {
            for (int i = 0; i <= order; i++) {
                loss += regime.dampingOffset[e] * y[i] * integralWeights[i];
            }
        }
        return series.h() * loss;
    }

    private double envelopeLoss(int e, int order) {
        for (int k = 0; k <= order; k++) {
            first[k] = curved.friction(laws.sliderFrom[e], k);
            second[k] = series.speed[k * laws.ne + e];
        }
        double sum = 0;
        for (int i = 0; i <= order; i++) {
            double inner = 0;
            for (int j = 0; j <= order; j++) {
                inner += second[j] * integralWeights[i + j];
            }
            sum += first[i] * inner;
        }
        return series.h() * sum;
    }

    /** Settles the friction and lifting of element e up to compression c, before its regime changes there. */
    void settle(int e, double c) {
        if (regime.acts(e) && laws.envelope[e] == 0) {
            for (int j = laws.sliderFrom[e]; j < laws.sliderFrom[e + 1]; j++) {
                if (regime.slider[j] != Regime.LOCKED) {
                    dissipated[e] += slidingLoss(e, j, c);
                }
            }
        }
        if (laws.pushes[e] && regime.contact[e] == Regime.LIFTING) {
            dissipated[e] -= elasticWork(e, c);
        }
        since[e] = c;
    }

    /** Takes in the work of a height that jumps by {@code rise} (m) under element e, compressed by c before. */
    void jump(int e, double c, double rise) {
        settle(e, c);
        since[e] = c + rise;
        if (laws.pushes[e]) {
            work += elements[e].law().elasticEnergy(Math.max(0, c + rise))
                    - elements[e].law().elasticEnergy(Math.max(0, c));
        } else {
            work += elements[e].law().elasticEnergy(c + rise)
                    - elements[e].law().elasticEnergy(c);
        }
    }

    /** Takes in what slider j lets go of as it begins to slide: its limit is passed by round-off before that is seen. */
    void release(int j, double before, double after) {
        dissipated[laws.sliderElement[j]] += (before * before - after * after) / (2 * laws.sliderRate[j]);
    }

    /** {@code ∫ s dc}, less what the slider's own spring takes up as its limit grows (J). */
    private double slidingLoss(int e, int j, double c) {
        double grown = regime.loaded[e] ? laws.mu[e] * leafWork(e, c) : 0;
        double before = regime.sliding(j, regime.leafForce(e, since[e]));
        double after = regime.sliding(j, regime.leafForce(e, c));
        return regime.slider[j] * laws.sliderShare[j] * (laws.constant[e] * (c - since[e]) + grown)
                - (after * after - before * before) / (2 * laws.sliderRate[j]);
    }

    /** {@code ∫ f_e dc} since the stretch began (J). */
    private double elasticWork(int e, double c) {
        return elements[e].law().elasticEnergy(c) - elements[e].law().elasticEnergy(since[e]);
    }

    /** {@code ∫ f_l dc} since the stretch began (J). */
    private double leafWork(int e, double c) {
        return elements[e].law().leafEnergy(c) - elements[e].law().leafEnergy(since[e]);
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

    /** Closes the books, with the elements in the order given. */
    EnergyBalance close(double storedBefore, double storedAfter, ElementOrder order) {
        double total = 0;
        for (double loss : dissipated) {
            total += loss;
        }
        double residual = work - (storedAfter - storedBefore) - total;
        return new EnergyBalance(
                work, storedAfter - storedBefore, order.elementsAsGiven(dissipated), total, residual, LEAST);
    }
}
