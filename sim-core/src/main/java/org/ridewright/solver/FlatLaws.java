package org.ridewright.solver;

import java.util.List;
import java.util.stream.IntStream;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.FrictionLaw;
import org.ridewright.suspension.GasLaw;
import org.ridewright.suspension.Pieces;

/** Equations and laws laid out in arrays for the inner loops; immutable after construction. */
final class FlatLaws {
    /** Round-off allowed in a compression (m). */
    static final double SLACK_COMPRESSION = 1e-13;
    /** Round-off allowed in a speed of compression (m/s). */
    static final double SLACK_SPEED = 1e-13;

    final Equations equations;
    /** Number of coordinates. */
    final int n;
    /** Number of elements. */
    final int ne;
    /** {@code B_i}, n to each element. */
    final double[] row;
    /** {@code w_i = −M⁻¹B_iᵀ}, n to each element. */
    final double[] w;
    /** {@code −M⁻¹g_q}. */
    final double[] freeFall;
    /** Entries of {@code −M⁻¹K_g} that are not zero, with their rows and columns. */
    final double[] gravity;

    final int[] gravityRow;
    final int[] gravityColumn;
    /** Index of the height that an element follows, or −1. */
    final int[] input;
    /** Indices of the elements that follow a height. */
    final int[] driven;
    /** Whether gas or an exponential envelope makes the law of an element curved. */
    final boolean[] curved;

    /** f_0 (N), k (N/m) and d (N·s/m) of each element, see {@link ForceLaw}. */
    final double[] offset;

    final double[] rate;
    final double[] damping;
    final boolean[] pushes;
    final boolean[] damped;
    /** Gapped pieces in c of element e are those from {@code stageFrom[e]} to before {@code stageFrom[e + 1]}; so below. */
    final int[] stageFrom;

    final double[] stageSlope;
    final double[] stageAt;
    final int[] stageSide;
    /** Whether a piece is that of a stop, which presses no leaf on another. */
    final boolean[] stageStop;

    final int[] speedFrom;
    final double[] speedSlope;
    final double[] speedAt;
    final int[] speedSide;
    final int[] sliderFrom;
    final double[] sliderShare;
    final double[] sliderRate;
    final int[] sliderElement;
    /** μ, F_0 (N) and β (m) of each element's friction. */
    final double[] mu;

    final double[] constant;
    final double[] envelope;
    final GasLaw[] gas;
    /** Round-off allowed in a force (N). */
    final double[] slackForce;

    FlatLaws(Equations equations) {
        this.equations = equations;
        n = equations.size();
        List<Element> elements = equations.elements();
        ne = elements.size();
        row = new double[ne * n];
        w = new double[ne * n];
        input = new int[ne];
        offset = new double[ne];
        rate = new double[ne];
        damping = new double[ne];
        pushes = new boolean[ne];
        damped = new boolean[ne];
        mu = new double[ne];
        constant = new double[ne];
        envelope = new double[ne];
        gas = new GasLaw[ne];
        curved = new boolean[ne];
        slackForce = new double[ne];
        stageFrom = new int[ne + 1];
        speedFrom = new int[ne + 1];
        sliderFrom = new int[ne + 1];
        for (int e = 0; e < ne; e++) {
            ForceLaw law = elements.get(e).law();
            stageFrom[e + 1] = stageFrom[e] + law.allStages().count();
            speedFrom[e + 1] = speedFrom[e] + law.speedStages().count();
            sliderFrom[e + 1] = sliderFrom[e] + law.friction().states();
        }
        stageSlope = new double[stageFrom[ne]];
        stageAt = new double[stageFrom[ne]];
        stageSide = new int[stageFrom[ne]];
        stageStop = new boolean[stageFrom[ne]];
        speedSlope = new double[speedFrom[ne]];
        speedAt = new double[speedFrom[ne]];
        speedSide = new int[speedFrom[ne]];
        sliderShare = new double[sliderFrom[ne]];
        sliderRate = new double[sliderFrom[ne]];
        sliderElement = new int[sliderFrom[ne]];
        freeFall = new double[n];
        double weight = 0;
        for (int i = 0; i < n; i++) {
            weight = Math.max(weight, Math.abs(equations.gravityForce(i)));
        }
        for (int e = 0; e < ne; e++) {
            fill(e, elements.get(e), weight);
        }
        driven = IntStream.range(0, ne).filter(e -> input[e] >= 0).toArray();
        double[] coupling = coupling();
        int[] present = IntStream.range(0, n * n).filter(i -> coupling[i] != 0).toArray();
        gravity = IntStream.of(present).mapToDouble(i -> coupling[i]).toArray();
        gravityRow = IntStream.of(present).map(i -> i / n).toArray();
        gravityColumn = IntStream.of(present).map(i -> i % n).toArray();
    }

    private void fill(int e, Element element, double weight) {
        ForceLaw law = element.law();
        FrictionLaw friction = law.friction();
        System.arraycopy(element.row(), 0, row, e * n, n);
        for (int i = 0; i < n; i++) {
            double sum = 0;
            for (int j = 0; j < n; j++) {
                sum -= equations.inverseMass(i, j) * element.row()[j];
            }
            w[e * n + i] = sum;
        }
        input[e] = element.input();
        offset[e] = law.offset();
        rate[e] = law.rate();
        damping[e] = law.damping();
        pushes[e] = law.pushesOnly();
        damped[e] = law.damping() != 0 || law.speedStages().count() > 0;
        mu[e] = friction.share();
        constant[e] = friction.constant();
        envelope[e] = friction.envelopeLength();
        gas[e] = law.gas().orElse(null);
        curved[e] = !law.isPiecewiseLinear();
        Pieces stages = law.allStages();
        for (int p = 0; p < stages.count(); p++) {
            int at = stageFrom[e] + p;
            stageSlope[at] = stages.slope(p);
            stageAt[at] = stages.at(p);
            stageSide[at] = stages.side(p);
            stageStop[at] = p >= law.stages().count();
        }
        double greatestDamping = Math.abs(law.damping());
        for (int p = 0; p < law.speedStages().count(); p++) {
            int at = speedFrom[e] + p;
            speedSlope[at] = law.speedStages().slope(p);
            speedAt[at] = law.speedStages().at(p);
            speedSide[at] = law.speedStages().side(p);
            greatestDamping += Math.abs(law.speedStages().slope(p));
        }
        double[] shares = friction.limitShares();
        double[] rates = friction.lockedRates();
        for (int j = 0; j < shares.length; j++) {
            sliderShare[sliderFrom[e] + j] = shares[j];
            sliderRate[sliderFrom[e] + j] = rates[j];
            sliderElement[sliderFrom[e] + j] = e;
        }
        slackForce[e] = 1e-14 * weight
                + SLACK_COMPRESSION * (Math.abs(law.greatestRate()) + friction.lockedRate())
                + SLACK_SPEED * greatestDamping;
    }

    /** {@code −M⁻¹K_g}, row-major; fills {@code −M⁻¹g_q} by the way. */
    private double[] coupling() {
        double[] all = new double[n * n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                freeFall[i] -= equations.inverseMass(i, j) * equations.gravityForce(j);
                for (int k = 0; k < n; k++) {
                    all[i * n + j] -= equations.inverseMass(i, k) * equations.gravityStiffness(k, j);
                }
            }
        }
        return all;
    }

    String name(int element) {
        return equations.elements().get(element).name();
    }

    int sliders() {
        return sliderElement.length;
    }
}
