package org.ridewright.fieldwork;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;

/**
 * A leaf spring's law fitted to deflections under known loads.
 *
 * <p>The law is {@code F = f_e + s}, {@code f_e = k (δ − δ_0)}, {@code |s| ≤ S = F_0 + μ f_e}, and {@code ṡ = k_p δ̇} while locked. While it slides,
 *
 * <pre>
 *     loading    δ = δ_0 + (F − F_0)/(k (1 + μ))
 *     unloading  δ = δ_0 + (F + F_0)/(k (1 − μ))
 *     locked     dδ/dF = 1/(k + k_p) = λ/k
 * </pre>
 *
 * With the load growing, the spring is locked as long as that leaves it above the sliding line: {@code δ = max(locked, sliding)}; falling, the
 * minimum. So the deflections follow from row to row, in the order of the loads. Parameters are {@code k, μ, F_0, δ_0, λ} and the first
 * deflection, by Levenberg and Marquardt from several {@code λ}; the covariance is {@code (JᵀJ)⁻¹}, times the residuals' mean
 * square where that is above what their tolerances explain.
 *
 * @param load on the spring (N)
 * @param deflection as read with each (m)
 * @param tolerance of each deflection (m), > 0
 */
record LoopFit(double[] load, double[] deflection, double[] tolerance) {
    private static final int RATE = 0;
    private static final int SHARE = 1;
    private static final int CONSTANT = 2;
    private static final int ZERO = 3;
    private static final int FIRST = 4;
    private static final int COMPLIANCE = 5;
    private static final int WITHOUT_LOCKED = 5;
    private static final int WITH_LOCKED = 6;

    /** λ where the rows do not tell: {@code k_p = 2k}, as where a vehicle file does not. */
    private static final double USUAL = 1.0 / 3;

    private static final double[] STARTS = {USUAL, 0.12, 0.6};
    private static final double STEP = 1e-6;

    /**
     * What was found.
     *
     * @param rate k (N/m)
     * @param share μ
     * @param constant F_0 (N)
     * @param zero δ_0 (m)
     * @param compliance λ
     * @param covariance of the five, λ with zeros where the rows do not tell it
     * @param scatter root of the residuals' mean square over their tolerances
     */
    record Found(
            double rate,
            double share,
            double constant,
            double zero,
            double compliance,
            RealMatrix covariance,
            double scatter) {
        boolean tellsLocked() {
            return covariance.getEntry(4, 4) > 0;
        }
    }

    /** @throws MathRuntimeException if the rows do not make a loop of which a law could be found */
    Found find() {
        double[] start = start();
        Optional<Optimum> best = Optional.empty();
        for (double compliance : STARTS) {
            double[] from = Arrays.copyOf(start, WITH_LOCKED);
            from[COMPLIANCE] = compliance;
            Optional<Optimum> found = ended(from);
            if (found.isPresent()
                    && (best.isEmpty() || found.get().getCost() < best.get().getCost())) {
                best = found;
            }
        }
        if (best.isPresent() && tells(best.get().getPoint().toArray())) {
            return found(best.get().getPoint().toArray(), best.get(), true);
        }
        Optimum without = optimum(Arrays.copyOf(start, WITHOUT_LOCKED));
        return found(without.getPoint().toArray(), without, false);
    }

    /** None where the search has no end: at a row between locked and sliding the slopes change, and it may go to and fro. */
    private Optional<Optimum> ended(double[] from) {
        try {
            return Optional.of(optimum(from));
        } catch (MathIllegalStateException noEnd) {
            return Optional.empty();
        }
    }

    private boolean tells(double[] p) {
        return load.length > WITH_LOCKED
                && rowsLocked(p) >= 2
                && p[COMPLIANCE] > 0
                && p[COMPLIANCE] < 1
                && sensitive(p);
    }

    private Found found(double[] p, Optimum optimum, boolean locked) {
        int n = p.length;
        double[][] jacobian = jacobian(p);
        RealMatrix j = new Array2DRowRealMatrix(jacobian);
        DecompositionSolver solver = new QRDecomposition(j.transposeMultiply(j), 1e-14 * 1e-14).getSolver();
        RealMatrix inverse = solver.getInverse();
        int freedom = Math.max(1, load.length - n);
        double meanSquare = optimum.getCost() * optimum.getCost() / freedom;
        double factor = Math.max(1, meanSquare);
        double[] unit = units(n);
        RealMatrix covariance = new Array2DRowRealMatrix(5, 5);
        int[] place = {RATE, SHARE, CONSTANT, ZERO, COMPLIANCE};
        for (int a = 0; a < place.length; a++) {
            for (int b = 0; b < place.length; b++) {
                if (place[a] < n && place[b] < n) {
                    covariance.setEntry(
                            a, b, factor * inverse.getEntry(place[a], place[b]) * unit[place[a]] * unit[place[b]]);
                }
            }
        }
        return new Found(
                p[RATE] * unit[RATE],
                p[SHARE],
                p[CONSTANT] * unit[CONSTANT],
                p[ZERO] * unit[ZERO],
                locked ? p[COMPLIANCE] : USUAL,
                covariance,
                Math.sqrt(meanSquare));
    }

    /** Deflections that the law gives, row after row (m). */
    double[] predicted(double[] scaled) {
        double[] unit = units(scaled.length);
        double k = scaled[RATE] * unit[RATE];
        double mu = scaled[SHARE];
        double f0 = scaled[CONSTANT] * unit[CONSTANT];
        double zero = scaled[ZERO] * unit[ZERO];
        double compliance = (scaled.length > COMPLIANCE ? scaled[COMPLIANCE] : USUAL) / k;
        double[] delta = new double[load.length];
        delta[0] = scaled[FIRST] * unit[FIRST];
        for (int i = 1; i < load.length; i++) {
            double locked = delta[i - 1] + (load[i] - load[i - 1]) * compliance;
            if (load[i] > load[i - 1]) {
                delta[i] = Math.max(locked, zero + (load[i] - f0) / (k * (1 + mu)));
            } else if (load[i] < load[i - 1]) {
                delta[i] = Math.min(locked, zero + (load[i] + f0) / (k * (1 - mu)));
            } else {
                delta[i] = delta[i - 1];
            }
        }
        return delta;
    }

    /** How many deflections depend on λ. */
    private int rowsLocked(double[] p) {
        double[] shifted = p.clone();
        shifted[COMPLIANCE] += STEP;
        double[] before = predicted(p);
        double[] after = predicted(shifted);
        int rows = 0;
        for (int i = 1; i < before.length; i++) {
            rows += before[i] != after[i] ? 1 : 0;
        }
        return rows;
    }

    /** Whether λ is known to better than half of itself. */
    private boolean sensitive(double[] p) {
        RealMatrix j = new Array2DRowRealMatrix(jacobian(p));
        try {
            RealMatrix inverse = new QRDecomposition(j.transposeMultiply(j), 1e-14 * 1e-14)
                    .getSolver()
                    .getInverse();
            return Math.sqrt(inverse.getEntry(COMPLIANCE, COMPLIANCE)) < p[COMPLIANCE] / 2;
        } catch (MathRuntimeException singular) {
            return false;
        }
    }

    private Optimum optimum(double[] from) {
        MultivariateJacobianFunction model = point -> {
            double[] p = point.toArray();
            return new Pair<>(new ArrayRealVector(weighted(p)), new Array2DRowRealMatrix(jacobian(p)));
        };
        double[] target = new double[load.length];
        for (int i = 0; i < target.length; i++) {
            target[i] = deflection[i] / tolerance[i];
        }
        return new LevenbergMarquardtOptimizer()
                .optimize(new LeastSquaresBuilder()
                        .start(from)
                        .model(model)
                        .target(target)
                        .lazyEvaluation(false)
                        .maxEvaluations(2000)
                        .maxIterations(500)
                        .build());
    }

    private double[] weighted(double[] p) {
        double[] values = predicted(p);
        for (int i = 0; i < values.length; i++) {
            values[i] /= tolerance[i];
        }
        return values;
    }

    private double[][] jacobian(double[] p) {
        double[][] jacobian = new double[load.length][p.length];
        for (int c = 0; c < p.length; c++) {
            double step = STEP * Math.max(1, Math.abs(p[c]));
            double[] up = p.clone();
            double[] down = p.clone();
            up[c] += step;
            down[c] -= step;
            double[] above = weighted(up);
            double[] below = weighted(down);
            for (int i = 0; i < load.length; i++) {
                jacobian[i][c] = (above[i] - below[i]) / (2 * step);
            }
        }
        return jacobian;
    }

    /** Scales of the parameters, so that all are about one. */
    private double[] units(int n) {
        double f = span(load);
        double d = span(deflection);
        double[] units = {f / d, 1, f, d, d, 1};
        return Arrays.copyOf(units, n);
    }

    /** From straight lines through the later rows of each branch. */
    private double[] start() {
        double[] up = line(true);
        double[] down = line(false);
        double k1 = 1 / up[1];
        double k2 = 1 / down[1];
        double k = (k1 + k2) / 2;
        double mu = (k1 - k2) / (k1 + k2);
        double zero = (up[0] + down[0]) / 2;
        double f0 = Math.max(0, (down[0] - up[0]) / 2 * k);
        double[] unit = units(WITHOUT_LOCKED);
        return new double[] {
            k / unit[RATE],
            Math.max(-0.5, Math.min(0.5, mu)),
            f0 / unit[CONSTANT],
            zero / unit[ZERO],
            deflection[0] / unit[FIRST]
        };
    }

    /** Intercept and slope of deflection over load, of the later two thirds of each stretch in one direction. */
    private double[] line(boolean loading) {
        List<Integer> rows = new ArrayList<>();
        int begun = 1;
        for (int i = 1; i < load.length; i++) {
            boolean ends = i + 1 == load.length || (load[i + 1] > load[i]) != (load[i] > load[i - 1]);
            if (ends) {
                int length = i - begun + 1;
                if ((load[i] > load[i - 1]) == loading) {
                    for (int row = begun + (length > 2 ? length / 3 : 0); row <= i; row++) {
                        rows.add(row);
                    }
                }
                begun = i + 1;
            }
        }
        double meanLoad = rows.stream().mapToDouble(i -> load[i]).average().orElseThrow();
        double mean = rows.stream().mapToDouble(i -> deflection[i]).average().orElseThrow();
        double product = 0;
        double square = 0;
        for (int i : rows) {
            product += (load[i] - meanLoad) * (deflection[i] - mean);
            square += (load[i] - meanLoad) * (load[i] - meanLoad);
        }
        double slope = product / square;
        return new double[] {mean - slope * meanLoad, slope};
    }

    private static double span(double[] values) {
        return Arrays.stream(values).max().orElseThrow()
                - Arrays.stream(values).min().orElseThrow();
    }
}
