package org.ridewright.calibration;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.RealMatrix;

/**
 * Values that were held, with which errors of sought ones are correlated since the fit.
 *
 * @param paths of the held values in the vehicle file
 * @param withSought correlation of each with each sought value
 * @param among their correlation with one another, as before
 */
public record HeldTogether(List<String> paths, List<List<Double>> withSought, List<List<Double>> among) {
    public HeldTogether {
        paths = List.copyOf(paths);
        withSought = List.copyOf(withSought);
        among = List.copyOf(among);
    }

    /**
     * @param others values that were held
     * @param apart L of their correlation before; the columns of H that the fit knew were {@code H L}
     */
    static HeldTogether of(
            Calibration fit, List<Unknown> sought, List<Unknown> others, RealMatrix apart, PriorKnowledge prior) {
        List<Unknown> tied = new ArrayList<>();
        List<List<Double>> withSought = new ArrayList<>();
        for (int k = 0; k < others.size(); k++) {
            List<Double> row = new ArrayList<>();
            double greatest = 0;
            for (int j = 0; j < sought.size(); j++) {
                double r = 0;
                for (int i = 0; i <= k; i++) {
                    r += apart.getEntry(k, i) * fit.posterior().correlationWithHeld(j, i);
                }
                row.add(r);
                greatest = Math.max(greatest, Math.abs(r));
            }
            if (greatest > PriorKnowledge.WORTH) {
                tied.add(others.get(k));
                withSought.add(List.copyOf(row));
            }
        }
        List<List<Double>> among = tied.stream()
                .map(a -> tied.stream().map(b -> prior.correlation(a, b)).toList())
                .toList();
        return new HeldTogether(tied.stream().map(Unknown::path).toList(), withSought, among);
    }
}
