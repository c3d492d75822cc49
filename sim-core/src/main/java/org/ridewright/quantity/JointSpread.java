package org.ridewright.quantity;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.exception.MathIllegalArgumentException;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * What is known of several values together: each spread by itself ({@link Spread}), and how their standardised departures {@code z} are
 * correlated. A draw is {@code z = L w} with {@code w} independent standard normal and {@code L Lᵀ = R}.
 */
public final class JointSpread {
    private static final double ROUND_OFF = 1e-9;

    private final List<String> paths;
    private final List<Spread> spreads;
    private final RealMatrix correlation;
    private final RealMatrix factor;

    /**
     * @param values with a tolerance, n of them
     * @param correlation R, n × n, symmetric, of ones on its diagonal; not modified
     * @throws UnfitValueException if it is no correlation matrix
     */
    public JointSpread(List<NamedValue> values, double[][] correlation) {
        paths = values.stream().map(NamedValue::path).toList();
        spreads = values.stream().map(v -> Spread.of(v.measure().orElseThrow())).toList();
        this.correlation = values.isEmpty() ? null : MatrixUtils.createRealMatrix(correlation);
        factor = values.isEmpty() ? null : factor(this.correlation);
    }

    /** Values that know nothing of each other. */
    public static JointSpread independent(List<NamedValue> values) {
        int n = values.size();
        return new JointSpread(
                values,
                n == 0
                        ? new double[0][]
                        : MatrixUtils.createRealIdentityMatrix(n).getData());
    }

    private JointSpread(String path, Spread spread) {
        paths = List.of(path);
        spreads = List.of(spread);
        correlation = MatrixUtils.createRealIdentityMatrix(1);
        factor = factor(correlation);
    }

    /** Value {@code i} by itself, whatever is known of it together with others. */
    public JointSpread only(int i) {
        return new JointSpread(paths.get(i), spreads.get(i));
    }

    private static RealMatrix factor(RealMatrix correlation) {
        try {
            // written to a few decimals, a matrix may be short of positive definite by their round-off
            RealMatrix lifted = correlation.copy();
            for (int i = 0; i < lifted.getRowDimension(); i++) {
                lifted.addToEntry(i, i, ROUND_OFF);
            }
            return new CholeskyDecomposition(lifted, 1e-6, 1e-12).getL();
        } catch (MathIllegalArgumentException none) {
            UnfitValueException refusal =
                    new UnfitValueException("the correlations contradict each other: no values are correlated so");
            refusal.initCause(none);
            throw refusal;
        }
    }

    /** Number of values. */
    public int size() {
        return paths.size();
    }

    /** Where the values stand. */
    public List<String> paths() {
        return paths;
    }

    /** The spread of each by itself. */
    public List<Spread> spreads() {
        return spreads;
    }

    /** Correlation of two of them. */
    public double correlation(int i, int j) {
        return correlation.getEntry(i, j);
    }

    /**
     * Values by path in the words of a file, for {@link Adjustable#with}.
     *
     * @param w independent standard normal numbers, n of them
     */
    public Map<String, String> texts(double[] w) {
        Map<String, String> texts = new LinkedHashMap<>();
        List<Double> values = values(w);
        for (int i = 0; i < paths.size(); i++) {
            texts.put(paths.get(i), Spread.written(spreads.get(i).kind(), values.get(i)));
        }
        return texts;
    }

    /** Values in SI units. */
    public List<Double> values(double[] w) {
        List<Double> values = new ArrayList<>();
        for (int i = 0; i < paths.size(); i++) {
            double z = 0;
            for (int j = 0; j <= i; j++) {
                z += factor.getEntry(i, j) * w[j];
            }
            values.add(spreads.get(i).at(z));
        }
        return values;
    }
}
