package org.ridewright.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.ridewright.quantity.JointSpread;

/** How the departures of values hang together before the fit: as an earlier calibration of the file left them. */
final class PriorKnowledge {
    /** Weaker correlations are not worth following to values that nothing measured depends on. */
    static final double WORTH = 0.05;

    private static final double ROUND_OFF = 1e-9;

    private final JointSpread spread;
    private final Map<String, Integer> places;

    PriorKnowledge(JointSpread spread) {
        this.spread = spread;
        places = IntStream.range(0, spread.size())
                .boxed()
                .collect(Collectors.toMap(spread.paths()::get, Function.identity()));
    }

    /** Correlation of two values of the file, or of circumstances that it does not know. */
    double correlation(Unknown a, Unknown b) {
        if (a.path().equals(b.path())) {
            return 1;
        }
        Integer i = places.get(a.path());
        Integer j = places.get(b.path());
        return i == null || j == null ? 0 : spread.correlation(i, j);
    }

    /** L of {@code L Lᵀ} = the correlation of these. */
    RealMatrix factor(List<Unknown> values) {
        int n = values.size();
        RealMatrix matrix = MatrixUtils.createRealIdentityMatrix(n);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                matrix.setEntry(i, j, correlation(values.get(i), values.get(j)) + (i == j ? ROUND_OFF : 0));
            }
        }
        return new CholeskyDecomposition(matrix, 1e-6, 1e-12).getL();
    }

    /** Those of some values that hang together with one of the others. */
    List<Unknown> tied(List<Unknown> some, List<Unknown> others) {
        List<Unknown> tied = new ArrayList<>();
        for (Unknown one : some) {
            if (others.stream().anyMatch(other -> Math.abs(correlation(one, other)) > WORTH)) {
                tied.add(one);
            }
        }
        return tied;
    }
}
