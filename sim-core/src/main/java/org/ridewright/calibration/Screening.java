package org.ridewright.calibration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.hipparchus.linear.RealMatrix;
import org.ridewright.quantity.Adjustable;
import org.ridewright.vehicle.Vehicle;

/**
 * Which values anything measured depends on at all. Those that only data which are kept back feel are neither sought nor untouched: their tolerances
 * widen the predictions.
 *
 * @param sought values that some fitted datum feels, those that an earlier calibration ties to them, or those that were asked for by name
 * @param untouched paths of those that no datum feels, kept back or not
 */
record Screening(List<Unknown> sought, List<String> untouched) {
    static Screening of(
            Adjustable<Vehicle> file,
            List<Unknown> candidates,
            List<Evidence> evidence,
            PriorKnowledge before,
            boolean keepAll) {
        if (keepAll || candidates.isEmpty() || evidence.isEmpty()) {
            return new Screening(candidates, List.of());
        }
        YardModel model = new YardModel(file, candidates, evidence);
        FitProblem problem = new FitProblem(model.unknowns().size(), model.data(), model);
        int[] fitted = problem.fitted();
        if (fitted.length == 0) {
            return new Screening(candidates, List.of());
        }
        RealMatrix effects = problem.jacobian(new double[problem.unknowns()]);
        List<Unknown> felt = new ArrayList<>();
        List<Unknown> unfelt = new ArrayList<>();
        for (int j = 0; j < candidates.size(); j++) {
            double[] effect = effects.getColumn(j);
            if (norm(Arrays.stream(fitted).mapToDouble(i -> effect[i])) > Held.NOTHING) {
                felt.add(candidates.get(j));
            } else if (norm(Arrays.stream(effect)) <= Held.NOTHING) {
                unfelt.add(candidates.get(j));
            }
        }
        List<Unknown> tied = before.tied(candidates, felt);
        return new Screening(
                candidates.stream()
                        .filter(c -> felt.contains(c) || tied.contains(c))
                        .toList(),
                unfelt.stream()
                        .filter(u -> !tied.contains(u))
                        .map(Unknown::path)
                        .toList());
    }

    private static double norm(DoubleStream effects) {
        return Math.sqrt(effects.map(e -> e * e).sum());
    }

    /** Index of the entry that is greatest in size. */
    static int most(double[] column) {
        int most = 0;
        for (int i = 1; i < column.length; i++) {
            if (Math.abs(column[i]) > Math.abs(column[most])) {
                most = i;
            }
        }
        return most;
    }
}
